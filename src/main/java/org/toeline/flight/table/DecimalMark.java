package org.toeline.flight.table;

/** What stands before the decimals; the other mark then groups thousands. */
public enum DecimalMark {
    /** As the figures of the table suggest. */
    GUESS("guess"),
    POINT("point"),
    COMMA("comma");

    private final String id;

    DecimalMark(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }
}
