package org.toeline.geometry;

import org.toeline.language.Sentences;

/** Refuses values that are not finite, or not in range, with a message that names the value and what is allowed. */
public final class Finite {

    private Finite() {}

    public static double require(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    Sentences.of(Finite.class).of("number.finite", name, Double.toString(value)));
        }
        return value;
    }

    public static double requirePositive(double value, String name) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    Sentences.of(Finite.class).of("number.positive", name, Double.toString(value)));
        }
        return value;
    }

    public static double requireNotNegative(double value, String name) {
        if (!(value >= 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    Sentences.of(Finite.class).of("number.not-negative", name, Double.toString(value)));
        }
        return value;
    }
}
