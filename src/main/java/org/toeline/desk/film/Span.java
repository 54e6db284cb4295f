package org.toeline.desk.film;

/**
 * A stretch of time, seconds.
 *
 * @param toS not before {@code fromS}
 */
public record Span(double fromS, double toS) {

    public Span {
        if (!(fromS <= toS)) {
            throw new IllegalArgumentException("from " + fromS + " s to " + toS + " s; the end cannot come first");
        }
    }

    /** The nearest moment in it. */
    public double within(double atS) {
        return Math.max(fromS, Math.min(toS, atS));
    }
}
