package org.toeline.assist;

import java.util.Optional;
import org.toeline.video.SlowMotion;

/**
 * One moment in two clips: the strike where it was heard in both, or from how much moves in both: the two curves are laid over
 * each other so that they fit best. Where they fit nowhere, or in two places, nothing is said.
 *
 * @param firstSeconds  its time in the first clip
 * @param secondSeconds its time in the second
 */
public record OneMoment(double firstSeconds, double secondSeconds) {

    private static final double STEP_S = 0.01;
    /** What of a swing is laid over, around the moment of most motion. */
    private static final double BEFORE_S = 1.2;

    private static final double AFTER_S = 0.8;
    private static final double FARTHEST_S = 0.8;
    private static final double LEAST_FIT = 0.8;
    /** The same fit farther off than this makes it unsure. */
    private static final double ITS_OWN_S = 0.15;

    private static final double RIVAL = 0.97;

    /** After the strike less moves than that share of the most. */
    private static final double FALLEN = 0.5;

    /** What was heard and what moves most belong together by that much in both clips, two cameras of 30 a second among them. */
    private static final double LAG_S = 0.15;

    /**
     * The strike heard in two clips; empty where it lies otherwise to what moves in the one than in the other: then one of the two
     * sounds was something else.
     *
     * @param firstMostS when most moves in the swing of the first clip
     */
    public static Optional<OneMoment> heard(Strike first, double firstMostS, Strike second, double secondMostS) {
        double lag = (first.seconds() - firstMostS) - (second.seconds() - secondMostS);
        return Math.abs(lag) <= LAG_S
                ? Optional.of(new OneMoment(first.seconds(), second.seconds()))
                : Optional.empty();
    }

    /** Of two clips with a swing each. */
    public static Optional<OneMoment> seen(Movement first, SlowMotion firstIs, Movement second, SlowMotion secondIs) {
        Optional<Movement.Amount> most = swing(first, firstIs);
        Optional<Movement.Amount> other = swing(second, secondIs);
        if (most.isEmpty() || other.isEmpty() || !fallsAgain(first, most.get()) || !fallsAgain(second, other.get())) {
            return Optional.empty();
        }
        double[] a = curve(first, firstIs, most.get().seconds(), 0);
        double[] fits = new double[2 * (int) (FARTHEST_S / STEP_S) + 1];
        int best = 0;
        for (int i = 0; i < fits.length; i++) {
            double later = (i - fits.length / 2) * STEP_S;
            fits[i] = likeness(a, curve(second, secondIs, other.get().seconds(), later));
            best = fits[i] > fits[best] ? i : best;
        }
        if (fits[best] < LEAST_FIT || best == 0 || best == fits.length - 1 || rival(fits, best) > RIVAL * fits[best]) {
            return Optional.empty();
        }
        double bend = fits[best - 1] - 2 * fits[best] + fits[best + 1];
        double part = bend < 0 ? 0.5 * (fits[best - 1] - fits[best + 1]) / bend : 0;
        double later = (best - fits.length / 2 + part) * STEP_S;
        return Optional.of(new OneMoment(most.get().seconds(), other.get().seconds() + later * secondIs.factor()));
    }

    /** When most moves after the clearest moment of address. */
    public static Optional<Movement.Amount> swing(Movement movement, SlowMotion is) {
        return movement.address().flatMap(s -> movement.most(s.endSeconds(), s.endSeconds() + 2.5 * is.factor()));
    }

    /** A clip that ends in the middle of the swing does not show its fastest moment; the beginning alone fits too much. */
    private static boolean fallsAgain(Movement movement, Movement.Amount most) {
        return movement.amounts().stream()
                .anyMatch(a -> a.seconds() > most.seconds() && a.amount() < FALLEN * most.amount());
    }

    private static double rival(double[] fits, int best) {
        double rival = 0;
        for (int i = 1; i + 1 < fits.length; i++) {
            boolean top = fits[i] >= fits[i - 1] && fits[i] >= fits[i + 1];
            rival = top && Math.abs(i - best) * STEP_S > ITS_OWN_S ? Math.max(rival, fits[i]) : rival;
        }
        return rival;
    }

    /** The amounts around a time, in steps of real time. */
    private static double[] curve(Movement movement, SlowMotion is, double aroundS, double laterS) {
        double[] curve = new double[(int) Math.round((BEFORE_S + AFTER_S) / STEP_S)];
        int at = 0;
        var all = movement.amounts();
        for (int i = 0; i < curve.length; i++) {
            double t = aroundS + (laterS - BEFORE_S + i * STEP_S) * is.factor();
            while (at + 1 < all.size() && all.get(at + 1).seconds() <= t) {
                at++;
            }
            Movement.Amount from = all.get(at);
            Movement.Amount to = all.get(Math.min(all.size() - 1, at + 1));
            double share = to.seconds() > from.seconds()
                    ? Math.max(0, Math.min(1, (t - from.seconds()) / (to.seconds() - from.seconds())))
                    : 0;
            curve[i] = from.amount() + share * (to.amount() - from.amount());
        }
        return curve;
    }

    /** Their correlation. */
    private static double likeness(double[] a, double[] b) {
        double meanA = java.util.Arrays.stream(a).average().orElse(0);
        double meanB = java.util.Arrays.stream(b).average().orElse(0);
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int i = 0; i < a.length; i++) {
            ab += (a[i] - meanA) * (b[i] - meanB);
            aa += (a[i] - meanA) * (a[i] - meanA);
            bb += (b[i] - meanB) * (b[i] - meanB);
        }
        return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
    }
}
