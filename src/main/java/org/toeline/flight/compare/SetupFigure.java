package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * One figure of one setup: where its shots lie, in the unit used inside, and the 95 % interval of that by the method of
 * {@link SetupComparison}.
 *
 * @param count     shots that have the figure
 * @param centre    the middle; of one or two shots, their mean
 * @param halfWidth half the interval's width; not known (NaN is never given) with fewer than three shots
 */
public record SetupFigure(ShotFigure figure, int count, double centre, OptionalDouble halfWidth) {

    /** All figures that shots of the setup have, in the order of {@link ShotFigure}. */
    public static List<SetupFigure> of(List<Shot> shots) {
        List<SetupFigure> all = new ArrayList<>();
        for (ShotFigure figure : ShotFigure.values()) {
            double[] values = shots.stream()
                    .flatMapToDouble(s -> s.figure(figure).stream())
                    .toArray();
            if (values.length > 0) {
                all.add(of(figure, values));
            }
        }
        return List.copyOf(all);
    }

    private static SetupFigure of(ShotFigure figure, double[] values) {
        int n = values.length;
        if (n < Centre.LEAST) {
            return new SetupFigure(
                    figure, n, java.util.Arrays.stream(values).average().orElseThrow(), OptionalDouble.empty());
        }
        Centre centre = Centre.of(values);
        double t = new TDistribution(centre.freedom()).inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2);
        return new SetupFigure(
                figure,
                n,
                centre.value(),
                OptionalDouble.of(t * Math.sqrt(centre.variance()) * Calibration.factor(n, n, 1)));
    }
}
