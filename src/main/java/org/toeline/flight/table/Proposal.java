package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A first template for a table that nobody has mapped yet: the columns that are surely ours, what has to be asked about, and
 * the headings that are about something else.
 *
 * @param template the sure columns; none if nothing is sure
 * @param asked    columns that only a person can decide, in the order of the table
 * @param unmapped headings that were taken for none of ours
 */
public record Proposal(Template template, List<Asked> asked, List<String> unmapped) {

    public Proposal {
        asked = List.copyOf(asked);
        unmapped = List.copyOf(unmapped);
    }

    /** Looks at the bytes of a table. */
    public static Proposal of(byte[] bytes, String name) {
        Grid grid = Grid.guess(TableText.of(bytes).text());
        Optional<Header> header = header(grid);
        if (header.isEmpty()) {
            return new Proposal(
                    new Template(name, Separator.GUESS, DecimalMark.GUESS, List.of(), List.of()), List.of(), List.of());
        }
        return of(name, TableBody.of(grid, header.get(), DecimalMark.GUESS));
    }

    /** The row of words that names the most figures. */
    static Optional<Header> header(Grid grid) {
        Header best = null;
        long most = 0;
        for (int i = 0; i < Math.min(Header.LOOK_AT, grid.rows().size()); i++) {
            Row row = grid.rows().get(i);
            long numbers = row.cells().stream()
                    .filter(c -> FigureCell.bare(c, '.').isPresent()
                            || FigureCell.bare(c, ',').isPresent())
                    .count();
            long named = row.cells().stream().mapToLong(Proposal::names).sum();
            if (named > most && 2 * numbers < row.filled()) {
                best = new Header(row, i);
                most = named;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Two for a figure's own name, one for a hint. */
    private static long names(String cell) {
        String words = HeadingText.of(cell).words();
        return HeadingNames.surely(words).isPresent()
                ? 2
                : !HeadingNames.perhaps(words).isEmpty() && cell.length() < 60 ? 1 : 0;
    }

    private static Proposal of(String name, TableBody body) {
        Map<Meaning, List<ColumnJudge>> sure = new EnumMap<>(Meaning.class);
        Map<ColumnJudge, Column> columns = new java.util.HashMap<>();
        List<Asked> asked = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        List<String> unmapped = new ArrayList<>();
        for (int i = 0; i < body.header().width(); i++) {
            ColumnJudge judge = new ColumnJudge(body, i);
            String heading = body.header().heading(i);
            ColumnJudge.Verdict verdict = judge.verdict();
            verdict.asked().ifPresent(asked::add);
            if (verdict.surely().isPresent()) {
                columns.put(judge, verdict.surely().get());
                sure.computeIfAbsent(verdict.surely().get().meaning(), m -> new ArrayList<>())
                        .add(judge);
            } else if (verdict.asked().isEmpty() && kept(heading)) {
                remarks.add(heading);
            } else if (verdict.asked().isEmpty() && !heading.isEmpty()) {
                unmapped.add(heading);
            }
        }
        Agreement agreement = new Agreement(body, columns, asked, unmapped);
        Map<Meaning, Column> agreed = agreement.of(sure);
        asked.sort(Comparator.comparingInt(Asked::place));
        return new Proposal(
                new Template(name, Separator.GUESS, DecimalMark.GUESS, List.copyOf(agreed.values()), remarks),
                asked,
                unmapped);
    }

    private static boolean kept(String heading) {
        String words = HeadingText.of(heading).words();
        return HeadingNames.names(words) && !HeadingNames.is(HeadingNames.SETUP, words)
                || HeadingNames.is("remark", words)
                || HeadingNames.is("shot-number", words);
    }
}
