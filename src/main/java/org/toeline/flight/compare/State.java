package org.toeline.flight.compare;

/** What can be said of a difference between two setups. */
public enum State {
    /** There is a difference, even allowing for how many figures were compared. */
    REAL("real"),
    /** None is shown, and the whole interval is smaller than what is worth acting on. */
    NOT_SHOWN("not shown"),
    /** None is shown, and one worth acting on could be there. */
    TOO_FEW("too few shots");

    private final String words;

    State(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
