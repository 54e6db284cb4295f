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
    private static final double LEAST = -0.6;
    /** Fewer neighbours tell nothing. */
    private static final int PAIRS = 6;

    /** As much as is allowed for. */
    static final double ALLOWED = 0.4;

    /** No likeness makes a variance smaller than by so much. */
    private static final double SMALLEST = 0.05;

    /**
     * The fewer neighbours, the less of a likeness is found in them, and the more what is found has to count; found by
     * simulation, so that shots alike by {@link #ALLOWED} are called different as often as shots by themselves.
     */
    private static final double OF_FEW = 130;

    private static final double FEWER = 1.5;

    private Likeness() {}

    /** The likeness found in the figures of two setups with these middles; zero where there are too few neighbours. */
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
        if (pairs < PAIRS || squares == 0) {
            return 0;
        }
        double plain = products / pairs / (squares / n);
        double freed = plain + (1 + 3 * Math.max(0, plain)) * 2 / n;
        return Math.max(LEAST, Math.min(MOST, freed));
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

    /**
     * By what a standard error that knows nothing of likeness is multiplied: what the likeness found asks for, and more the fewer
     * neighbours there are to find it in, but no more than shots alike by {@link #ALLOWED} ask for. Below one where shots are
     * unlike those before them: where chance alone made them so it narrows as often as it widens, and the shuffles, which
     * have it too, leave it at that.
     */
    static double widening(Neighbours neighbours, Centre before, Centre after, double rho) {
        if (rho == 0 || neighbours.pairs() < PAIRS) {
            return 1;
        }
        double variance = before.variance() + after.variance();
        // what each shot adds to the difference, in units of its own spread
        double first = Math.sqrt(before.variance() / before.count());
        double other = Math.sqrt(after.variance() / after.count());
        double found = Math.max(SMALLEST, 1 + neighbours.added(rho, first, other) / variance);
        double counts = 1 + OF_FEW / neighbours.runs() / Math.pow(neighbours.pairs(), FEWER);
        return Math.min(Math.max(1, allowed(neighbours)), Math.pow(found, counts / 2));
    }

    /**
     * What shots alike by {@link #ALLOWED} do to the standard error of the difference of two means: the means vary more, and the
     * spread, from which that is told, is found too small; exactly for normal shots of one spread, in the order they were hit.
     */
    static double allowed(Neighbours neighbours) {
        double n = neighbours.shots()[0];
        double m = neighbours.shots()[1];
        double one = (n + neighbours.added(ALLOWED, 1, 0)) / (n * n);
        double two = (m + neighbours.added(ALLOWED, 0, 1)) / (m * m);
        double variance = (n + m) / (n * m) + neighbours.added(ALLOWED, 1 / n, 1 / m);
        return Math.sqrt(Math.max(variance, 0) / ((1 - one) / (n - 1) + (1 - two) / (m - 1)));
    }
}
