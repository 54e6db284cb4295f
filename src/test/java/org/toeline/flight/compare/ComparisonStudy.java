package org.toeline.flight.compare;

import java.util.Locale;
import org.toeline.flight.compare.SimulatedSetups.Mishits;

/**
 * A command: prints how often the 95 % interval of a difference holds the truth, the table of {@code docs/flight.md}.
 * Argument: trials of each case (default 10000).
 */
public final class ComparisonStudy {

    private static final int[][] COUNTS = {
        {3, 3}, {3, 4}, {3, 5}, {3, 6}, {3, 8}, {3, 10}, {3, 30}, {30, 3}, {4, 4}, {4, 30}, {5, 5}, {5, 10}, {6, 6},
        {7, 7}, {8, 8}, {8, 20}, {10, 10}, {10, 30}, {12, 12}, {15, 15}, {20, 20}, {25, 12}, {30, 30}
    };
    private static final double[] RATIOS = {1.0 / 3, 1, 3};

    private ComparisonStudy() {}

    public static void main(String[] args) {
        int trials = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        System.out.println("| shots | "
                + String.join(
                        " | ",
                        java.util.Arrays.stream(Mishits.values())
                                .map(m -> "mishits: " + m.words)
                                .toList()) + " |");
        System.out.println("| --- | --- | --- | --- | --- |");
        double least = 1;
        double most = 0;
        for (int[] n : COUNTS) {
            StringBuilder row = new StringBuilder("| " + n[0] + " and " + n[1] + " |");
            for (Mishits mishits : Mishits.values()) {
                for (double ratio : RATIOS) {
                    long seed = 7_000_000L + n[0] * 10_000L + n[1] * 100L + mishits.ordinal() * 10L + Math.round(ratio);
                    double share = new SimulatedSetups(seed, mishits).coverage(n[0], n[1], ratio, trials);
                    least = Math.min(least, share);
                    most = Math.max(most, share);
                    row.append(String.format(Locale.ROOT, "%s %.1f", ratio == RATIOS[0] ? "" : " ·", 100 * share));
                }
                row.append(" |");
            }
            System.out.println(row);
        }
        System.out.printf(Locale.ROOT, "%nleast %.1f %%, most %.1f %%%n", 100 * least, 100 * most);
    }
}
