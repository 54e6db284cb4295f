package org.toeline.posture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which mark disagrees with the rest. A mark's two residuals r have covariance S = I − JΣJᵀ after the fit (Baarda
 * 1968); rᵀS⁻¹r is chi-square with 2 degrees of freedom when the mark is as good as it claims.
 */
final class Misfits {

    /**
     * A mark is doubted above this: with some 50 marks a clean sheet then raises a false doubt in about 1 of 100
     * (exp(−17/2) · 50 = 0.01).
     */
    static final double DOUBTED = 17;
    /** Below this share of its own variance a residual cannot be told from what the mark itself decided. */
    private static final double REDUNDANT = 0.02;

    private Misfits() {
    }

    /** How badly a mark fits, and by how many pixels it would have to move. */
    record Misfit(Sight sight, double chiSquare, double offPx) {
    }

    static Optional<Misfit> worst(List<Knowledge> knowledge, State state, Laplace laplace) {
        List<Misfit> all = new ArrayList<>();
        for (Knowledge k : knowledge) {
            if (k instanceof Sight sight) {
                test(sight, state, laplace).ifPresent(all::add);
            }
        }
        return all.stream().max(Comparator.comparingDouble(Misfit::chiSquare)).filter(m -> m.chiSquare > DOUBTED);
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
        double chi = 0;
        double offX = 0;
        double offY = 0;
        for (int side = -1; side <= 1; side += 2) {
            double value = half + side * root;
            if (value < REDUNDANT) {
                continue;
            }
            double angle = Math.atan2(2 * b, a - c) / 2 + (side < 0 ? Math.PI / 2 : 0);
            double along = residual[0] * Math.cos(angle) + residual[1] * Math.sin(angle);
            chi += along * along / value;
            offX += along / value * Math.cos(angle);
            offY += along / value * Math.sin(angle);
        }
        return Optional.of(new Misfit(sight, chi, Math.hypot(offX, offY) * sight.sigmaPx()));
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
