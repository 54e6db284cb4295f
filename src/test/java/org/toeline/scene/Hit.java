package org.toeline.scene;

/** What a ray meets in the bay; reused from ray to ray. */
final class Hit {

    final Swatch swatch = new Swatch();
    boolean floor;
    double t;
    double h;
}
