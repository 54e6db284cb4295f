package org.toeline.desk.picture;

/** Where something is put: on what the picture shows near the hand, or where the hand was. */
public enum Snap {
    TO_PICTURE,
    BY_HAND
}
