package org.toeline.desk.film;

/**
 * A stretch of time, seconds.
 *
 * @param toS not before {@code fromS}
 */
public record Span(double fromS, double toS) {

    public Span {
        if (!(fromS <= toS)) {
            throw new IllegalArgumentException(fromS + " > " + toS);
        }
    }

    /** The nearest moment in it. */
    public double within(double atS) {
        return Math.max(fromS, Math.min(toS, atS));
    }
}
