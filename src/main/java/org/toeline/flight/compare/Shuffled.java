package org.toeline.flight.compare;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.toeline.flight.compare.OrderedFigures.Studentized;

/**
 * What the statistic of each figure does when chance alone says which shot was hit when and with which setup: a permutation of
 * whole shots, so that figures that go together stay together. Because the statistic is in units of its own standard error,
 * this holds for skewed and two-sided figures exactly, and for unequal spreads as shots grow many (Janssen 1997, Stat. Probab.
 * Lett. 36:9; from memory). What widens the standard error for the shots as they were hit widens it in each shuffle too, so
 * that it costs shots by themselves nothing of their 5 %. The largest of all figures in each shuffle holds the
 * family (Westfall and Young 1993, Resampling-Based Multiple Testing; from memory). Always the same shuffles.
 *
 * @param statistics by figure, then by shuffle, the figures as they were hit first
 * @param widening   for each figure, by what its standard error is widened as it was hit
 */
record Shuffled(double[][] statistics, double[] widening) {

    private static final int SHUFFLES = 499;
    /** So many shots have a spread and a likeness that are known; shuffling tells nothing new. */
    static final int MANY = 400;

    private static final long SEED = 20_260_711;
    private static final double NEARLY = 1e-9;

    /**
     * @param figures each with the places of its shots among all
     * @param places  of them
     * @param shots   how many there are
     */
    static Shuffled of(List<OrderedFigures> figures, List<int[]> places, int shots) {
        SplittableRandom seeds = new SplittableRandom(SEED);
        double[][] statistics = new double[figures.size()][SHUFFLES + 1];
        double[] widening = new double[figures.size()];
        for (int s = 0; s <= SHUFFLES; s++) {
            int[] dealt = s == 0 ? IntStream.range(0, shots).toArray() : dealt(shots, seeds.split());
            List<Studentized> all = IntStream.range(0, figures.size())
                    .mapToObj(f -> figures.get(f)
                            .reordered(order(places.get(f), dealt))
                            .studentized())
                    .toList();
            double together =
                    all.stream().mapToDouble(Studentized::likeness).average().orElse(0);
            for (int f = 0; f < all.size(); f++) {
                Neighbours neighbours = figures.get(f).neighbours();
                double likeness = Math.max(all.get(f).likeness(), together);
                statistics[f][s] = all.get(f).t(neighbours, likeness);
                if (s == 0) {
                    widening[f] = all.get(f).widening(neighbours, likeness);
                }
            }
        }
        return new Shuffled(statistics, widening);
    }

    /** All shots in an order by lot (Fisher and Yates). */
    private static int[] dealt(int shots, SplittableRandom random) {
        int[] all = IntStream.range(0, shots).toArray();
        for (int i = shots - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int held = all[i];
            all[i] = all[j];
            all[j] = held;
        }
        return all;
    }

    /** The order that this leaves to a figure which not all shots have. */
    private static int[] order(int[] places, int[] dealt) {
        if (places.length == dealt.length) {
            return dealt;
        }
        int[] at = new int[dealt.length];
        Arrays.fill(at, -1);
        for (int i = 0; i < places.length; i++) {
            at[places[i]] = i;
        }
        return Arrays.stream(dealt).map(i -> at[i]).filter(i -> i >= 0).toArray();
    }

    /** What 95 of 100 shuffles do not exceed. */
    double quantile(int figure) {
        double[] sorted = statistics[figure].clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(Estimate.CONFIDENCE * sorted.length) - 1];
    }

    /** The share of shuffles in which a figure stands out as much. */
    double p(int figure) {
        double own = statistics[figure][0] - NEARLY;
        return Arrays.stream(statistics[figure]).filter(t -> t >= own).count() / (double) statistics[figure].length;
    }

    /** The share of shuffles in which any figure stands out as much, each measured by its own shuffles. */
    double familyP(int figure) {
        double[] scales = IntStream.range(0, statistics.length)
                .mapToDouble(this::quantile)
                .toArray();
        double own = statistics[figure][0] / scales[figure] - NEARLY;
        int as = 0;
        for (int s = 0; s < statistics[figure].length; s++) {
            for (int f = 0; f < statistics.length; f++) {
                if (scales[f] > 0 && statistics[f][s] / scales[f] >= own) {
                    as++;
                    break;
                }
            }
        }
        return as / (double) statistics[figure].length;
    }
}
