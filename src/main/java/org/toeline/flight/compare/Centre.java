package org.toeline.flight.compare;

import java.util.Arrays;
import org.hipparchus.stat.StatUtils;

/**
 * Where the shots of one setup lie in one figure, and how well that is known.
 *
 * <p>From six shots on it is Tukey's biweight, which gives a mishit far from the rest no weight: tuning constant 6 times
 * the median absolute deviation, variance by its influence function, and 0.7·(n − 1) degrees of freedom (Mosteller and
 * Tukey 1977, Data Analysis and Regression, chapter 10; Lax 1985, J. Am. Stat. Assoc. 80:736; both from memory, the
 * result checked by simulation). Of three to five shots none can be told to be a mishit: it is the mean, and a mishit
 * among them shows as a wide interval.
 *
 * @param value     the centre
 * @param variance  the variance of the centre, above zero
 * @param guarded   the same, but not smaller than that of a biweight which leaves out nothing within some reach
 * @param freedom   degrees of freedom of that variance
 * @param count     shots
 * @param apart     shots that were given no weight, being too far from the rest
 */
record Centre(double value, double variance, double guarded, double freedom, int count, int apart) {

    /** Fewer shots than this say nothing of their spread. */
    static final int LEAST = 3;

    /** Of fewer none can be told to be a mishit. */
    static final int LEAST_ROBUST = 6;

    private static final double TUNING = 6;
    private static final double FREEDOM = 0.7;
    private static final int ROUNDS = 12;
    /** A step so small, in spreads, is none. */
    private static final double STILL = 1e-8;

    /** The centre of at least three figures; its variance is zero only if they are all the same. */
    static Centre of(double[] figures) {
        return of(figures, 0);
    }

    /** @param reach of the guarded variance, in the figures' unit: what lies nearer is no mishit there, however far from the rest */
    static Centre of(double[] figures, double reach) {
        if (figures.length < LEAST) {
            throw new IllegalArgumentException(figures.length + " figures; at least " + LEAST + " are needed");
        }
        if (figures.length < LEAST_ROBUST) {
            return mean(figures);
        }
        double median = median(figures.clone());
        double[] off = new double[figures.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.abs(figures[i] - median);
        }
        double spread = median(off);
        if (spread == 0) {
            return mean(figures);
        }
        double scale = TUNING * spread;
        Centre own = biweight(figures, median, scale);
        return reach > scale ? own.guardedBy(biweight(figures, median, reach).variance) : own;
    }

    private Centre guardedBy(double otherVariance) {
        return new Centre(value, variance, Math.max(variance, otherVariance), freedom, count, apart);
    }

    /** The middle one of figures that are put in order by it. */
    static double median(double[] figures) {
        Arrays.sort(figures);
        int half = figures.length / 2;
        return figures.length % 2 == 1 ? figures[half] : (figures[half - 1] + figures[half]) / 2;
    }

    private static Centre mean(double[] figures) {
        int n = figures.length;
        double variance = StatUtils.variance(figures) / n;
        return new Centre(StatUtils.mean(figures), variance, variance, n - 1, n, 0);
    }

    private static Centre biweight(double[] figures, double median, double scale) {
        double centre = median;
        for (int round = 0; round < ROUNDS; round++) {
            double weights = 0;
            double sum = 0;
            for (double x : figures) {
                double u = (x - centre) / scale;
                double weight = Math.abs(u) < 1 ? (1 - u * u) * (1 - u * u) : 0;
                weights += weight;
                sum += weight * x;
            }
            double next = sum / weights;
            boolean still = Math.abs(next - centre) <= STILL * scale;
            centre = next;
            if (still) {
                break;
            }
        }
        double above = 0;
        double below = 0;
        int apart = 0;
        for (double x : figures) {
            double u = (x - centre) / scale;
            if (Math.abs(u) < 1) {
                double square = (1 - u * u) * (1 - u * u);
                above += (x - centre) * (x - centre) * square * square;
                below += (1 - u * u) * (1 - 5 * u * u);
            } else {
                apart++;
            }
        }
        int n = figures.length;
        double variance = above / (below * below) * n / (n - 1);
        return new Centre(centre, variance, variance, FREEDOM * (n - 1), n, apart);
    }
}
