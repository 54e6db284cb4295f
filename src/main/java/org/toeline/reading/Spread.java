package org.toeline.reading;

/**
 * What a quantity may be, given what was marked: a distribution. A {@link Normal}, or where a mark is in doubt the
 * {@link Mixture} of what it is if the mark is right and if it is wrong.
 */
public sealed interface Spread permits Normal, Mixture {

    double standardUncertainty();

    /** The value below which the quantity lies with probability {@code p}, in (0, 1). */
    double quantile(double p);

    /** The probability that the quantity is at most {@code x}. */
    double probabilityBelow(double x);
}
