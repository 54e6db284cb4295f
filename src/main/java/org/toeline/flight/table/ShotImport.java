package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Sentences;

/**
 * Shots out of a table, by a template. Whatever can be read is kept; whatever cannot is listed by line and reason. Never
 * throws for what a table holds.
 */
public final class ShotImport {

    /** Figures that no shot has none of: where they are zero, nothing was measured. */
    private static final Set<Meaning> NEVER_ZERO = Set.of(
            Meaning.BALL_SPEED,
            Meaning.CLUB_SPEED,
            Meaning.SPIN_RATE,
            Meaning.BACK_SPIN,
            Meaning.CARRY,
            Meaning.TOTAL,
            Meaning.HANG_TIME,
            Meaning.DESCENT_ANGLE,
            Meaning.DYNAMIC_LOFT,
            Meaning.SMASH_FACTOR);
    /** Numbers that programs write where they have none. */
    private static final String FILLER = "[+-]?9{3,}([.,]9+|[.,]0+)?";

    private final Template template;
    private final List<Shot> shots = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();
    private final List<Map<String, String>> groups = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Map<Column, Integer> places = new LinkedHashMap<>();
    private final Map<Column, Boolean> beside = new HashMap<>();
    private final List<Integer> remarkPlaces = new ArrayList<>();

    private ShotImport(Template template) {
        this.template = template;
    }

    /** Reads the bytes of a table, whatever their encoding. */
    public static Imported read(byte[] bytes, Template template) {
        TableText text = TableText.of(bytes);
        ShotImport work = new ShotImport(template);
        work.read(template.separator().cut(text.text()));
        work.leftOut.sort(java.util.Comparator.comparingInt(LeftOut::line));
        return new Imported(
                work.shots,
                work.lines,
                work.groups,
                work.leftOut,
                work.notes,
                text.encoding().name());
    }

    private void read(Grid grid) {
        List<String> sought = Stream.concat(
                        template.columns().stream().map(Column::header), template.remarks().stream())
                .toList();
        Optional<Header> found = sought.isEmpty() ? Proposal.header(grid) : Header.find(grid, sought);
        if (found.isEmpty()) {
            leftOut.add(LeftOut.row(
                    1,
                    sought.isEmpty()
                            ? Sentences.of(ShotImport.class).of("table.no-heading", Header.LOOK_AT)
                            : Sentences.of(ShotImport.class)
                                    .of("table.no-heading-of", template.name(), Header.LOOK_AT)));
            return;
        }
        TableBody body = TableBody.of(grid, found.get(), template.decimalMark());
        leftOut.addAll(body.above());
        leftOut.addAll(body.rows().out());
        place(body);
        say(body.style());
        if (places.isEmpty()) {
            return;
        }
        ShotIdentity identity = ShotIdentity.of(body);
        for (int i = 0; i < body.rows().shots().size(); i++) {
            read(body, i, identity);
        }
        notes.addAll(identity.notes());
        places.keySet().forEach(this::doubt);
    }

    /** Whoever decided what a column is may not have seen that its unit or its decimals are others. */
    private void doubt(Column column) {
        double[] figures = column.meaning()
                .figure()
                .map(f -> shots.stream()
                        .flatMapToDouble(s -> s.figure(f).stream())
                        .toArray())
                .orElse(new double[0]);
        if (figures.length > 0 && !Usual.fits(column.meaning(), figures)) {
            notes.add(Sentences.of(ShotImport.class)
                    .of(
                            "table.not-those-read",
                            FigureCell.shortened(column.header()),
                            column.meaning().words(),
                            column.unit().id()));
        }
    }

    private void say(NumberStyle style) {
        switch (style.found()) {
            case DECIDED ->
                notes.add(Sentences.of(ShotImport.class).of("table.decimals", FigureCell.mark(style.decimal())));
            case MIXED ->
                notes.add(Sentences.of(ShotImport.class).of("table.decimals-mixed", FigureCell.mark(style.decimal())));
            case UNDECIDED -> notes.add(Sentences.of(ShotImport.class).of("table.decimals-unknown"));
            case NOT_NEEDED -> {}
        }
    }

    private void place(TableBody body) {
        Header header = body.header();
        for (Column column : template.columns()) {
            header.column(column.header())
                    .ifPresentOrElse(
                            i -> place(body, column, i),
                            () -> notes.add(Sentences.of(ShotImport.class).of("table.no-column", column.header())));
        }
        template.remarks().forEach(r -> header.column(r).ifPresent(remarkPlaces::add));
    }

    /**
     * A unit that the table itself states below the heading goes before the template's, and that is said; not where the
     * heading states another, since then somebody decided.
     */
    private void place(TableBody body, Column column, int place) {
        Optional<FigureUnit> own = HeadingText.of(column.header()).unit();
        FigureUnit unit = body.unitBelow(place)
                .filter(u -> u.quantity() == column.meaning().quantity() && (own.isEmpty() || own.get() == u))
                .orElse(column.unit());
        if (unit != column.unit()) {
            notes.add(Sentences.of(ShotImport.class)
                    .of(
                            "table.unit-below",
                            FigureCell.shortened(column.header()),
                            unit.id(),
                            column.unit().id()));
        }
        Column placed = new Column(column.header(), column.meaning(), unit, column.positiveSide());
        places.put(placed, place);
        beside.put(placed, body.unitsBeside(place, column.meaning().quantity()));
    }

    private void read(TableBody body, int index, ShotIdentity identity) {
        Row row = body.rows().shots().get(index);
        Map<Meaning, Double> figures = new EnumMap<>(Meaning.class);
        List<LeftOut> cells = new ArrayList<>();
        places.forEach((column, place) -> {
            String cell = row.cell(place);
            if (!FigureCell.nothing(cell)) {
                try {
                    figures.put(
                            column.meaning(),
                            figure(row, place, column, body.style().decimal()));
                } catch (FigureCell.Unreadable e) {
                    cells.add(LeftOut.cell(
                            row.line(),
                            Sentences.of(ShotImport.class)
                                    .of("table.cell", FigureCell.shortened(column.header()), e.getMessage())));
                }
            }
        });
        if (cells.stream().anyMatch(c -> c.reason().endsWith(nothingMeasured()))) {
            figures.values().removeIf(v -> v == 0);
        }
        Shot shot = new Shot(figuresOf(figures), remark(row));
        if (shot.figures().isEmpty()) {
            leftOut.add(LeftOut.row(
                    row.line(),
                    cells.isEmpty()
                            ? Sentences.of(ShotImport.class).of("table.no-figures")
                            : cells.get(0).reason()));
            return;
        }
        leftOut.addAll(cells);
        Optional<ShotIdentity.Twin> twin = identity.twin(index, shot, shots);
        if (twin.isPresent()) {
            twin.get().merged().ifPresent(m -> shots.set(twin.get().shot(), m));
            leftOut.add(LeftOut.row(
                    row.line(),
                    Sentences.of(ShotImport.class)
                            .of(
                                    twin.get().merged().isPresent() ? "table.twin" : "table.twin-other",
                                    lines.get(twin.get().shot()))));
            return;
        }
        identity.seen(index, shots.size());
        identity.identical(row, shots.size(), lines).ifPresent(notes::add);
        shots.add(shot);
        lines.add(row.line());
        groups.add(identity.group(index));
    }

    private static String nothingMeasured() {
        return Sentences.of(ShotImport.class).of("table.zero");
    }

    private double figure(Row row, int place, Column column, char decimal) throws FigureCell.Unreadable {
        String cell = row.cell(place);
        String united = Boolean.TRUE.equals(beside.get(column)) ? cell + " " + row.cell(place + 1) : cell;
        double figure = FigureCell.read(united, column, decimal);
        if ((column.meaning() == Meaning.SPIN_RATE || column.meaning() == Meaning.BACK_SPIN) && figure < 0) {
            throw new FigureCell.Unreadable(
                    Sentences.of(ShotImport.class).of("table.spin-below", FigureCell.shortened(cell)));
        }
        if (figure == 0 && NEVER_ZERO.contains(column.meaning())) {
            throw new FigureCell.Unreadable(nothingMeasured());
        }
        if (cell.strip().matches(FILLER)) {
            throw new FigureCell.Unreadable(
                    Sentences.of(ShotImport.class).of("table.filler", FigureCell.shortened(cell)));
        }
        return figure;
    }

    /**
     * Back and side spin become rate and axis, unless these stand in the row themselves; back spin and axis become the rate.
     * Back spin alone is the rate only because someone decided so.
     */
    private static Map<ShotFigure, Double> figuresOf(Map<Meaning, Double> read) {
        Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
        read.forEach((meaning, value) -> meaning.figure().ifPresent(f -> figures.put(f, value)));
        Double back = read.get(Meaning.BACK_SPIN);
        if (back != null) {
            Double side = read.get(Meaning.SIDE_SPIN);
            Double axis = read.get(Meaning.SPIN_AXIS);
            if (side != null) {
                figures.putIfAbsent(ShotFigure.SPIN_RATE, Math.hypot(back, side));
                figures.putIfAbsent(ShotFigure.SPIN_AXIS, Math.atan2(side, back));
            } else if (axis != null && Math.abs(axis) < Math.PI / 3) {
                figures.putIfAbsent(ShotFigure.SPIN_RATE, back / Math.cos(axis));
            } else {
                figures.putIfAbsent(ShotFigure.SPIN_RATE, back);
            }
        }
        return figures;
    }

    private String remark(Row row) {
        return remarkPlaces.stream().map(row::cell).filter(c -> !c.isEmpty()).collect(Collectors.joining(", "));
    }
}
