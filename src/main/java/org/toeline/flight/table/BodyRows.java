package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.toeline.language.Sentences;

/**
 * The rows below the headings, told apart by what they are: shots, units, headings again, titles within the table, rows
 * that sum others up, another table. Nothing is dropped: what is no shot is named by line and reason.
 *
 * @param shots    rows that may be shots
 * @param sections for each of them, the title it stands under; empty when under none
 * @param out      the others
 * @param units    the row that states units, if there is one
 */
record BodyRows(List<Row> shots, List<String> sections, List<LeftOut> out, Optional<Row> units) {

    BodyRows {
        shots = List.copyOf(shots);
        sections = List.copyOf(sections);
        out = List.copyOf(out);
    }

    /** Such a share of the rows has what a row that sums up lacks. */
    private static final double MOST = 0.8;
    /** A label over so large a share of the rows is a name. */
    private static final double OFTEN = 0.4;

    private static final int LEAST_ROWS = 3;
    /** What is neither a heading nor a label nor a unit, as most cells are. */
    private static final Pattern NUMBER = Pattern.compile("[+-]?[\\d.,]*\\d");

    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2}");

    static BodyRows of(Row headings, List<Row> below, DecimalMark mark) {
        return new Work(headings, below).sorted(NumberStyle.of(below, mark).decimal());
    }

    private static final class Work {

        private final Row headings;
        private final int width;
        private final List<Row> below;
        private final List<LeftOut> out = new ArrayList<>();
        private final List<Row> shots = new ArrayList<>();
        private final List<String> sections = new ArrayList<>();
        private final Map<String, Integer> often = new LinkedHashMap<>();
        private final Map<String, Boolean> headingCells = new HashMap<>();
        /** For each heading, whether names or remarks stand below it. */
        private final List<Boolean> names = new ArrayList<>();

        private Optional<Row> units = Optional.empty();

        Work(Row headings, List<Row> below) {
            this.headings = headings;
            this.width = new Header(headings, 0).width();
            this.below = below.stream().filter(r -> !r.blank()).toList();
            for (int i = 0; i < width; i++) {
                String heading = HeadingText.of(headings.cell(i)).words();
                names.add(HeadingNames.names(heading) || HeadingNames.is("remark", heading));
            }
        }

        BodyRows sorted(char decimal) {
            below.forEach(r -> r.cells().stream()
                    .filter(c -> !c.isEmpty())
                    .distinct()
                    .forEach(c -> often.merge(c, 1, Integer::sum)));
            String section = "";
            for (int i = 0; i < below.size(); i++) {
                Row row = below.get(i);
                if (i > 0 && anotherTable(row)) {
                    below.subList(i, below.size())
                            .forEach(r -> out.add(LeftOut.row(
                                    r.line(), Sentences.of(BodyRows.class).of("table.another", row.line()))));
                    break;
                }
                Optional<String> fault = fault(row);
                if (title(row)) {
                    section = row.cells().stream()
                            .filter(c -> !c.isEmpty())
                            .findFirst()
                            .orElseThrow();
                    out.add(LeftOut.row(
                            row.line(), Sentences.of(BodyRows.class).of("table.title", FigureCell.shortened(section))));
                } else if (fault.isPresent()) {
                    out.add(LeftOut.row(row.line(), fault.get()));
                } else {
                    shots.add(row);
                    sections.add(section);
                }
            }
            leaveOut(this::unnumbered);
            Summaries summaries = Summaries.of(headings, width, shots, sections, decimal);
            leaveOut(summaries::reason);
            return new BodyRows(shots, sections, out, units);
        }

        private void leaveOut(java.util.function.Function<Row, Optional<String>> reason) {
            List<Integer> gone = new ArrayList<>();
            for (int i = 0; i < shots.size(); i++) {
                Row row = shots.get(i);
                Optional<String> why = reason.apply(row);
                if (why.isPresent()) {
                    out.add(LeftOut.row(row.line(), why.get()));
                    gone.add(i);
                }
            }
            if (gone.isEmpty()) {
                return;
            }
            Set<Integer> out = new HashSet<>(gone);
            List<Row> stay = new ArrayList<>();
            List<String> under = new ArrayList<>();
            for (int i = 0; i < shots.size(); i++) {
                if (!out.contains(i)) {
                    stay.add(shots.get(i));
                    under.add(sections.get(i));
                }
            }
            shots.clear();
            sections.clear();
            shots.addAll(stay);
            sections.addAll(under);
        }

        /** A row of words with two figures' names in it that is not the headings again. */
        private boolean anotherTable(Row row) {
            if (row.cells().equals(headings.cells())) {
                return false;
            }
            if (isUnits(row)) {
                return units.isPresent() && !units.get().cells().equals(row.cells());
            }
            return row.filled() > 1
                    && row.cells().stream().filter(this::namesFigure).count() > 1;
        }

        private boolean namesFigure(String cell) {
            return !NUMBER.matcher(cell).matches()
                    && headingCells.computeIfAbsent(
                            cell,
                            c -> HeadingNames.surely(HeadingText.of(c).words()).isPresent());
        }

        private boolean title(Row row) {
            return width > 2
                    && row.filled() == 1
                    && row.cells().stream().limit(2).anyMatch(c -> !c.isEmpty())
                    && row.cells().stream()
                            .allMatch(c -> c.isEmpty() || LETTERS.matcher(c).find() && !Labels.sumsUp(c));
        }

        private static boolean isUnits(Row row) {
            if (row.cells().stream().anyMatch(c -> NUMBER.matcher(c).matches())) {
                return false;
            }
            List<String> filled = row.cells().stream().filter(c -> !c.isEmpty()).toList();
            long stating =
                    filled.stream().filter(c -> UnitWords.of(c).isPresent()).count();
            return stating > 0 && 2 * stating >= filled.size();
        }

        private Optional<String> fault(Row row) {
            if (isUnits(row)) {
                if (units.isEmpty() && shots.isEmpty()) {
                    units = Optional.of(row);
                }
                return Optional.of(Sentences.of(BodyRows.class).of("table.units"));
            }
            if (row.cells().equals(headings.cells())) {
                return Optional.of(Sentences.of(BodyRows.class).of("table.headings"));
            }
            Optional<String> label =
                    label(row).map(l -> Sentences.of(BodyRows.class).of("table.summary", FigureCell.shortened(l)));
            if (label.isPresent()) {
                return label;
            }
            long beyond =
                    row.cells().stream().skip(width).filter(c -> !c.isEmpty()).count();
            return beyond > 0
                    ? Optional.of(Sentences.of(BodyRows.class).of("table.cells", width + beyond, width))
                    : Optional.empty();
        }

        /** The label that says that a row sums others up. */
        private Optional<String> label(Row row) {
            for (int i = 0; i < Math.min(width, row.cells().size()); i++) {
                String cell = row.cell(i);
                if (cell.isEmpty()
                        || cell.length() > 60
                        || NUMBER.matcher(cell).matches()
                        || often.getOrDefault(cell, 0) > OFTEN * below.size() && below.size() > LEAST_ROWS) {
                    continue;
                }
                if (names.get(i)
                        ? Labels.isSummary(cell)
                                        && !HeadingNames.words("name-too").contains(HeadingNames.plain(cell))
                                || Labels.longAndSumsUp(cell)
                        : Labels.sumsUp(cell)) {
                    return Optional.of(cell);
                }
            }
            return Optional.empty();
        }

        /** A row without the number, the time or the label that nearly all others have. */
        private Optional<String> unnumbered(Row row) {
            if (!key.prepared) {
                key.prepare();
            }
            for (int place : key.numbered) {
                if (!hasDigit(row.cell(place))) {
                    return Optional.of(
                            row.cell(place).isEmpty()
                                    ? Sentences.of(BodyRows.class).of("table.no-number", headings.cell(place))
                                    : Sentences.of(BodyRows.class)
                                            .of("table.word-for-number", FigureCell.shortened(row.cell(place))));
                }
            }
            for (int place : key.labelled) {
                if (row.cell(place).isEmpty()) {
                    return Optional.of(Sentences.of(BodyRows.class).of("table.no-label", headings.cell(place)));
                }
            }
            return Optional.empty();
        }

        private static boolean hasDigit(String cell) {
            return cell.chars().anyMatch(Character::isDigit);
        }

        private final Key key = new Key();

        /** The columns by which shots are told apart. */
        private final class Key {
            private final List<Integer> numbered = new ArrayList<>();
            private final List<Integer> labelled = new ArrayList<>();
            private boolean prepared;

            void prepare() {
                prepared = true;
                for (int i = 0; i < width; i++) {
                    String heading = HeadingText.of(headings.cell(i)).words();
                    boolean key = HeadingNames.is("shot-number", heading) || HeadingNames.is("time", heading);
                    boolean figure = !HeadingNames.perhaps(heading).isEmpty() && !HeadingNames.names(heading);
                    boolean names = HeadingNames.names(heading);
                    int place = i;
                    if ((key || i == 0 && !figure) && most(r -> hasDigit(r.cell(place)))) {
                        numbered.add(i);
                    } else if ((i == 0 && !figure || names)
                            && most(r -> !r.cell(place).isEmpty())) {
                        labelled.add(i);
                    }
                }
            }

            private boolean most(Predicate<Row> has) {
                return shots.size() > LEAST_ROWS && shots.stream().filter(has).count() >= MOST * shots.size();
            }
        }
    }
}
