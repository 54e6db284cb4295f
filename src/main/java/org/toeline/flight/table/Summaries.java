package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.language.Sentences;

/**
 * Rows that say nothing of themselves but are the mean, the middle, the spread, the best, the least or the count of the rows
 * beside them. Looked for where such rows stand: at the ends of the table and where one club, player or title gives way to
 * the next.
 */
final class Summaries {

    /** So many rows at an end may sum up. */
    private static final int AT_AN_END = 8;

    /** Of so many rows fewer are looked at. */
    private static final int MANY = 5000;

    private static final int LEAST_SHOTS = 3;

    /** A row that goes on with the numbers of the shots sums up only if chance makes a shot look so less often; our own judgement. */
    private static final double BY_CHANCE = 0.01;

    private final Map<Row, String> found = new IdentityHashMap<>();
    private final Map<Row, double[]> numbers = new IdentityHashMap<>();
    private final List<Integer> figures = new ArrayList<>();
    private final List<Integer> names = new ArrayList<>();
    private final List<Integer> shotNumbers = new ArrayList<>();
    private final Set<Row> numbered = Collections.newSetFromMap(new IdentityHashMap<>());
    private final char decimal;

    private Summaries(char decimal) {
        this.decimal = decimal;
    }

    static Summaries of(Row headings, int width, List<Row> rows, List<String> sections, char decimal) {
        Summaries work = new Summaries(decimal);
        for (int i = 0; i < width; i++) {
            int place = i;
            String heading = HeadingText.of(headings.cell(i)).words();
            long filled = rows.stream()
                    .limit(500)
                    .filter(r -> !FigureCell.nothing(r.cell(place)))
                    .count();
            long numbers = rows.stream()
                    .limit(500)
                    .filter(r -> FigureCell.bare(r.cell(place), decimal).isPresent())
                    .count();
            boolean tells = HeadingNames.is("shot-number", heading) || HeadingNames.is("time", heading);
            if (HeadingNames.is("shot-number", heading)) {
                work.shotNumbers.add(i);
            }
            if (HeadingNames.names(heading)) {
                work.names.add(i);
            } else if (!tells && numbers > 0 && 2 * numbers >= filled) {
                work.figures.add(i);
            }
        }
        work.look(rows, sections);
        return work;
    }

    Optional<String> reason(Row row) {
        return Optional.ofNullable(found.get(row));
    }

    private void look(List<Row> rows, List<String> sections) {
        rows.forEach(r -> numbers.put(
                r,
                figures.stream()
                        .mapToDouble(f -> FigureCell.bare(r.cell(f), decimal).orElse(Double.NaN))
                        .toArray()));
        for (int i = 0; i < rows.size(); i++) {
            if (goesOn(rows, i)) {
                numbered.add(rows.get(i));
            }
        }
        ends(rows);
        betweenFound(rows);
        int begin = 0;
        for (int i = 1; i <= rows.size(); i++) {
            if (i == rows.size() || !group(rows, sections, i).equals(group(rows, sections, i - 1))) {
                if (begin > 0 || i < rows.size()) {
                    ends(rows.subList(begin, i));
                }
                begin = i;
            }
        }
    }

    /** Whether a row's number is one more than that of the row above; the first row's, one less than that of the next. */
    private boolean goesOn(List<Row> rows, int i) {
        int above = i > 0 ? i - 1 : 0;
        return rows.size() > 1
                && shotNumbers.stream()
                        .anyMatch(place -> FigureCell.bare(rows.get(above).cell(place), decimal)
                                        .orElse(Double.NaN)
                                == FigureCell.bare(rows.get(above + 1).cell(place), decimal)
                                                .orElse(Double.NaN)
                                        - 1);
    }

    /** What lies between two rows that sum up may have a sum of its own. */
    private void betweenFound(List<Row> rows) {
        int before;
        do {
            before = found.size();
            int begin = 0;
            for (int i = 0; i <= rows.size() && before > 0; i++) {
                if (i == rows.size() || found.containsKey(rows.get(i))) {
                    ends(rows.subList(begin, i));
                    begin = i + 1;
                }
            }
        } while (found.size() > before);
    }

    private List<String> group(List<Row> rows, List<String> sections, int i) {
        List<String> group = new ArrayList<>(List.of(sections.get(i)));
        names.forEach(n -> group.add(rows.get(i).cell(n)));
        return group;
    }

    private void ends(List<Row> rows) {
        List<Row> left = new ArrayList<>(rows);
        left.removeIf(found::containsKey);
        boolean more = true;
        while (more) {
            more = atTheEnd(left, false) || atTheEnd(left, true);
        }
    }

    /** Takes the rows at one end that sum up the rest. */
    private boolean atTheEnd(List<Row> left, boolean top) {
        int most = left.size() > MANY ? 2 : AT_AN_END;
        for (int k = 1; k <= most && left.size() - k >= LEAST_SHOTS; k++) {
            List<Row> ends = new ArrayList<>(top ? left.subList(0, k) : left.subList(left.size() - k, left.size()));
            List<Row> rest = new ArrayList<>(top ? left.subList(k, left.size()) : left.subList(0, left.size() - k));
            Row inner = top ? ends.get(k - 1) : ends.get(0);
            Optional<String> what = what(inner, rest);
            if (what.isPresent()) {
                for (Row row : ends) {
                    what(row, rest).ifPresent(w -> found.put(row, w));
                }
                left.removeIf(found::containsKey);
                return true;
            }
        }
        return false;
    }

    private Optional<String> what(Row row, List<Row> rest) {
        Map<String, Integer> agrees = new HashMap<>();
        int cells = 0;
        int varying = 0;
        double chance = 1;
        for (int f = 0; f < figures.size(); f++) {
            int at = f;
            int place = figures.get(f);
            double value = numbersOf(row)[f];
            double[] others = rest.stream()
                    .mapToDouble(r -> numbersOf(r)[at])
                    .filter(x -> !Double.isNaN(x))
                    .toArray();
            if (Double.isNaN(value) || others.length < LEAST_SHOTS) {
                continue;
            }
            Arrays.sort(others);
            cells++;
            varying += others[0] < others[others.length - 1] ? 1 : 0;
            // of figures rounded themselves: a little more than half of the last place
            double within = 0.8 * Math.pow(10, -decimals(row.cell(place)));
            chance *= Math.min(1, 2 * within / Math.max(2 * within, others[others.length - 1] - others[0]));
            statistics(others).forEach((name, statistic) -> {
                if (Math.abs(statistic - value) <= within + 1e-9 * Math.abs(statistic)) {
                    agrees.merge(name, 1, Integer::sum);
                }
            });
        }
        int all = cells;
        if (all == 0 || varying == 0 || numbered.contains(row) && chance > BY_CHANCE) {
            return Optional.empty();
        }
        boolean again = rest.stream().anyMatch(r -> Arrays.equals(numbersOf(r), numbersOf(row)));
        // one column alone: only a mean is told from a shot, and only with decimals or many rows
        return agrees.entrySet().stream()
                .filter(e -> e.getValue() == all)
                .map(Map.Entry::getKey)
                // a shot that is the worst in all and was hit twice is not a row of the least
                .filter(n -> !again || !n.equals("most") && !n.equals("least"))
                .filter(n ->
                        all >= 3 || all == 2 && !n.equals("most") && !n.equals("least") || all == 1 && n.equals("mean"))
                .sorted()
                .findFirst()
                .map(n -> Sentences.of(Summaries.class)
                        .of("table.summary-of", Sentences.of(Summaries.class).of("table.statistic." + n)));
    }

    private double[] numbersOf(Row row) {
        return Optional.ofNullable(numbers.get(row)).orElseThrow();
    }

    private static Map<String, Double> statistics(double[] sorted) {
        int n = sorted.length;
        double sum = Arrays.stream(sorted).sum();
        double mean = sum / n;
        double squares = Arrays.stream(sorted).map(x -> (x - mean) * (x - mean)).sum();
        double absolute = Arrays.stream(sorted).map(Math::abs).sum() / n;
        return Map.of(
                "mean",
                mean,
                "mean-size",
                absolute,
                "middle",
                (sorted[(n - 1) / 2] + sorted[n / 2]) / 2,
                "spread",
                Math.sqrt(squares / (n - 1)),
                "spread-all",
                Math.sqrt(squares / n),
                "range",
                sorted[n - 1] - sorted[0],
                "most",
                sorted[n - 1],
                "least",
                sorted[0],
                "sum",
                sum,
                "count",
                (double) n);
    }

    private int decimals(String cell) {
        int mark = cell.lastIndexOf(decimal);
        if (mark < 0) {
            return 0;
        }
        int digits = 0;
        while (mark + 1 + digits < cell.length() && Character.isDigit(cell.charAt(mark + 1 + digits))) {
            digits++;
        }
        return digits;
    }
}
