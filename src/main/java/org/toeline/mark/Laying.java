package org.toeline.mark;

/** How the floor layout lay while the views were filmed. */
public enum Laying {
    /** It stayed where it was. */
    ONCE,
    /** It was taken up and laid again along the target line between face-on and down the line. */
    AGAIN
}
