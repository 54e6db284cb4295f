package org.toeline.mark;

/** Which way a player swings. A right-handed player's lead side is the left. */
public enum Handedness {
    RIGHT("right"),
    LEFT("left");

    private final String id;

    Handedness(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }
}
