package org.toeline.desk.shots;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.toeline.desk.text.Texts;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightBand;
import org.toeline.flight.Implausible;
import org.toeline.flight.RoughRun;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;
import org.toeline.language.Written;

/** The columns that nobody types into: each names its model, and what is odd is said in words. */
record ShotColumns(ShotsModel model, Supplier<Reckoned> reckoned) implements ShotTable.ComputedCells {

    /** From such a share of the flight on it is said that the model was not published for it. */
    private static final double MUCH = 0.25;

    private static final double PERCENT = 100;

    @Override
    public List<ShotTable.ComputedColumn> columns(Meaning meaning) {
        String first = FlightBand.MODELS.get(0).words();
        String all = Texts.of("shots.column.all-models", FlightBand.MODELS.size());
        return switch (meaning) {
            case CARRY ->
                List.of(
                        new ShotTable.ComputedColumn(first, flown(ShotFigure.CARRY, Flight::carryM)),
                        new ShotTable.ComputedColumn(
                                all,
                                band(ShotFigure.CARRY, FlightBand.Figures::shortestM, FlightBand.Figures::longestM)));
            case APEX ->
                List.of(
                        new ShotTable.ComputedColumn(first, flown(ShotFigure.APEX, Flight::apexM)),
                        new ShotTable.ComputedColumn(
                                all, band(ShotFigure.APEX, FlightBand.Figures::lowestM, FlightBand.Figures::highestM)));
            case SIDE -> List.of(new ShotTable.ComputedColumn(first, this::side));
            case DESCENT_ANGLE ->
                List.of(new ShotTable.ComputedColumn(first, flown(ShotFigure.DESCENT_ANGLE, Flight::descentRad)));
            case HANG_TIME ->
                List.of(new ShotTable.ComputedColumn(first, flown(ShotFigure.HANG_TIME, Flight::hangTimeS)));
            case TOTAL -> List.of(new ShotTable.ComputedColumn(Texts.of("shots.column.run"), this::run));
            default -> List.of();
        };
    }

    private String side(int row) {
        return model.row(row).shot().tellsSide()
                ? flown(ShotFigure.SIDE, Flight::sideM).apply(row)
                : "";
    }

    private java.util.function.IntFunction<String> flown(ShotFigure figure, Function<Flight, Double> of) {
        return row -> reckoned.get()
                .shot(row)
                .first()
                .map(f -> model.units().number(figure, of.apply(f)))
                .orElse("");
    }

    private java.util.function.IntFunction<String> band(
            ShotFigure figure, Function<FlightBand.Figures, Double> least, Function<FlightBand.Figures, Double> most) {
        return row -> reckoned.get()
                .shot(row)
                .launch()
                .map(l -> reckoned.get().air().of(l))
                .map(f -> whole(figure, least.apply(f)) + " – " + whole(figure, most.apply(f)))
                .orElse("");
    }

    private String run(int row) {
        Optional<RoughRun> run = reckoned.get().shot(row).run();
        return run.map(r -> whole(ShotFigure.TOTAL, r.softM()) + " … " + whole(ShotFigure.TOTAL, r.firmM()))
                .orElse("");
    }

    private String whole(ShotFigure figure, double inside) {
        return Written.number("%.0f", model.units().of(figure).fromInside(inside));
    }

    @Override
    public String sign(int row) {
        if (!model.row(row).shot().aside().isEmpty()) {
            return " –";
        }
        if (!model.row(row).unread().isEmpty()) {
            return " ✕";
        }
        List<Implausible> flags = reckoned.get().shot(row).flags();
        return flags.isEmpty() ? "" : " " + grade(flags.get(0));
    }

    private static String grade(Implausible flag) {
        return flag.grade() == Implausible.Grade.IMPOSSIBLE ? "‼" : "!";
    }

    /** What was typed and is no figure, then what no flight could give, then what is missing for a flight. */
    @Override
    public String note(int row) {
        TypedShot shot = model.row(row);
        if (shot.blank()) {
            return "";
        }
        Stream<String> aside =
                Stream.of(shot.shot().aside()).filter(a -> !a.isEmpty()).map(a -> Texts.of("shots.note.aside", a));
        Stream<String> faults = shot.unread().keySet().stream()
                .map(m -> "✕ " + Texts.of("shots.figure." + m.id()) + ": "
                        + shot.fault(m, model.units().of(m)).orElse(""));
        FlownShot flown = reckoned.get().shot(row);
        Stream<String> flags = flown.flags().stream().map(f -> grade(f) + " " + f.reason());
        String said = Stream.concat(aside, Stream.concat(faults, flags)).collect(Collectors.joining(" · "));
        if (!said.isEmpty()) {
            return said;
        }
        double outside = flown.first().map(Flight::outsideShare).orElse(0.0);
        return shot.shot().launch().isEmpty()
                ? Texts.of("shots.note.no-launch")
                : outside >= MUCH
                        ? Texts.of("shots.note.outside", Math.round(PERCENT * outside))
                        : shot.shot().remark();
    }
}
