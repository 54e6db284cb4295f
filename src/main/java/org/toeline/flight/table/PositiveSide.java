package org.toeline.flight.table;

/** Which side of the target line a plus means in a column, for whoever looks along it at the target. */
public enum PositiveSide {
    RIGHT("right"),
    LEFT("left"),
    /** Each figure but zero names its side by a letter; one that does not is not read. */
    LETTERS("letters");

    private final String id;

    PositiveSide(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    /** A figure with this side's sign, positive towards {@code h}, which is the left. */
    double towardsH(double figure) {
        return this == LEFT ? figure : -figure;
    }
}
