package org.toeline.posture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which mark disagrees with the rest. A mark's two residuals r have covariance S = I − JΣJᵀ after the fit (Baarda
 * 1968), so that the rest expects the mark within σ²S⁻¹ of where it is. The score is twice the logarithm of how much
 * better a wrong mark explains what is seen than a right one: a mark that the rest barely foretells needs less of a
 * misfit in its own measure than one that is foretold to the pixel. A wrong mark is something else that was clicked, so
 * it lies anywhere about but hardly near: its offset δ has the density |δ|²/(2s²) times that of a normal distribution of
 * standard deviation s, a moment prior (Johnson and Rossell 2010, J. R. Statist. Soc. B 72:143), which a merely unsteady
 * click does not meet.
 */
final class Misfits {

    /** A mark at least this likely wrong is named as in doubt (see the accuracy study for how often that is false). */
    static final double NAMED = 0.12;
    /**
     * The score from which a mark that only habits speak against is mentioned; with one view nothing but habits can speak
     * against most marks, so they must speak louder.
     */
    static final double MENTIONED = 4.0;

    static final double MENTIONED_IN_ONE_VIEW = 6.0;
    /** The s of a wrong mark's offset over the focal length: 41 px of 1460. */
    private static final double WRONG_SHARE = 0.028;
    /** Below this share of its own variance a residual cannot be told from what the mark itself decided. */
    private static final double REDUNDANT = 0.02;

    /** The odds that a mark is wrong before anything is seen of it: assumed, no source. */
    private static final double USUALLY_WRONG = 0.03;

    /** A sum of squared residuals below this is not worth a look. */
    private static final double UNREMARKABLE = 0.5;

    private Misfits() {}

    /** How much better a wrong mark explains what is seen than a right one, and by how many pixels it would have to move. */
    record Misfit(Sight sight, double score, double offPx) {

        /** The natural logarithm of the odds that the mark is wrong. */
        double logOdds() {
            return Math.log(USUALLY_WRONG) + score / 2;
        }

        /** How likely the mark is wrong. */
        double odds() {
            return 1 / (1 + Math.exp(-logOdds()));
        }

        Problem.MarkName name() {
            return new Problem.MarkName(sight.view, sight.name);
        }
    }

    /** Of every mark whose residual is worth a look, the greatest score first. */
    static List<Misfit> of(List<Knowledge> knowledge, State state, Laplace laplace) {
        List<Misfit> all = new ArrayList<>();
        for (Knowledge k : knowledge) {
            if (k instanceof Sight sight) {
                test(sight, state, laplace).ifPresent(all::add);
            }
        }
        all.sort(Comparator.comparingDouble(Misfit::score).reversed());
        return all;
    }

    private static Optional<Misfit> test(Sight sight, State state, Laplace laplace) {
        Look look = new Look(sight, state);
        if (look.across * look.across + look.down * look.down < UNREMARKABLE) {
            return Optional.empty();
        }
        look.spreadBy(laplace);
        return Optional.of(look.misfit());
    }

    /** A mark's two residuals and the fit's own spread there, all in units of the mark's standard deviation. */
    private static final class Look {
        private final Sight sight;
        private final double focal;
        private final double[][] slopes;
        private double across;
        private double down;
        private double aa;
        private double ab;
        private double bb;

        Look(Sight sight, State state) {
            this.sight = sight;
            this.focal = state.frame(sight.view).focal;
            this.slopes = new double[2][state.x.length];
            int[] at = {0};
            sight.rows(state, (r, count, index, slope) -> {
                if (at[0] == 0) {
                    across = r;
                } else {
                    down = r;
                }
                for (int i = 0; i < count; i++) {
                    slopes[at[0]][index[i]] += slope[i];
                }
                at[0]++;
            });
        }

        void spreadBy(Laplace laplace) {
            laplace.factor().forward(slopes[0]);
            laplace.factor().forward(slopes[1]);
            aa = dot(slopes[0], slopes[0]);
            ab = dot(slopes[0], slopes[1]);
            bb = dot(slopes[1], slopes[1]);
        }

        /** The score, along the two directions in which the residuals' covariance has no mixed part. */
        Misfit misfit() {
            double a = 1 - aa;
            double b = -ab;
            double c = 1 - bb;
            double half = (a + c) / 2;
            double root = Math.hypot((a - c) / 2, b);
            double wrongPx = WRONG_SHARE * focal;
            double wrongPx2 = wrongPx * wrongPx;
            double score = 0;
            double moment = 0;
            double offX = 0;
            double offY = 0;
            for (int side = -1; side <= 1; side += 2) {
                double share = half + side * root;
                if (share < REDUNDANT) {
                    moment += wrongPx2;
                    continue;
                }
                double angle = Math.atan2(2 * b, a - c) / 2 + (side < 0 ? Math.PI / 2 : 0);
                double along = across * Math.cos(angle) + down * Math.sin(angle);
                double foretold = along / share;
                double expectedPx2 = sight.sigmaPx() * sight.sigmaPx() / share;
                double wrong = expectedPx2 / (expectedPx2 + wrongPx2);
                double off = foretold * sight.sigmaPx();
                score += foretold * foretold * share * (1 - wrong) + Math.log(wrong);
                moment += (1 - wrong) * ((1 - wrong) * off * off + expectedPx2);
                offX += off * Math.cos(angle);
                offY += off * Math.sin(angle);
            }
            score += 2 * Math.log(moment / (2 * wrongPx2));
            return new Misfit(sight, score, Math.hypot(offX, offY));
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
