package org.toeline.reading;

import org.toeline.geometry.Finite;
import org.toeline.posture.Source;

/**
 * A measured quantity with its uncertainty, in metres, radians or a plain number; {@link #kind()} has the unit a person
 * reads, and the {@code shown…} methods give the figures in it.
 *
 * @param value       the best estimate: the mean of the distribution, but never outside the 95 % interval
 * @param spread      the distribution of what the quantity may be, given the marks
 * @param low         lower end of the 95 % interval
 * @param high        upper end of the 95 % interval
 * @param dominatedBy where the largest share of the uncertainty comes from
 */
public record Reading(ReadingKind kind, double value, Spread spread, double low, double high, Source dominatedBy) {

    public Reading {
        Finite.require(value, kind.id());
    }

    /** With the interval that follows from the spread. */
    public Reading(ReadingKind kind, double value, Spread spread, Source dominatedBy) {
        this(kind, value, spread, spread.quantile(0.025), spread.quantile(0.975), dominatedBy);
    }

    public double standardUncertainty() {
        return spread.standardUncertainty();
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
