package org.toeline.reading;

import org.toeline.geometry.Finite;

/**
 * A figure and its standard uncertainty, both in one unit that the caller knows. What changes between lessons is
 * computed from these, since an earlier lesson's figures are kept as they were stated.
 *
 * @param standardUncertainty above zero
 */
public record Measured(double value, double standardUncertainty) {

    public Measured {
        Finite.require(value, "value");
        Finite.requirePositive(standardUncertainty, "standardUncertainty");
    }

    /** A reading in the unit a person reads. */
    public static Measured shown(Reading reading) {
        return new Measured(reading.shownValue(), reading.shownStandardUncertainty());
    }
}
