package org.toeline.ledger.store.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;

/**
 * All lessons as a table, one reading a row: comma-separated (RFC 4180), UTF-8, the decimal mark a point whatever the machine's
 * language. A text that a spreadsheet would take for a formula has an apostrophe put before it.
 */
public final class ReadingsCsv {

    private static final String HEAD = "lesson,recorded,player,handedness,club,place,reading,value,u,low,high,unit,"
            + "range_low,range_high,range_aim,provenance,verdict,first\r\n";
    private static final String ROWS =
            "select l.id, l.recorded, p.name, p.handedness, l.club, l.place, f.reading, f.value, f.u, f.low, f.high,"
                    + " f.unit, f.range_low, f.range_high, f.range_aim, f.provenance, f.verdict, f.is_first from lesson l"
                    + " join player p on p.id = l.player_id join finding f on f.lesson_id = l.id order by l.id, f.line";

    private static final Pattern ACTING =
            Pattern.compile("[\\p{Cc}&&[^\\t\\r\\n]]|[\\u061c\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069]");

    private ReadingsCsv() {}

    /** Writes row by row, so that a ledger of any size goes through. */
    public static void write(Ledger ledger, Writer out) throws LedgerException, IOException {
        try {
            out.write(HEAD);
            ledger.requireWhole();
            ledger.database().read(Sentences.of(ReadingsCsv.class).of("cannot.read-readings"), handle -> {
                handle.createQuery(ROWS).map((row, context) -> line(row)).forEach(line -> {
                    try {
                        out.write(line);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
                return true;
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String line(ResultSet row) throws SQLException {
        StringBuilder line = new StringBuilder();
        line.append(row.getInt(1));
        for (int column = 2; column <= 7; column++) {
            line.append(',').append(cell(row.getString(column)));
        }
        for (int column = 8; column <= 11; column++) {
            line.append(',').append(row.getDouble(column));
        }
        line.append(',').append(cell(row.getString(12)));
        for (int column = 13; column <= 15; column++) {
            double value = row.getDouble(column);
            line.append(',').append(row.wasNull() ? "" : Double.toString(value));
        }
        line.append(',').append(cell(row.getString(16))).append(',').append(cell(row.getString(17)));
        return line.append(',')
                .append(row.getInt(18) == 1 ? "yes" : "")
                .append("\r\n")
                .toString();
    }

    /** A text as a cell: no formula, and without what would act on a terminal or turn the direction of a line. */
    public static String cell(@Nullable String given) {
        if (given == null || given.isEmpty()) {
            return "";
        }
        String text = ACTING.matcher(given).replaceAll("");
        String plain = text.strip();
        boolean formula = !plain.isEmpty() && "=+-@\uFF1D\uFF0B\uFF0D\uFF20".indexOf(plain.charAt(0)) >= 0
                || !text.isEmpty() && "\t\r\n".indexOf(text.charAt(0)) >= 0;
        String safe = formula ? "'" + text : text;
        return safe.matches("(?s).*[\",\r\n;].*") || !safe.equals(safe.strip())
                ? "\"" + safe.replace("\"", "\"\"") + "\""
                : safe;
    }
}
