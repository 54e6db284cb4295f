package org.toeline.flight;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;

/**
 * What was measured of one shot: any of the {@link ShotFigure}s, in the units used inside (metres, seconds, radians,
 * radians a second), and a remark. What was not measured is absent. Figures are kept as they were measured, however odd:
 * {@link Plausibility} says what no flight could give.
 *
 * @param aside why the coach put it aside, so that it does not count; empty if it does
 * @param setup the name of the setup it was hit with, where one lesson has several; empty if nobody said
 */
public record Shot(Map<ShotFigure, Double> figures, String remark, String aside, String setup) {

    public Shot {
        EnumMap<ShotFigure, Double> copy = new EnumMap<>(ShotFigure.class);
        copy.putAll(figures);
        copy.forEach((figure, value) -> Finite.require(value, figure.id()));
        double spin = copy.getOrDefault(ShotFigure.SPIN_RATE, 0.0);
        if (spin < 0) {
            FigureUnit unit = ShotFigure.SPIN_RATE.shownUnit();
            throw new IllegalArgumentException(
                    Sentences.of(Shot.class).of("shot.spin-below", unit.fromInside(spin), unit.id()));
        }
        figures = Collections.unmodifiableMap(copy);
    }

    public Shot(Map<ShotFigure, Double> figures, String remark) {
        this(figures, remark, "", "");
    }

    public Shot(Map<ShotFigure, Double> figures) {
        this(figures, "");
    }

    /** The same shot with other figures. */
    public Shot withFigures(Map<ShotFigure, Double> other) {
        return new Shot(other, remark, aside, setup);
    }

    public Shot withRemark(String other) {
        return new Shot(figures, other, aside, setup);
    }

    /** @param why a reason; empty lets it count again */
    public Shot withAside(String why) {
        return new Shot(figures, remark, why, setup);
    }

    /** @param name of the setup it was hit with; empty if nobody knows */
    public Shot withSetup(String name) {
        return new Shot(figures, remark, aside, name);
    }

    public OptionalDouble figure(ShotFigure figure) {
        Double value = figures.get(figure);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** The same shot with one figure more, or another value of it. */
    public Shot with(ShotFigure figure, double value) {
        EnumMap<ShotFigure, Double> more = new EnumMap<>(ShotFigure.class);
        more.putAll(figures);
        more.put(figure, value);
        return withFigures(more);
    }

    /** The shot as seen in a mirror that stands along the target line. */
    public Shot mirrored() {
        EnumMap<ShotFigure, Double> turned = new EnumMap<>(ShotFigure.class);
        figures.forEach((figure, value) -> turned.put(figure, figure.sided() ? -value : value));
        return withFigures(turned);
    }

    /** Whether a flight from its launch tells where it goes sideways: by the direction and the tilt of the axis, both measured. */
    public boolean tellsSide() {
        return figures.containsKey(ShotFigure.LAUNCH_DIRECTION) && figures.containsKey(ShotFigure.SPIN_AXIS);
    }

    /**
     * The launch, if speed, launch angle and spin rate were measured and make a flight. A direction that was not
     * measured counts as along the target line, an axis that was not as level: how far and how high is hardly moved by it, and
     * where it goes sideways is not known ({@link #tellsSide()}).
     */
    public Optional<Launch> launch() {
        OptionalDouble speed = figure(ShotFigure.BALL_SPEED);
        OptionalDouble angle = figure(ShotFigure.LAUNCH_ANGLE);
        OptionalDouble spin = figure(ShotFigure.SPIN_RATE);
        double direction = figure(ShotFigure.LAUNCH_DIRECTION).orElse(0);
        double axis = figure(ShotFigure.SPIN_AXIS).orElse(0);
        boolean flies = speed.isPresent()
                && angle.isPresent()
                && spin.isPresent()
                && Launch.makesAFlight(speed.getAsDouble(), angle.getAsDouble(), spin.getAsDouble(), direction, axis);
        return flies
                ? Optional.of(new Launch(speed.getAsDouble(), angle.getAsDouble(), direction, spin.getAsDouble(), axis))
                : Optional.empty();
    }
}
