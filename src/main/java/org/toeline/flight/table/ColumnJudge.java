package org.toeline.flight.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Quantity;
import org.toeline.language.Sentences;

/**
 * What one column is taken for. Surely ours is only a column whose heading names a figure word for word, whose unit is stated
 * or can only be one, whose sides are stated, and whose figures lie where such figures lie.
 */
record ColumnJudge(TableBody body, int place) {

    /** So many rows are looked at, from all over the table. */
    private static final int LOOK_AT = 400;

    private static final double READABLE = 0.8;

    /** What came of it: a column that is sure, or one that is asked about, or none of ours. */
    record Verdict(Optional<Column> surely, Optional<Asked> asked) {
        static final Verdict NOT_OURS = new Verdict(Optional.empty(), Optional.empty());
    }

    private String heading() {
        return body.header().heading(place);
    }

    List<String> cells() {
        List<Row> rows = body.rows().shots();
        int step = Math.max(1, rows.size() / LOOK_AT);
        return java.util.stream.IntStream.range(0, rows.size())
                .filter(i -> i % step == 0)
                .mapToObj(i -> rows.get(i).cell(place))
                .filter(c -> !FigureCell.nothing(c))
                .toList();
    }

    Verdict verdict() {
        HeadingText text = HeadingText.of(heading());
        String words = text.words();
        if (heading().isBlank()
                || HeadingNames.names(words)
                || Stream.of("shot-number", "time", "remark", "other").anyMatch(k -> HeadingNames.is(k, words))) {
            return Verdict.NOT_OURS;
        }
        List<String> cells = cells();
        double[] bare = cells.stream()
                .map(c -> FigureCell.bare(c, body.style().decimal()))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        Optional<Meaning> named = HeadingNames.surely(words);
        Optional<Meaning> meaning = Optional.of(body.over(place))
                .filter(w -> !w.isEmpty())
                .flatMap(
                        w -> HeadingNames.surely(HeadingText.of(w + " " + words).words()))
                .or(() -> named)
                .or(() -> likeliest(HeadingNames.perhaps(words), text.unit().or(() -> body.unitBelow(place)), bare));
        if (cells.isEmpty() || bare.length == 0 || meaning.isEmpty()) {
            return Verdict.NOT_OURS;
        }
        return verdict(text, named, meaning.get(), cells, bare);
    }

    /** Of what a heading may be about, what its figures can be: 148 miles per hour are a ball's, not a club's. */
    private static Optional<Meaning> likeliest(List<Meaning> perhaps, Optional<FigureUnit> stated, double[] bare) {
        return perhaps.stream()
                .filter(m -> {
                    List<FigureUnit> possible = Usual.units(m, bare);
                    return stated.map(possible::contains).orElseGet(() -> possible.contains(usual(m.quantity())));
                })
                .findFirst()
                .or(() -> perhaps.stream().findFirst());
    }

    private Verdict verdict(
            HeadingText text, Optional<Meaning> named, Meaning meaning, List<String> cells, double[] bare) {
        Optional<FigureUnit> stated = text.unit().or(() -> body.unitBelow(place));
        boolean inCells =
                body.unitsBeside(place, meaning.quantity()) || cells.stream().allMatch(FigureCell::united);
        List<FigureUnit> possible = Usual.units(meaning, bare);
        boolean lettered = meaning.sided() && cells.stream().anyMatch(FigureCell::lettered);
        Optional<PositiveSide> plus = lettered ? Optional.of(PositiveSide.LETTERS) : text.plus();
        boolean fitting = stated.isEmpty() || stated.get().quantity() == meaning.quantity();
        FigureUnit unit = stated.filter(u -> fitting)
                .orElse(
                        possible.size() == 1
                                ? possible.get(0)
                                : FigureUnit.of(meaning.quantity()).get(0));
        if (stated.isEmpty() && possible.size() != 1) {
            unit = usual(meaning.quantity());
        }
        Column column = new Column(heading(), meaning, unit, plus.orElse(PositiveSide.RIGHT));
        String why = doubt(text, named, meaning, cells, stated, inCells, possible, plus, column);
        return why.isEmpty()
                ? new Verdict(Optional.of(column), Optional.empty())
                : new Verdict(Optional.empty(), Optional.of(asked(column, why)));
    }

    Asked asked(Column column, String why) {
        return new Asked(
                place,
                heading(),
                Optional.of(column),
                why,
                cells().stream().limit(Asked.VALUES).toList());
    }

    /** Why the column is not surely what its heading says; empty if it is. */
    private String doubt(
            HeadingText text,
            Optional<Meaning> named,
            Meaning meaning,
            List<String> cells,
            Optional<FigureUnit> stated,
            boolean inCells,
            List<FigureUnit> possible,
            Optional<PositiveSide> plus,
            Column column) {
        if (body.over().isPresent()) {
            return Sentences.of(ColumnJudge.class).of("table.words-above");
        }
        if (named.isEmpty()) {
            return Sentences.of(ColumnJudge.class).of("table.heading-other");
        }
        if (stated.isPresent() && stated.get().quantity() != meaning.quantity()) {
            return Sentences.of(ColumnJudge.class)
                    .of("table.no-unit-for", stated.get().id(), meaning.words());
        }
        Optional<FigureUnit> below = body.unitBelow(place);
        if (below.isPresent() && text.unit().isPresent() && !below.equals(text.unit())) {
            return Sentences.of(ColumnJudge.class)
                    .of(
                            "table.units-differ",
                            text.unit().get().id(),
                            below.get().id());
        }
        if (cells.stream().anyMatch(FigureCell::perhapsMinus)) {
            return Sentences.of(ColumnJudge.class).of("table.perhaps-minus");
        }
        if (body.style().found() == NumberStyle.Found.MIXED) {
            return Sentences.of(ColumnJudge.class).of("table.marks-mixed");
        }
        if (body.style().found() == NumberStyle.Found.UNDECIDED
                && cells.stream().anyMatch(c -> NumberStyle.only(c) == '?')) {
            return Sentences.of(ColumnJudge.class).of("table.marks-unknown");
        }
        if (stated.isEmpty()
                && !inCells
                && (possible.size() != 1 || cells.stream().anyMatch(FigureCell::united))) {
            return Sentences.of(ColumnJudge.class).of("table.no-unit");
        }
        if (meaning.sided() && (plus.isEmpty() || text.twoVoices())) {
            return Sentences.of(ColumnJudge.class).of("table.plus-side");
        }
        if (meaning == Meaning.ATTACK_ANGLE && !text.up()) {
            return Sentences.of(ColumnJudge.class).of("table.plus-up");
        }
        double[] read = Arrays.stream(inside(body, place, column))
                .filter(x -> !Double.isNaN(x))
                .toArray();
        long filled = body.rows().shots().stream()
                .limit(LOOK_AT)
                .filter(r -> !FigureCell.nothing(r.cell(place)))
                .count();
        if (read.length < READABLE * filled) {
            return Sentences.of(ColumnJudge.class).of("table.not-figures");
        }
        return Usual.fits(meaning, read)
                ? ""
                : Sentences.of(ColumnJudge.class)
                        .of("table.not-those", meaning.words(), column.unit().id());
    }

    /** The figures of a column in the unit used inside, a figure a row; not a number where there is none. */
    static double[] inside(TableBody body, int place, Column column) {
        List<Row> rows = body.rows().shots();
        boolean beside = body.unitsBeside(place, column.meaning().quantity());
        return rows.stream()
                .limit(LOOK_AT)
                .mapToDouble(r -> {
                    String cell = beside ? r.cell(place) + " " + r.cell(place + 1) : r.cell(place);
                    try {
                        return FigureCell.nothing(r.cell(place))
                                ? Double.NaN
                                : FigureCell.read(cell, column, body.style().decimal());
                    } catch (FigureCell.Unreadable e) {
                        return Double.NaN;
                    }
                })
                .toArray();
    }

    /** What is proposed where nothing else is said. */
    static FigureUnit usual(Quantity quantity) {
        return switch (quantity) {
            case SPEED -> FigureUnit.MILES_PER_HOUR;
            case LENGTH -> FigureUnit.YARD;
            case ANGLE -> FigureUnit.DEGREE;
            case SPIN -> FigureUnit.TURNS_PER_MINUTE;
            case TIME -> FigureUnit.SECOND;
            case RATIO -> FigureUnit.TIMES;
        };
    }
}
