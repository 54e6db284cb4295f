package org.toeline.mark;

import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;

/**
 * How tall the player is, barefoot: a scale, but never one by itself.
 *
 * @param heightM 0.8 to 2.5 m
 * @param sigmaM  standard deviation, metres, above zero
 */
public record Stature(double heightM, double sigmaM) {

    /** Heights that people tell are 12 to 23 mm too tall, ± 27 mm: men's and women's studies, quoted in handbooks. */
    public static final double TOLD_TOO_TALL_M = 0.0175;

    public static final double TOLD_SIGMA_M = 0.027;

    public Stature {
        Finite.require(heightM, "heightM");
        if (heightM < 0.8 || heightM > 2.5) {
            throw new IllegalArgumentException(Sentences.of(Stature.class).of("stature.range", heightM));
        }
        Finite.requirePositive(sigmaM, "sigmaM");
    }

    /** What the player said. */
    public static Stature told(double heightM) {
        return new Stature(heightM - TOLD_TOO_TALL_M, TOLD_SIGMA_M);
    }
}
