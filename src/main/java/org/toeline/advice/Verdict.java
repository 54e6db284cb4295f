package org.toeline.advice;

/** How a reading stands to its range. */
public enum Verdict {
    IN_RANGE("in-range"),
    OUT_LOW("out-low"),
    OUT_HIGH("out-high"),
    /** Neither inside nor outside with 95 % confidence. */
    TOO_CLOSE("too-close"),
    /** The interval is wider than the range itself. */
    CANNOT_TELL("cannot-tell");

    private final String id;

    Verdict(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    public boolean isOut() {
        return this == OUT_LOW || this == OUT_HIGH;
    }
}
