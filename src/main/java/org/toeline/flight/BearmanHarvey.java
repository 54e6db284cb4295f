package org.toeline.flight;

import org.toeline.language.Sentences;

/**
 * Bearman and Harvey 1976 (Aeronautical Quarterly 27:112–122), as far as it is quoted: C_L from 0.08 to 0.25 and C_D
 * from 0.27 to 0.32 as S goes from 0.02 to 0.3, for 126 000 &lt; Re &lt; 238 000. Between the ends a straight line; the
 * curves of the paper itself bend, so that the middle is the less certain part. Beyond the ends S is held.
 */
public record BearmanHarvey() implements Aerodynamics {

    private static final double[] SPIN_RATIO = {0.02, 0.3};
    private static final double[] DRAG = {0.27, 0.32};
    private static final double[] LIFT = {0.08, 0.25};
    private static final double RE_LEAST = 126_000;
    private static final double RE_MOST = 238_000;

    @Override
    public String words() {
        return Sentences.of(BearmanHarvey.class).of("model.bearman-harvey");
    }

    @Override
    public double drag(double reynolds, double spinRatio) {
        return between(DRAG, spinRatio);
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        return spinRatio == 0 ? 0 : between(LIFT, spinRatio);
    }

    private static double between(double[] ends, double spinRatio) {
        double share = (spinRatio - SPIN_RATIO[0]) / (SPIN_RATIO[1] - SPIN_RATIO[0]);
        return ends[0] + Math.max(0, Math.min(1, share)) * (ends[1] - ends[0]);
    }

    @Override
    public boolean covers(double reynolds, double spinRatio) {
        return reynolds >= RE_LEAST && reynolds <= RE_MOST && spinRatio >= SPIN_RATIO[0] && spinRatio <= SPIN_RATIO[1];
    }
}
