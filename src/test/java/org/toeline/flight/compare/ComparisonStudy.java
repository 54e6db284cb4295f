package org.toeline.flight.compare;

import java.util.List;
import java.util.Locale;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.SimulatedSetups.Kind;
import org.toeline.flight.compare.SimulatedSetups.Rates;

/**
 * A command: prints how often a difference that is not there is called real, how often the 95 % interval holds the truth, and
 * how often a change of so many spreads is found: the tables of {@code docs/flight.md}. Arguments: trials of each case with
 * one figure (default 500; a quarter of them with a change), and with ten (default 200); none of either prints no such table;
 * and where the drawing begins (default {@value #TUNED}, on which the limit for families was set, so that another says more).
 */
public final class ComparisonStudy {

    private static final int[][] COUNTS = {{3, 3}, {4, 4}, {5, 5}, {6, 6}, {8, 8}, {5, 10}, {15, 15}, {30, 30}};
    /** Ten figures take ten times as long. */
    private static final int[][] COUNTS_OF_TEN = {{5, 5}, {8, 8}, {15, 15}};

    static final List<ShotFigure> ONE = List.of(ShotFigure.CARRY);
    static final List<ShotFigure> TEN = List.of(
            ShotFigure.CARRY,
            ShotFigure.CLUB_SPEED,
            ShotFigure.LAUNCH_ANGLE,
            ShotFigure.LAUNCH_DIRECTION,
            ShotFigure.SPIN_AXIS,
            ShotFigure.APEX,
            ShotFigure.SIDE,
            ShotFigure.DESCENT_ANGLE,
            ShotFigure.HANG_TIME,
            ShotFigure.TOTAL);

    /** The method's constants were chosen while looking at what is drawn from here on. */
    private static final long TUNED = 9_000;

    private final long base;

    private ComparisonStudy(long base) {
        this.base = base;
    }

    public static void main(String[] args) {
        int trials = args.length > 0 ? Integer.parseInt(args[0]) : 500;
        int many = args.length > 1 ? Integer.parseInt(args[1]) : 200;
        ComparisonStudy study = new ComparisonStudy(args.length > 2 ? Long.parseLong(args[2]) : TUNED);
        if (trials > 0) {
            study.table("One figure: false “real” in per cent · the interval holds the truth", ONE, 0, trials);
            study.table(
                    "One figure, a change of 1.5 spreads: found in per cent · the interval holds the truth",
                    ONE,
                    1.5,
                    trials / 4);
        }
        if (many > 0) {
            study.table("Ten figures: any false “real” in per cent", TEN, 0, many);
        }
    }

    private void table(String title, List<ShotFigure> figures, double by, int trials) {
        int[][] counts = figures.size() == 1 ? COUNTS : COUNTS_OF_TEN;
        System.out.println("\n" + title + ", " + trials + " trials a cell\n");
        StringBuilder head = new StringBuilder("| shots |");
        for (int[] n : counts) {
            head.append(" ").append(n[0]).append(" and ").append(n[1]).append(" |");
        }
        System.out.println(head + "\n| --- |" + " --- |".repeat(counts.length));
        for (Kind kind : Kind.values()) {
            StringBuilder row = new StringBuilder("| " + kind.words + " |");
            for (int[] n : counts) {
                Rates rates = new SimulatedSetups(base + 100 * n[0] + n[1] + 31L * kind.ordinal())
                        .rates(kind, n[0], n[1], figures, by, trials);
                row.append(
                        figures.size() == 1
                                ? String.format(Locale.ROOT, " %.1f · %.1f |", 100 * rates.real(), 100 * rates.held())
                                : String.format(Locale.ROOT, " %.1f |", 100 * rates.real()));
            }
            System.out.println(row);
        }
    }
}
