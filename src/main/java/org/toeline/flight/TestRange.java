package org.toeline.flight;

import org.toeline.language.Sentences;

/**
 * The regression of the rule makers' indoor test range for the example ball of US patent 6,186,002 B1: C_L = 0.0860 + 0.6463 S
 * − 0.0122/Re² + 1.4789 S², C_D = 0.2028 + 2.8466 S² + 0.0165 Re − 0.2159 S, Re in 10⁵, for Re from 0.81 to 2.0 and S from
 * 0.044 to 0.218; read as others quote it. Beyond the ends both are held. Without any spin there is no lift: the regression's
 * own 0.086 is that of a ball that spins a little.
 */
public record TestRange() implements Aerodynamics {

    private static final double UNIT = 1e5;
    private static final double RE_LEAST = 0.81;
    private static final double RE_MOST = 2.0;
    private static final double S_LEAST = 0.044;
    private static final double S_MOST = 0.218;

    @Override
    public String words() {
        return Sentences.of(TestRange.class).of("model.test-range");
    }

    @Override
    public double drag(double reynolds, double spinRatio) {
        double s = held(spinRatio, S_LEAST, S_MOST);
        return 0.2028 + 2.8466 * s * s + 0.0165 * held(reynolds / UNIT, RE_LEAST, RE_MOST) - 0.2159 * s;
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        double re = held(reynolds / UNIT, RE_LEAST, RE_MOST);
        double s = held(spinRatio, S_LEAST, S_MOST);
        double lift = 0.0860 + 0.6463 * s - 0.0122 / (re * re) + 1.4789 * s * s;
        return lift * Math.min(1, spinRatio / S_LEAST);
    }

    private static double held(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    @Override
    public boolean covers(double reynolds, double spinRatio) {
        return reynolds >= RE_LEAST * UNIT && reynolds <= RE_MOST * UNIT && spinRatio >= S_LEAST && spinRatio <= S_MOST;
    }
}
