package org.toeline.posture;

/** Where knowledge comes from, and so where the uncertainty of a result comes from. */
public enum Source {
    /** The coach's clicks on landmarks, and how well a landmark can be seen on a clothed person. */
    MARKS("marks"),
    /** Floor points: their marks and their measured places. */
    FLOOR("floor"),
    /** Upright things marked in a picture. */
    VERTICALS("verticals"),
    /** The ball's outline. */
    BALL("ball"),
    /** What is known of the lens. */
    LENS("lens"),
    /** How such cameras usually stand: no reference in the picture says more. */
    CAMERA("camera"),
    /** How people are usually built and stand: the marks do not say more. */
    BODY("body"),
    /** The player moved between two takes. */
    TAKES("takes");

    private final String id;

    Source(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }
}
