package org.toeline.reading;

/** What a quantity may be, given what was marked: a distribution. Two forms, see {@link Normal} and {@link Sampled}. */
public sealed interface Spread permits Normal, Sampled {

    double standardUncertainty();

    /** The value below which the quantity lies with probability {@code p}, in (0, 1). */
    double quantile(double p);

    /** The probability that the quantity is at most {@code x}. */
    double probabilityBelow(double x);
}
