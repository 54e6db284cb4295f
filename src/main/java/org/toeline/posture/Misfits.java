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

    /**
     * A mark is doubted when being wrong explains it better than being right by this much: twice the logarithm of the
     * odds against a wrong mark, set so that about 1 clean sheet in 60 raises a false doubt (see the accuracy study).
     */
    private static final double DOUBTED = 4.6;
    /** The s of a wrong mark's offset over the focal length: 41 px of 1460. */
    private static final double WRONG_SHARE = 0.028;
    /** Below this share of its own variance a residual cannot be told from what the mark itself decided. */
    private static final double REDUNDANT = 0.02;

    /** The odds that a mark is wrong before anything is seen of it: assumed, no source. */
    private static final double USUALLY_WRONG = 0.02;

    private Misfits() {}

    /** How much better a wrong mark explains what is seen than a right one, and by how many pixels it would have to move. */
    record Misfit(Sight sight, double score, double offPx) {

        /** How likely the mark is wrong. */
        double odds() {
            double wrong = USUALLY_WRONG * Math.exp(Math.min(score, 200) / 2);
            return wrong / (1 + wrong);
        }
    }

    static Optional<Misfit> worst(List<Knowledge> knowledge, State state, Laplace laplace) {
        List<Misfit> all = new ArrayList<>();
        for (Knowledge k : knowledge) {
            if (k instanceof Sight sight) {
                test(sight, state, laplace).ifPresent(all::add);
            }
        }
        return all.stream().max(Comparator.comparingDouble(Misfit::score)).filter(m -> m.score > DOUBTED);
    }

    private static Optional<Misfit> test(Sight sight, State state, Laplace laplace) {
        double[] residual = new double[2];
        double[][] spread = new double[2][state.x.length];
        int[] at = {0};
        sight.rows(state, (r, count, index, slope) -> {
            residual[at[0]] = r;
            for (int i = 0; i < count; i++) {
                spread[at[0]][index[i]] += slope[i];
            }
            at[0]++;
        });
        double quick = residual[0] * residual[0] + residual[1] * residual[1];
        if (quick < 0.5) {
            return Optional.empty();
        }
        laplace.factor().forward(spread[0]);
        laplace.factor().forward(spread[1]);
        double a = 1 - dot(spread[0], spread[0]);
        double b = -dot(spread[0], spread[1]);
        double c = 1 - dot(spread[1], spread[1]);
        double half = (a + c) / 2;
        double root = Math.hypot((a - c) / 2, b);
        double wrongPx = WRONG_SHARE * state.frame(sight.view).focal;
        double wrongPx2 = wrongPx * wrongPx;
        double score = 0;
        double moment = 0;
        double offX = 0;
        double offY = 0;
        for (int side = -1; side <= 1; side += 2) {
            double value = half + side * root;
            if (value < REDUNDANT) {
                moment += wrongPx2;
                continue;
            }
            double angle = Math.atan2(2 * b, a - c) / 2 + (side < 0 ? Math.PI / 2 : 0);
            double along = residual[0] * Math.cos(angle) + residual[1] * Math.sin(angle);
            double expectedPx2 = sight.sigmaPx() * sight.sigmaPx() / value;
            double wrong = expectedPx2 / (expectedPx2 + wrongPx2);
            double off = along / value * sight.sigmaPx();
            score += along * along / value * (1 - wrong) + Math.log(wrong);
            moment += (1 - wrong) * ((1 - wrong) * off * off + expectedPx2);
            offX += along / value * Math.cos(angle);
            offY += along / value * Math.sin(angle);
        }
        score += 2 * Math.log(moment / (2 * wrongPx2));
        return Optional.of(new Misfit(sight, score, Math.hypot(offX, offY) * sight.sigmaPx()));
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
