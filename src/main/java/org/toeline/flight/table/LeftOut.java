package org.toeline.flight.table;

/**
 * Something of a table that was not read.
 *
 * @param line   the line of the file on which the row begins, from 1
 * @param reason a sentence without a full stop
 * @param extent whether the whole row was left out, or a cell of it only
 */
public record LeftOut(int line, String reason, Extent extent) {

    /** How much was left out. */
    public enum Extent {
        ROW,
        CELL
    }

    static LeftOut row(int line, String reason) {
        return new LeftOut(line, reason, Extent.ROW);
    }

    static LeftOut cell(int line, String reason) {
        return new LeftOut(line, reason, Extent.CELL);
    }
}
