package org.toeline.paint;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightPoint;
import org.toeline.flight.ShotFigure;

/**
 * How far the two plots reach, and one scale for all of it: a metre is as long up as along and across.
 *
 * @param farM     along the target line, above zero
 * @param highM    above the ground
 * @param wideM    to each side
 * @param pxPerM   one scale for both plots
 * @param stepM    between the lines of the grid along; a round figure in the unit of the axes
 * @param upStepM  the same up and across, where figures stand closer
 */
record ShotScale(double farM, double highM, double wideM, double pxPerM, double stepM, double upStepM) {

    private static final double ROOM = 1.06;
    private static final double LEAST_FAR_M = 60;
    private static final double LEAST_HIGH_M = 12;
    private static final double LEAST_WIDE_M = 12;
    /** Lines of the grid are at least so far apart. */
    private static final double LEAST_STEP_PX = 44;

    private static final double LEAST_UP_STEP_PX = 17;

    /**
     * @param width  for the distance along
     * @param height for the height and both sides together
     */
    static ShotScale of(ShotPicture picture, double width, double height) {
        List<ShotPicture.Setup> setups = picture.setups();
        double far = Math.max(LEAST_FAR_M, ROOM * most(setups, FlightAxis.ALONG));
        double high = Math.max(LEAST_HIGH_M, ROOM * most(setups, FlightAxis.UP));
        double wide = Math.max(LEAST_WIDE_M, ROOM * most(setups, FlightAxis.ACROSS));
        double scale = Math.max(1e-3, Math.min(width / far, height / (high + 2 * wide)));
        return new ShotScale(
                far,
                high,
                wide,
                scale,
                step(LEAST_STEP_PX / scale, picture.length()),
                step(LEAST_UP_STEP_PX / scale, picture.length()));
    }

    /** What is looked at of a flight. */
    private enum FlightAxis {
        ALONG(ShotFigure.CARRY, p -> p.place().t(), ShotPicture.Trace::carryM),
        UP(ShotFigure.APEX, p -> p.place().u(), ShotPicture.Trace::apexM),
        ACROSS(ShotFigure.SIDE, p -> p.place().h(), ShotPicture.Trace::sideM);

        private final ShotFigure figure;
        private final ToDoubleFunction<FlightPoint> place;
        private final Function<ShotPicture.Trace, OptionalDouble> measured;

        FlightAxis(
                ShotFigure figure,
                ToDoubleFunction<FlightPoint> place,
                Function<ShotPicture.Trace, OptionalDouble> measured) {
            this.figure = figure;
            this.place = place;
            this.measured = measured;
        }
    }

    private static double most(List<ShotPicture.Setup> setups, FlightAxis axis) {
        return setups.stream()
                .flatMapToDouble(setup -> {
                    Stream<Flight> curves = Stream.concat(
                            setup.shots().stream().flatMap(s -> s.computed().stream()), setup.middle().stream());
                    DoubleStream reached =
                            curves.flatMap(f -> f.points().stream()).mapToDouble(axis.place);
                    DoubleStream measured =
                            setup.shots().stream().flatMapToDouble(s -> axis.measured.apply(s).stream());
                    DoubleStream ends = setup.middles().values().stream()
                            .filter(m -> m.figure() == axis.figure)
                            .mapToDouble(
                                    m -> Math.abs(m.centre()) + m.halfWidth().orElse(0));
                    return DoubleStream.concat(DoubleStream.concat(reached, measured), ends);
                })
                .map(Math::abs)
                .filter(x -> x < axis.figure.most())
                .max()
                .orElse(0);
    }

    /** The next of 1, 2, 5, 10, 20, 50 … in the unit of the axes. */
    private static double step(double leastM, FigureUnit unit) {
        double least = unit.fromInside(leastM);
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        double factor = least <= power ? 1 : least <= 2 * power ? 2 : least <= 5 * power ? 5 : 10;
        return unit.toInside(factor * power);
    }
}
