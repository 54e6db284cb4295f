package org.toeline.flight.compare;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.correlation.SpearmansCorrelation;
import org.toeline.language.Sentences;
import org.toeline.language.Written;

/**
 * Whether a reading goes with a launch figure over a player's lessons: Spearman's rank correlation with a 95 % interval
 * by Fisher's transformation and Bonett and Wright's variance, (1 + r²/2)/(n − 3) (Bonett and Wright 2000, Psychometrika
 * 65:23). That two things go together proves of neither that it makes the other.
 *
 * @param value   in [−1, 1]
 * @param low     lower end of the interval
 * @param high    upper end
 * @param lessons on how many lessons it rests
 */
public record RankCorrelation(double value, double low, double high, int lessons) {

    /** Fewer lessons than this say nothing. */
    public static final int LEAST = 5;

    private static final double NORMAL_95 = 1.959964;
    /** Of so many lessons all orders are counted. */
    private static final int COUNTED = 8;
    /** A correlation of one would have an interval without end; the ranks of n lessons cannot tell it from this. */
    private static final double NEARLY_ONE = 1 - 1e-9;

    /**
     * One pair a lesson. Empty if there are too few lessons, or one of the two is the same in all of them.
     */
    public static Optional<RankCorrelation> of(double[] readings, double[] figures) {
        if (readings.length != figures.length) {
            throw new IllegalArgumentException(readings.length + " readings and " + figures.length + " figures");
        }
        int n = readings.length;
        if (n < LEAST) {
            return Optional.empty();
        }
        double r = new SpearmansCorrelation().correlation(readings, figures);
        if (Double.isNaN(r)) {
            return Optional.empty();
        }
        double held = Math.max(-NEARLY_ONE, Math.min(NEARLY_ONE, r));
        double z = fisher(held);
        double half = NORMAL_95 * Math.sqrt((1 + r * r / 2) / (n - 3));
        return Optional.of(new RankCorrelation(r, Math.tanh(z - half), Math.tanh(z + half), n));
    }

    /**
     * The chance of a correlation as large if there is none: of few lessons by counting all orders of them, of more by Student's
     * t, r√((n − 2)/(1 − r²)) with n − 2 degrees of freedom (Kendall and Stuart 1973; from memory).
     */
    public double p() {
        if (lessons <= COUNTED) {
            double[] all = RankOrders.correlations(lessons);
            return Arrays.stream(all)
                            .filter(r -> Math.abs(r) >= Math.abs(value) - 1e-9)
                            .count()
                    / (double) all.length;
        }
        double held = Math.min(NEARLY_ONE, Math.abs(value));
        double t = held * Math.sqrt((lessons - 2) / (1 - held * held));
        return 2 * new TDistribution(lessons - 2).cumulativeProbability(-t);
    }

    private static double fisher(double r) {
        return 0.5 * Math.log((1 + r) / (1 - r));
    }

    /** Whether the interval leaves out zero, and chance alone would seldom give as much. */
    public boolean shown() {
        return (low > 0 || high < 0) && p() <= Holm.CHANCE;
    }

    /** In words, such as “goes with, over 9 lessons (rank correlation 0.78, 0.15 to 0.96)”. */
    public String words() {
        String what = !shown() ? "goes-not" : value > 0 ? "goes-with" : "goes-against";
        return Sentences.of(RankCorrelation.class)
                .of("together." + what, lessons, written(value), written(low), written(high));
    }

    private static String written(double correlation) {
        return Written.number("%.2f", correlation);
    }
}
