package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Quantity;
import org.toeline.language.Sentences;

/**
 * A table cut into what it consists of: headings, units, rows that may be shots, and what else there is.
 *
 * @param header where the headings stand
 * @param over   words right above the headings, which may say more of what is below
 */
record TableBody(
        Header header, Optional<Row> over, List<LeftOut> above, BodyRows rows, NumberStyle style, char separator) {

    private static final int LOOK_AT = 200;

    static TableBody of(Grid grid, Header header, DecimalMark mark) {
        List<LeftOut> above = new ArrayList<>();
        grid.rows().subList(0, header.index()).stream()
                .filter(r -> !r.blank())
                .forEach(r -> above.add(
                        LeftOut.row(r.line(), Sentences.of(TableBody.class).of("table.above"))));
        Optional<Row> over = header.index() > 0 && coversHeadings(grid.rows().get(header.index() - 1), header)
                ? Optional.of(grid.rows().get(header.index() - 1))
                : Optional.empty();
        List<Row> below = grid.rows().subList(header.index() + 1, grid.rows().size());
        BodyRows rows = BodyRows.of(header.row(), below, mark);
        return new TableBody(header, over, above, rows, NumberStyle.of(rows.shots(), mark), grid.separator());
    }

    /** Words above the headings, other than a title or a name with its value. */
    private static boolean coversHeadings(Row above, Header header) {
        long beyond = above.cells().stream()
                .skip(2)
                .filter(c -> !c.isEmpty() && FigureCell.bare(c, '.').isEmpty())
                .count();
        return header.width() > 2 && above.filled() > 1 && beyond > 0;
    }

    /** What stands over a column's heading; words over the first of several columns are over all up to the next. */
    String over(int place) {
        return over.map(r -> java.util.stream.IntStream.iterate(place, i -> i >= 0, i -> i - 1)
                        .mapToObj(r::cell)
                        .filter(c -> !c.isEmpty())
                        .findFirst()
                        .orElse(""))
                .orElse("");
    }

    /** The unit that the row of units states for a column. */
    Optional<FigureUnit> unitBelow(int place) {
        return rows.units().flatMap(u -> UnitWords.of(u.cell(place)));
    }

    /** Whether all of the column to the right are units of a kind. */
    boolean unitsBeside(int place, Quantity of) {
        int next = place + 1;
        List<String> cells = rows.shots().stream()
                .limit(LOOK_AT)
                .map(r -> r.cell(next))
                .filter(c -> !c.isEmpty())
                .toList();
        return next < header.width()
                && !cells.isEmpty()
                && cells.stream()
                        .allMatch(c ->
                                UnitWords.of(c).filter(u -> u.quantity() == of).isPresent());
    }
}
