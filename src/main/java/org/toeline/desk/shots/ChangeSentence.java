package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.Estimate;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.State;

/** Before and after in one sentence that a player understands. */
record ChangeSentence(ShotUnits units) {

    /** What a player sees of a shot, in the order in which it is told. */
    private static final List<ShotFigure> TOLD = List.of(
            ShotFigure.BALL_SPEED,
            ShotFigure.LAUNCH_ANGLE,
            ShotFigure.LAUNCH_DIRECTION,
            ShotFigure.SPIN_RATE,
            ShotFigure.SPIN_AXIS,
            ShotFigure.APEX,
            ShotFigure.CARRY,
            ShotFigure.SIDE);

    /** @param setup the second setup's name, where both are of one lesson; else the second is the later lesson */
    String of(SetupComparison comparison, Optional<String> setup) {
        List<String> real = new ArrayList<>();
        for (ShotFigure figure : TOLD) {
            difference(comparison, figure)
                    .filter(d -> d.state() == State.REAL && !d.isRealButSmall())
                    .flatMap(Difference::estimate)
                    .ifPresent(e -> real.add(phrase(figure, e)));
        }
        if (!real.isEmpty()) {
            return setup.map(name -> Texts.of("shots.change.sentence", listed(real), name))
                    .orElseGet(() -> Texts.of("shots.change.sentence.lesson", listed(real)));
        }
        boolean settled =
                comparison.differences().stream().allMatch(d -> d.state() == State.NOT_SHOWN || d.isRealButSmall());
        int more = comparison.differences().stream()
                .filter(d -> TOLD.contains(d.figure()))
                .mapToInt(Difference::moreShots)
                .filter(n -> n > 0 && n <= Difference.MOST_MORE)
                .min()
                .orElse(0);
        return settled
                ? Texts.of("shots.change.none")
                : more > 0 ? Texts.of("shots.change.more", more) : Texts.of("shots.change.unclear");
    }

    private static String listed(List<String> phrases) {
        int last = phrases.size() - 1;
        String first = String.join(Texts.of("shots.change.and"), phrases.subList(0, last));
        return first.isEmpty() ? phrases.get(last) : Texts.of("shots.change.last", first, phrases.get(last));
    }

    private static Optional<Difference> difference(SetupComparison comparison, ShotFigure figure) {
        return comparison.differences().stream()
                .filter(d -> d.figure() == figure)
                .findFirst();
    }

    private String phrase(ShotFigure figure, Estimate e) {
        String way = e.difference() > 0 ? "up" : "down";
        double sign = e.difference() > 0 ? 1 : -1;
        double near = Math.min(sign * e.low(), sign * e.high());
        double far = Math.max(sign * e.low(), sign * e.high());
        return Texts.of(
                "shots.change." + figure.id() + "." + way,
                units.width(figure, Math.abs(e.difference()))
                        + (units.of(figure) == FigureUnit.DEGREE ? "" : " ")
                        + units.of(figure).id(),
                units.width(figure, near),
                units.width(figure, far));
    }
}
