package org.toeline.flight.table;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of a table, cut at a separator. Quoting is that of RFC 4180; a quote that never closes is plain text. */
record Grid(List<Row> rows, char separator) {

    private static final char[] SEPARATORS = {';', '\t', '|', ','};
    private static final int LOOK_AT = 60;
    private static final double MOST_ROWS = 0.5;

    Grid {
        rows = List.copyOf(rows);
    }

    static Grid cut(String text, char separator) {
        try {
            return new Grid(parse(text, format(separator)), separator);
        } catch (IOException | IllegalStateException | java.io.UncheckedIOException e) {
            return new Grid(plainly(text, separator), separator);
        }
    }

    /**
     * Cut at the first separator, commas last, under which most rows have the same number of cells: semicolons, tabs and
     * bars seldom stand in a table by accident, commas do.
     */
    static Grid guess(String text) {
        for (char separator : SEPARATORS) {
            Grid grid = cut(text, separator);
            if (grid.regularity() > MOST_ROWS) {
                return grid;
            }
        }
        return cut(text, SEPARATORS[SEPARATORS.length - 1]);
    }

    private static CSVFormat format(char separator) {
        return CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreSurroundingSpaces(separator != '\t')
                .setTrim(true)
                .setIgnoreEmptyLines(false)
                .setTrailingData(true)
                .get();
    }

    private static List<Row> parse(String text, CSVFormat format) throws IOException {
        List<Row> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            long before = 0;
            for (CSVRecord record : parser) {
                rows.add(new Row((int) before + 1, record.toList()));
                before = Math.max(before + 1, parser.getCurrentLineNumber());
            }
        }
        return rows;
    }

    private static List<Row> plainly(String text, char separator) {
        List<Row> rows = new ArrayList<>();
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (int i = 0; i < lines.length; i++) {
            List<String> cells = new ArrayList<>();
            for (String cell : lines[i].split(java.util.regex.Pattern.quote(String.valueOf(separator)), -1)) {
                cells.add(cell.replace("\"", "").strip());
            }
            rows.add(new Row(i + 1, cells));
        }
        return rows;
    }

    /** The share of the first rows that have the commonest number of cells above one; blank rows do not count. */
    private double regularity() {
        Map<Integer, Integer> widths = new HashMap<>();
        List<Row> looked = rows.stream().limit(LOOK_AT).filter(r -> !r.blank()).toList();
        looked.forEach(r -> widths.merge(r.cells().size(), 1, Integer::sum));
        int commonest = widths.entrySet().stream()
                .filter(e -> e.getKey() > 1)
                .mapToInt(Map.Entry::getValue)
                .max()
                .orElse(0);
        return looked.isEmpty() ? 0 : commonest / (double) looked.size();
    }
}
