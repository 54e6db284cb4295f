package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Quantity;

/**
 * A first template for a table that nobody has mapped yet, from the plain words of its headings. The coach looks it over;
 * what was only supposed is said.
 *
 * @param template what was made of it; without columns if no heading said anything
 * @param supposed what was supposed and should be looked at: sentences without a full stop
 * @param unmapped headings that were left out
 */
public record Proposal(Template template, List<String> supposed, List<String> unmapped) {

    private static final int LEAST_HEADINGS = 1;
    private static final Pattern LETTERED = Pattern.compile("[LRlr]");

    public Proposal {
        supposed = List.copyOf(supposed);
        unmapped = List.copyOf(unmapped);
    }

    /** A heading, what it may mean, its unit if stated, whether the figure below it names its side by a letter. */
    private record Candidate(String header, HeaderWords.Guess guess, Optional<FigureUnit> unit, boolean lettered) {

        boolean better(Candidate than) {
            return guess.better(than.guess);
        }
    }

    /** Looks at the bytes of a table. */
    public static Proposal of(byte[] bytes, String name) {
        Grid grid = Grid.guess(TableText.of(bytes).text());
        int best = -1;
        long most = LEAST_HEADINGS - 1;
        for (int i = 0; i < Math.min(Header.LOOK_AT, grid.rows().size()); i++) {
            long known = grid.rows().get(i).cells().stream()
                    .filter(Proposal::saysAFigure)
                    .count();
            if (known > most) {
                best = i;
                most = known;
            }
        }
        if (best < 0) {
            return new Proposal(
                    new Template(name, Separator.GUESS, DecimalMark.GUESS, List.of(), List.of()), List.of(), List.of());
        }
        return of(
                name,
                grid.rows().get(best),
                best + 1 < grid.rows().size() ? grid.rows().get(best + 1) : new Row(1, List.of()));
    }

    private static boolean saysAFigure(String cell) {
        return HeaderWords.guess(UnitWords.heading(cell).words())
                .flatMap(g -> Meaning.of(g.meaning()))
                .isPresent();
    }

    private static Proposal of(String name, Row headings, Row below) {
        boolean unitsBelow = below.filled() > 0
                && below.cells().stream()
                        .filter(c -> !c.isEmpty())
                        .allMatch(c -> UnitWords.of(c).isPresent());
        Map<Meaning, Candidate> chosen = new EnumMap<>(Meaning.class);
        List<String> remarks = new ArrayList<>();
        List<String> unmapped = new ArrayList<>();
        for (int i = 0; i < headings.cells().size(); i++) {
            String header = headings.cell(i);
            UnitWords.Heading parts = UnitWords.heading(header);
            Optional<HeaderWords.Guess> guess = HeaderWords.guess(parts.words());
            Optional<Meaning> meaning = guess.flatMap(g -> Meaning.of(g.meaning()));
            Optional<FigureUnit> unit =
                    parts.unit().isPresent() || !unitsBelow ? parts.unit() : UnitWords.of(below.cell(i));
            if (meaning.isPresent()
                    && unit.map(u -> u.quantity() == meaning.get().quantity()).orElse(true)) {
                choose(
                        chosen,
                        meaning.get(),
                        new Candidate(
                                header,
                                guess.get(),
                                unit,
                                LETTERED.matcher(below.cell(i)).find()),
                        unmapped);
            } else if (guess.isPresent() && guess.get().meaning().equals(HeaderWords.REMARK)) {
                remarks.add(header);
            } else if (!header.isEmpty()) {
                unmapped.add(header);
            }
        }
        List<String> supposed = new ArrayList<>();
        List<Column> columns = columns(chosen, supposed);
        return new Proposal(
                new Template(name, Separator.GUESS, DecimalMark.GUESS, columns, remarks), supposed, unmapped);
    }

    private static void choose(
            Map<Meaning, Candidate> chosen, Meaning meaning, Candidate candidate, List<String> unmapped) {
        Candidate other = chosen.get(meaning);
        if (other == null || candidate.better(other)) {
            chosen.put(meaning, candidate);
            if (other != null) {
                unmapped.add(other.header);
            }
        } else {
            unmapped.add(candidate.header);
        }
    }

    private static List<Column> columns(Map<Meaning, Candidate> chosen, List<String> supposed) {
        boolean metric = chosen.values().stream()
                .flatMap(c -> c.unit.stream())
                .anyMatch(u -> u == FigureUnit.METRE
                        || u == FigureUnit.KILOMETRES_PER_HOUR
                        || u == FigureUnit.METRES_PER_SECOND);
        List<Column> columns = new ArrayList<>();
        chosen.forEach((meaning, candidate) -> {
            FigureUnit unit = candidate.unit.orElseGet(() -> {
                FigureUnit usual = usual(meaning.quantity(), metric);
                if (meaning.quantity() == Quantity.SPEED || meaning.quantity() == Quantity.LENGTH) {
                    supposed.add("“" + candidate.header + "” states no unit; " + usual.id() + " is supposed");
                }
                return usual;
            });
            if (meaning.sided() && !candidate.lettered) {
                supposed.add(
                        "a plus under “" + candidate.header + "” is supposed to be to the right of the target line");
            }
            columns.add(new Column(candidate.header, meaning, unit, PositiveSide.RIGHT));
        });
        return columns;
    }

    private static FigureUnit usual(Quantity quantity, boolean metric) {
        return switch (quantity) {
            case SPEED -> metric ? FigureUnit.METRES_PER_SECOND : FigureUnit.MILES_PER_HOUR;
            case LENGTH -> metric ? FigureUnit.METRE : FigureUnit.YARD;
            case ANGLE -> FigureUnit.DEGREE;
            case SPIN -> FigureUnit.TURNS_PER_MINUTE;
            case TIME -> FigureUnit.SECOND;
        };
    }
}
