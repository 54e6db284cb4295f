package org.toeline.across;

/** What can be said of a difference between two lessons, or of a trend. */
public enum ChangeCall {
    /** Larger than measuring the same twice would give, at 95 %. */
    REAL("real"),
    /** Would be called real at 80 % confidence, and is not at 95 %. */
    TOO_CLOSE("too-close"),
    /** No larger than what measuring the same twice gives; which does not prove that nothing changed. */
    NOT_SHOWN("not-shown");

    private final String id;

    ChangeCall(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }
}
