package org.toeline.flight.table;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which mark stands before the decimals, decided for a whole table from the cells that can be read in one way only.
 *
 * @param decimal '.' or ','
 * @param found   how that is known
 */
record NumberStyle(char decimal, Found found) {

    /** How a style is known. */
    enum Found {
        /** A template says so, or cells that can be read in one way only. */
        DECIDED,
        /** No cell needs it. */
        NOT_NEEDED,
        /** Cells such as “3.035” can be read in two ways and nothing tells which. */
        UNDECIDED,
        /** Cells of one table contradict each other. */
        MIXED
    }

    private static final int LOOK_AT = 4000;
    /** More than such a share of cells in the rarer style is no slip. */
    private static final double SLIPS = 0.1;

    private static final Pattern ONE_MARK =
            Pattern.compile("[^\\d.,]*(?<whole>\\d*)(?<mark>[.,])(?<rest>\\d+)[^\\d.,]*");
    private static final Pattern TWO_MARKS =
            Pattern.compile("[^\\d.,]*\\d{1,3}(?<group>[.,'’ ])\\d{3}(\\k<group>\\d{3})*(?<mark>[.,])\\d+[^\\d.,]*");

    static NumberStyle of(List<Row> rows, DecimalMark stated) {
        if (stated != DecimalMark.GUESS) {
            return new NumberStyle(stated == DecimalMark.COMMA ? ',' : '.', Found.DECIDED);
        }
        int points = 0;
        int commas = 0;
        int either = 0;
        for (Row row : rows.subList(0, Math.min(LOOK_AT, rows.size()))) {
            for (String cell : row.cells()) {
                switch (only(cell)) {
                    case '.' -> points++;
                    case ',' -> commas++;
                    case '?' -> either++;
                    default -> {}
                }
            }
        }
        char decimal = commas > points ? ',' : '.';
        if (points + commas == 0) {
            return new NumberStyle(decimal, either > 0 ? Found.UNDECIDED : Found.NOT_NEEDED);
        }
        boolean mixed = Math.min(points, commas) > SLIPS * Math.max(points, commas);
        return new NumberStyle(decimal, mixed ? Found.MIXED : Found.DECIDED);
    }

    /** The only decimal mark a cell can have; '?' when it can be read both ways, a space when it has none. */
    static char only(String cell) {
        if (cell.length() > 40 || cell.indexOf('.') < 0 && cell.indexOf(',') < 0) {
            return ' ';
        }
        Matcher one = ONE_MARK.matcher(cell);
        if (one.matches()) {
            String whole = one.group("whole");
            boolean grouped = one.group("rest").length() == 3
                    && whole.length() >= 1
                    && whole.length() <= 3
                    && !whole.startsWith("0");
            return grouped ? '?' : one.group("mark").charAt(0);
        }
        Matcher two = TWO_MARKS.matcher(cell);
        return two.matches() && !two.group("group").equals(two.group("mark"))
                ? two.group("mark").charAt(0)
                : ' ';
    }
}
