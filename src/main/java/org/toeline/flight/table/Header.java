package org.toeline.flight.table;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** The row of headings: where each one stands. */
record Header(Row row, int index) {

    /** Headings are looked for in so many rows from the top. */
    static final int LOOK_AT = 40;
    /** No heading uses these brackets. */
    private static final char[] NUMBERED = {'\u27e8', '\u27e9'};

    /** The row that has the most of the headings sought, if any has one. */
    static java.util.Optional<Header> find(Grid grid, List<String> sought) {
        Header best = null;
        long most = 0;
        for (int i = 0; i < Math.min(LOOK_AT, grid.rows().size()); i++) {
            Header header = new Header(grid.rows().get(i), i);
            long found =
                    sought.stream().filter(s -> header.column(s).isPresent()).count();
            if (found > most) {
                best = header;
                most = found;
            }
        }
        return java.util.Optional.ofNullable(best);
    }

    /** The column under a heading. */
    OptionalInt column(String heading) {
        String sought = plain(heading);
        return IntStream.range(0, row.cells().size())
                .filter(i -> plain(heading(i)).equals(sought))
                .findFirst();
    }

    /** The heading of a column; where the same words stand over several, all but the first are numbered. */
    String heading(int place) {
        String words = row.cell(place);
        long before = words.isEmpty()
                ? 0
                : row.cells().subList(0, Math.min(place, row.cells().size())).stream()
                        .filter(c -> plain(c).equals(plain(words)))
                        .count();
        return before == 0 ? words : words + " " + NUMBERED[0] + (before + 1) + NUMBERED[1];
    }

    /** The words of a heading, whichever of several it is. */
    static String unnumbered(String heading) {
        return heading.replaceAll(" " + NUMBERED[0] + "\\d+" + NUMBERED[1] + "$", "");
    }

    static String plain(String heading) {
        return heading.replace('\u00a0', ' ').strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** Cells up to the last heading that is not blank. */
    int width() {
        int width = row.cells().size();
        while (width > 0 && row.cell(width - 1).isEmpty()) {
            width--;
        }
        return width;
    }
}
