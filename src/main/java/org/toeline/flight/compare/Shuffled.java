package org.toeline.flight.compare;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * What the statistic of each figure does when chance alone says which shot was hit with which setup: a permutation of whole
 * shots, so that figures that go together stay together. Because the statistic is in units of its own standard error, this
 * holds for skewed and two-sided figures exactly, and for unequal spreads as shots grow many (Janssen 1997, Stat. Probab. Lett.
 * 36:9; from memory). The largest of all figures in each shuffle holds the
 * family (Westfall and Young 1993, Resampling-Based Multiple Testing; from memory). Always the same shuffles.
 *
 * @param statistics by figure, then by shuffle, the figures as they were hit first
 */
record Shuffled(double[][] statistics) {

    private static final int SHUFFLES = 499;
    /** So many shots have a spread and a likeness that are known; shuffling tells nothing new. */
    static final int MANY = 400;

    private static final long SEED = 20_260_711;
    private static final double NEARLY = 1e-9;

    /**
     * @param figures each with the places of its shots among all
     * @param shots   how many there are
     */
    static Shuffled of(List<OrderedFigures> figures, List<int[]> places, int shots) {
        SplittableRandom seeds = new SplittableRandom(SEED);
        int[] all = IntStream.range(0, shots).toArray();
        double[][] statistics = new double[figures.size()][SHUFFLES + 1];
        for (int f = 0; f < figures.size(); f++) {
            statistics[f][0] = figures.get(f).t(figures.get(f).values());
        }
        for (int s = 0; s < SHUFFLES; s++) {
            double[] keys = seeds.split().doubles(shots).toArray();
            int[] whole = order(all, keys);
            for (int f = 0; f < figures.size(); f++) {
                int[] order = places.get(f).length == shots ? whole : order(places.get(f), keys);
                statistics[f][s + 1] = figures.get(f).t(figures.get(f).reordered(order));
            }
        }
        return new Shuffled(statistics);
    }

    private static int[] order(int[] places, double[] keys) {
        Integer[] order = IntStream.range(0, places.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(i -> keys[places[i]]));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    /** What 95 of 100 shuffles do not exceed. */
    double quantile(int figure) {
        double[] sorted = statistics[figure].clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(Estimate.CONFIDENCE * sorted.length) - 1];
    }

    /** @param widening by how much the figures as they were hit must stand out more than shuffled ones */
    double p(int figure, double widening) {
        double own = statistics[figure][0] / widening - NEARLY;
        long as = 1
                + Arrays.stream(statistics[figure])
                        .skip(1)
                        .filter(t -> t >= own)
                        .count();
        return as / (double) statistics[figure].length;
    }

    /** The share of shuffles in which any figure stands out as much, each measured by its own shuffles. */
    double familyP(int figure, double widening) {
        double own = statistics[figure][0] / quantile(figure) / widening - NEARLY;
        double[] scales = IntStream.range(0, statistics.length)
                .mapToDouble(this::quantile)
                .toArray();
        int as = 1;
        for (int s = 1; s < statistics[figure].length; s++) {
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
