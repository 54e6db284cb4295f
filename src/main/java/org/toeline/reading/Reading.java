package org.toeline.reading;

import org.toeline.geometry.Finite;
import org.toeline.posture.Source;

/**
 * A measured quantity with its uncertainty, in metres, radians or a plain number; {@link #kind()} has the unit a person
 * reads, and the {@code shown…} methods give the figures in it.
 *
 * @param value       the best estimate: the mean of the distribution, but never outside the 95 % interval
 * @param spread      the distribution of what the quantity may be, given the marks
 * @param dominatedBy where the largest share of the uncertainty comes from
 */
public record Reading(ReadingKind kind, double value, Spread spread, Source dominatedBy) {

    public Reading {
        Finite.require(value, kind.id());
    }

    public double standardUncertainty() {
        return spread.standardUncertainty();
    }

    /** Lower end of the 95 % interval. */
    public double low() {
        return spread.quantile(0.025);
    }

    /** Upper end of the 95 % interval. */
    public double high() {
        return spread.quantile(0.975);
    }

    public double shownValue() {
        return kind.unit().fromInside(value);
    }

    public double shownStandardUncertainty() {
        return kind.unit().fromInside(standardUncertainty());
    }

    public double shownLow() {
        return kind.unit().fromInside(low());
    }

    public double shownHigh() {
        return kind.unit().fromInside(high());
    }
}
