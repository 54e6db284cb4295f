package org.toeline.reading;

/** What a quantity may be, given what was marked: a distribution. So far always a {@link Normal}. */
public sealed interface Spread permits Normal {

    double standardUncertainty();

    /** The value below which the quantity lies with probability {@code p}, in (0, 1). */
    double quantile(double p);

    /** The probability that the quantity is at most {@code x}. */
    double probabilityBelow(double x);
}
