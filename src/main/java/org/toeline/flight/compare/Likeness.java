package org.toeline.flight.compare;

import java.util.Arrays;

/**
 * How much a shot is like the one hit before it: the correlation of neighbours within the runs of a setup, in a process of
 * order one, and what follows for the difference of two middles. Deviations count for at most 2.5 spreads each, so that one
 * mishit says nothing of it; the estimate is freed of most of its bias (Marriott and Pope 1954, Biometrika 41:390, from
 * memory). Setups hit in turns cancel most of it, and that is allowed for too.
 */
final class Likeness {

    private static final double CUT = 2.5;
    /** Standard deviation of a normal distribution over its median absolute deviation. */
    private static final double NORMAL = 1.4826;

    private static final double MOST = 0.75;
    /** Fewer neighbours tell nothing. */
    private static final int LEAST = 6;

    private static final int LAGS = 10;
    /** As much as is allowed for. */
    static final double ALLOWED = 0.4;

    /** By how much more than was estimated is allowed for, since it is hardly known: found by simulation. */
    private static final double GUARD = 1.15;

    private static final double GUARD_OF_FEW = 1.3;
    private static final int FEW = 6;

    private Likeness() {}

    static double of(double[] values, boolean[] second, double before, double after) {
        int n = values.length;
        double first = spread(values, second, false, before);
        double other = spread(values, second, true, after);
        double products = 0;
        double squares = 0;
        int pairs = 0;
        double last = 0;
        for (int i = 0; i < n; i++) {
            double scale = second[i] ? other : first;
            double now =
                    scale > 0 ? Math.max(-CUT, Math.min(CUT, (values[i] - (second[i] ? after : before)) / scale)) : 0;
            squares += now * now;
            if (i > 0 && second[i] == second[i - 1]) {
                products += now * last;
                pairs++;
            }
            last = now;
        }
        if (pairs < LEAST || squares == 0) {
            return 0;
        }
        double plain = products / pairs / (squares / n);
        double freed = plain + (1 + 3 * Math.max(0, plain)) * 2 / n;
        return Math.max(0, Math.min(MOST, freed));
    }

    private static double spread(double[] values, boolean[] second, boolean wanted, double centre) {
        double[] off = new double[values.length];
        int n = 0;
        for (int i = 0; i < values.length; i++) {
            if (second[i] == wanted) {
                off[n++] = Math.abs(values[i] - centre);
            }
        }
        return NORMAL * Centre.median(Arrays.copyOf(off, n));
    }

    /** The variance of the difference of two middles whose shots are like the one before by so much. */
    static double variance(boolean[] second, Centre before, Centre after, double rho) {
        double variance = before.variance() + after.variance();
        if (rho == 0) {
            return variance;
        }
        // what each shot adds to the difference, in units of its own spread
        double first = -Math.sqrt(before.variance() / before.count());
        double other = Math.sqrt(after.variance() / after.count());
        double power = 1;
        for (int lag = 1; lag <= Math.min(LAGS, second.length - 1); lag++) {
            power *= rho;
            for (int i = lag; i < second.length; i++) {
                variance += 2 * power * (second[i] ? other : first) * (second[i - lag] ? other : first);
            }
        }
        return Math.max(variance, 0.05 * (before.variance() + after.variance()));
    }

    /**
     * By what a standard error that knows nothing of likeness is multiplied: by what the likeness found does, and somewhat more,
     * but no less than by one and no more than shots alike by {@link #ALLOWED} ask for.
     */
    static double widening(boolean[] second, Centre before, Centre after, double rho) {
        double found = Math.sqrt(variance(second, before, after, rho) / (before.variance() + after.variance()));
        double guard = Math.min(before.count(), after.count()) < FEW ? GUARD_OF_FEW : GUARD;
        return Math.max(1, Math.min(allowed(second), found * guard));
    }

    /**
     * What shots alike by {@link #ALLOWED} do to the standard error of the difference of two means: the means vary more, and the
     * spread, from which that is told, is found too small; exactly for normal shots of one spread, in the order they were hit.
     */
    static double allowed(boolean[] second) {
        int[] count = {0, 0};
        for (boolean s : second) {
            count[s ? 1 : 0]++;
        }
        double[] alike = {count[0], count[1]};
        double between = 0;
        double power = 1;
        for (int lag = 1; lag <= Math.min(LAGS, second.length - 1); lag++) {
            power *= ALLOWED;
            for (int i = lag; i < second.length; i++) {
                if (second[i] == second[i - lag]) {
                    alike[second[i] ? 1 : 0] += 2 * power;
                } else {
                    between += 2 * power;
                }
            }
        }
        double variance = -2 * between / (2.0 * count[0] * count[1]);
        double thought = 0;
        for (int setup = 0; setup < 2; setup++) {
            double n = count[setup];
            variance += alike[setup] / (n * n);
            thought += (1 - alike[setup] / (n * n)) / (n - 1);
        }
        return Math.sqrt(Math.max(variance, 0) / thought);
    }
}
