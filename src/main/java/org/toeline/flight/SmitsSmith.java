package org.toeline.flight;

import org.toeline.language.Sentences;

/**
 * Smits and Smith 1994 (Science and Golf II, 340–347), measured on one ball in a wind tunnel for 70 000 &lt; Re &lt;
 * 210 000 and 0.08 &lt; S &lt; 0.2: C_D = 0.24 + 0.18 S + 0.06 sin(π(Re − 90 000)/200 000), C_L = 0.54 S^0.4.
 *
 * <p>Beyond the range Re is held at its end, so that the sine does not come round again; S is not held, since both terms
 * just go on rising.
 */
public enum SmitsSmith implements Aerodynamics {
    /** As published. */
    WITH_REYNOLDS_TERM("model.smits-smith"),
    /**
     * Without the term in Re, hence with less drag as long as the ball is fast. Not as published: many have used it so,
     * and it is the longer end of the band.
     */
    WITHOUT_REYNOLDS_TERM("model.smits-smith-plain");

    private static final double RE_LEAST = 70_000;
    private static final double RE_MOST = 210_000;

    private final String key;

    SmitsSmith(String key) {
        this.key = key;
    }

    @Override
    public String words() {
        return Sentences.of(SmitsSmith.class).of(key);
    }

    @Override
    public double drag(double reynolds, double spinRatio) {
        double plain = 0.24 + 0.18 * spinRatio;
        if (this == WITHOUT_REYNOLDS_TERM) {
            return plain;
        }
        double held = Math.max(RE_LEAST, Math.min(RE_MOST, reynolds));
        return plain + 0.06 * Math.sin(Math.PI * (held - 90_000) / 200_000);
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        return 0.54 * Math.pow(spinRatio, 0.4);
    }

    @Override
    public boolean covers(double reynolds, double spinRatio) {
        return reynolds >= RE_LEAST && reynolds <= RE_MOST && spinRatio >= 0.08 && spinRatio <= 0.2;
    }
}
