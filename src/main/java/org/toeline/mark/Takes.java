package org.toeline.mark;

/** Whether the views show one moment, or two addresses between which the player moved a little. */
public enum Takes {
    SIMULTANEOUS("simultaneous"),
    SEPARATE("separate");

    private final String id;

    Takes(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }
}
