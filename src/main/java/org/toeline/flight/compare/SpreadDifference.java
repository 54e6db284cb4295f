package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;
import org.toeline.flight.ShotFigure;

/**
 * How much farther apart the shots of the second setup lie than those of the first, in one figure: the ratio of their mean
 * distances from the median (Levene's comparison about the median, Brown and Forsythe 1974, J. Am. Stat. Assoc. 69:364, from
 * memory), on the scale of logarithms.
 *
 * @param ratio second over first
 * @param low   lower end of the 95 % interval
 * @param high  upper end
 * @param real  whether it holds with all spreads that were looked at allowed for (Holm)
 */
public record SpreadDifference(ShotFigure figure, double ratio, double low, double high, boolean real) {

    /** Fewer shots say too little of a spread to compare it. */
    public static final int LEAST = 6;

    private static final Set<ShotFigure> LOOKED_AT =
            Set.of(ShotFigure.CARRY, ShotFigure.SIDE, ShotFigure.LAUNCH_DIRECTION);

    private record Spread(double log, double error) {}

    static List<SpreadDifference> of(HitOrder order) {
        Map<ShotFigure, double[]> found = new LinkedHashMap<>();
        Map<ShotFigure, Double> p = new LinkedHashMap<>();
        for (ShotFigure figure : ShotFigure.values()) {
            double[] first = values(order, false, figure);
            double[] second = values(order, true, figure);
            if (!LOOKED_AT.contains(figure) || Math.min(first.length, second.length) < LEAST) {
                continue;
            }
            Spread a = spread(first);
            Spread b = spread(second);
            double error = Math.hypot(a.error, b.error);
            if (error > 0 && Double.isFinite(error)) {
                TDistribution t = new TDistribution(Math.min(first.length, second.length) - 1);
                double half = error * t.inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2);
                double log = b.log - a.log;
                found.put(figure, new double[] {log, half});
                p.put(figure, 2 * t.cumulativeProbability(-Math.abs(log) / error));
            }
        }
        Set<ShotFigure> holding = Holm.holding(p);
        List<SpreadDifference> all = new ArrayList<>();
        found.forEach((figure, f) -> all.add(new SpreadDifference(
                figure, Math.exp(f[0]), Math.exp(f[0] - f[1]), Math.exp(f[0] + f[1]), holding.contains(figure))));
        return all;
    }

    private static double[] values(HitOrder order, boolean second, ShotFigure figure) {
        return order.of(second).stream()
                .flatMapToDouble(s -> s.figure(figure).stream())
                .toArray();
    }

    private static Spread spread(double[] values) {
        double median = StatUtils.percentile(values, 50);
        double[] off = Arrays.stream(values).map(x -> Math.abs(x - median)).toArray();
        double mean = StatUtils.mean(off);
        return new Spread(Math.log(mean), Math.sqrt(StatUtils.variance(off) / off.length) / mean);
    }
}
