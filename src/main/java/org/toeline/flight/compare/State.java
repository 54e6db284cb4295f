package org.toeline.flight.compare;

/** What can be said of a difference between two setups. */
public enum State {
    /** There is a difference, even allowing for how many figures were compared. */
    REAL("real"),
    /** None is shown, though one worth acting on would likely have been. */
    NOT_SHOWN("not shown"),
    /** None is shown, and one worth acting on could well be there. */
    TOO_FEW("too few shots");

    private final String words;

    State(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
