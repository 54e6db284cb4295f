package org.toeline.flight.compare;

/** What can be said of a difference between two setups. */
public enum State {
    /** There is a difference, even allowing for how many figures were compared. */
    REAL,
    /** None is shown, and the whole interval is smaller than what is worth acting on. */
    NOT_SHOWN,
    /** None is shown, and one worth acting on could be there. */
    TOO_FEW
}
