package org.toeline.geometry;

/** Refuses values that are not finite, or not in range, with a message that names the value and what is allowed. */
public final class Finite {

    private Finite() {}

    public static double require(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + "; a finite number is needed");
        }
        return value;
    }

    public static double requirePositive(double value, String name) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + "; a finite number above zero is needed");
        }
        return value;
    }

    public static double requireNotNegative(double value, String name) {
        if (!(value >= 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + "; a finite number of zero or more is needed");
        }
        return value;
    }
}
