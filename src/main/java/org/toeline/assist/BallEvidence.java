package org.toeline.assist;

import java.util.Arrays;
import org.toeline.video.Frame;

/**
 * What speaks for a fit being a ball.
 *
 * @param rimPx        all of the rim, seen or not
 * @param seenShare    of the rim: open, and standing off the ground
 * @param edgeShare    of the rim: the ball ends there, against darker ground or, a little lighter or darker, a white shoe
 * @param goingOnShare of the rim: looks like the ball inside and goes on looking like it outside, as a shoe does
 * @param contrast     ball over ground where the rim is seen, what the clearer third exceeds, grey levels
 * @param clearest     the same over all of the rim, what the clearest tenth exceeds
 * @param misfit       at the seen rim, usual size, grey levels
 * @param white        least over most of red, green and blue in the brighter half of the ball, 0 to 1
 * @param level        brightness there, grey levels
 * @param alikeShare   of what is round it as bright
 * @param farOff       whether a whole player stands in the picture; close by a ball may be seen before a white shoe
 */
record BallEvidence(
        double rimPx,
        double seenShare,
        double edgeShare,
        double goingOnShare,
        double contrast,
        double clearest,
        double misfit,
        double white,
        double level,
        double alikeShare,
        boolean farOff) {

    /**
     * On grass or a mat hardly anything round a ball is as bright; round a part of a white shoe or a glove the rest of it is.
     * A white rod or line past a ball is a tenth of what is round it.
     */
    private static final double MOST_ALIKE = 0.12;

    private static final double LEAST_CONTRAST = 12;
    /** Of an edge of a large ball, whose parts of the rim have pixels enough. */
    private static final double LEAST_STEP = 6;

    private static final double LEAST_SEEN = 0.3;
    /** Of a large ball a smaller share is enough. */
    private static final double FOR_LARGE = 0.1;

    private static final double ENOUGH_RIM_PX = 150;
    private static final double MOST_GOING_ON = 0.3;
    /** Ground this bright, against the ball, may be more of the same thing. */
    private static final double AS_BRIGHT = 0.75;

    private static final double MOST_MISFIT = 0.14;
    /** Added for a large ball, whose dimples are seen, and print, and the shade of what stands near. */
    private static final double MORE_MISFIT = 0.06;

    private static final double LEAST_WHITE = 0.72;
    private static final double LEAST_SCORE = 0.12;
    /** Where a whole player stands in the picture there is more that is white and round. */
    private static final double LEAST_SCORE_FAR_OFF = 0.22;
    /** Close by a white shoe, or a ball and a white shoe behind it, look hardly less like one ball: seen on filmed ones. */
    private static final double LEAST_SCORE_CLOSE_BY = 0.3;
    /** No shoe close by has rounder ends. */
    private static final double SHOE_PX = 60;

    private static final double LEAST_LEVEL = 110;
    /** A circle with an edge all around; and one of which that may be. */
    private static final double WHOLE = 0.55;

    private static final double MAY_BE_WHOLE = 0.4;
    /** Of what several circles came to: score, rim, misfit of the contrast; and the score that makes another one doubtful. */
    private static final double AGREED = 0.2;

    private static final double AGREED_RIM = 0.3;
    private static final double AGREED_MISFIT = 0.11;
    private static final double OF_ANOTHER = 0.1;

    static BallEvidence of(Frame frame, BallFit fit, boolean farOff) {
        boolean[] open = fit.rim().open();
        double[] bright = brighter(frame, fit);
        double[] contrasts = new double[open.length];
        double[] all = new double[open.length];
        boolean small = fit.circle().r() <= Hypotheses.LARGE_PX;
        int seen = 0;
        int edge = 0;
        int goingOn = 0;
        for (int k = 0; k < open.length; k++) {
            double c = fit.rim().contrast(k);
            boolean ball = fit.rim().ball(k);
            boolean clear = open[k] && Math.abs(c) >= Math.max(LEAST_CONTRAST, 1.5 * fit.noise());
            boolean ends = ball && Math.abs(c) >= Math.max(LEAST_STEP, fit.noise());
            all[k] = ball ? c : 0;
            edge += ends ? 1 : 0;
            if (clear) {
                contrasts[seen++] = c;
            }
            goingOn += ball && !clear && (small || !ends) && fit.ground(k) > AS_BRIGHT * bright[1] ? 1 : 0;
        }
        double n = open.length;
        return new BallEvidence(
                2 * Math.PI * fit.circle().r(),
                seen / n,
                edge / n,
                goingOn / n,
                exceeded(Arrays.copyOf(contrasts, seen), 0.7),
                exceeded(all, 0.9),
                fit.rimMisfit(),
                bright[0],
                bright[1],
                alike(frame, fit.circle(), bright[1]),
                farOff);
    }

    private static double exceeded(double[] values, double share) {
        Arrays.sort(values);
        return values.length == 0 ? 0 : values[(int) (share * values.length)];
    }

    private static double alike(Frame frame, Circle c, double level) {
        double reach = Math.max(1.5 * c.r(), c.r() + 4);
        int all = 0;
        int bright = 0;
        for (int y = (int) (c.y() - reach); y <= c.y() + reach; y++) {
            for (int x = (int) (c.x() - reach); x <= c.x() + reach; x++) {
                double off = Math.hypot(x + 0.5 - c.x(), y + 0.5 - c.y());
                if (off > c.r() + 1.5 && off < reach) {
                    all++;
                    bright += frame.grey(x, y) > AS_BRIGHT * level ? 1 : 0;
                }
            }
        }
        return all == 0 ? 0 : (double) bright / all;
    }

    /** Whiteness and brightness of the brighter half of what is inside the open part. */
    private static double[] brighter(Frame frame, BallFit fit) {
        Circle c = fit.circle();
        boolean[] open = fit.rim().open();
        double[][] inside = new double[4 * (int) Math.ceil(c.r() * c.r() + 4)][];
        int n = 0;
        for (int y = (int) (c.y() - c.r()); y <= c.y() + c.r(); y++) {
            for (int x = (int) (c.x() - c.r()); x <= c.x() + c.r(); x++) {
                double dx = x + 0.5 - c.x();
                double dy = y + 0.5 - c.y();
                boolean in = Math.hypot(dx, dy) < c.r() - 1.5;
                if (in && open[Rim.sector(Math.atan2(dy, dx), open.length)] && n < inside.length) {
                    inside[n++] = new double[] {frame.grey(x, y), frame.whiteness(x, y)};
                }
            }
        }
        if (n == 0) {
            return new double[] {0, 0};
        }
        double[][] sorted = Arrays.copyOf(inside, n);
        Arrays.sort(sorted, (a, b) -> Double.compare(b[0], a[0]));
        double level = 0;
        double white = 0;
        int half = (n + 1) / 2;
        for (int i = 0; i < half; i++) {
            level += sorted[i][0] / half;
            white += sorted[i][1] / half;
        }
        return new double[] {white / Math.max(1, level), level};
    }

    boolean isBall() {
        boolean large = rimPx > ENOUGH_RIM_PX;
        boolean rim = seenShare >= LEAST_SEEN - FOR_LARGE * Math.min(1, rimPx / ENOUGH_RIM_PX)
                && goingOnShare <= MOST_GOING_ON
                && contrast >= LEAST_CONTRAST
                && misfit <= Math.max(9, (MOST_MISFIT + (large ? MORE_MISFIT : 0)) * contrast);
        boolean alone = !farOff || alikeShare <= MOST_ALIKE;
        return rim && alone && isWhite() && score() >= leastScore();
    }

    private double leastScore() {
        return farOff ? LEAST_SCORE_FAR_OFF : rimPx <= SHOE_PX ? LEAST_SCORE : LEAST_SCORE_CLOSE_BY;
    }

    double score() {
        return seenShare * (1 - goingOnShare) * Math.max(0.01, 1 - 4 * misfit / contrast);
    }

    /** How much of the rim has an edge, faint or not, where it should be. */
    double rimScore() {
        return edgeShare * (1 - goingOnShare) * Math.max(0.01, 1 - 4 * misfit / Math.max(1, clearest));
    }

    /** Whether it ends all around, whatever is behind it. */
    boolean isWhole() {
        return mayBeWhole() && rimScore() >= WHOLE;
    }

    boolean mayBeWhole() {
        return isWhite() && rimScore() >= MAY_BE_WHOLE;
    }

    boolean isWhite() {
        return white >= LEAST_WHITE && level >= LEAST_LEVEL;
    }

    /** Of what circles of several beginnings came to: enough to be a ball, or to make another one doubtful. */
    boolean mayBeAgreed() {
        return score() >= OF_ANOTHER;
    }

    boolean isAgreed() {
        return score() >= AGREED && rimScore() >= AGREED_RIM && misfit <= AGREED_MISFIT * contrast;
    }
}
