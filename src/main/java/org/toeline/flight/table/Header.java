package org.toeline.flight.table;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/** The row of headings: where each one stands. */
record Header(Row row, int index) {

    /** Headings are looked for in so many rows from the top. */
    static final int LOOK_AT = 40;

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

    /** The column under a heading; the first, if it stands there twice. */
    OptionalInt column(String heading) {
        Map<String, Integer> places = new HashMap<>();
        for (int i = row.cells().size() - 1; i >= 0; i--) {
            places.put(plain(row.cell(i)), i);
        }
        Integer place = places.get(plain(heading));
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
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
