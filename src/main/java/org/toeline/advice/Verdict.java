package org.toeline.advice;

/** How a reading stands to its range. */
public enum Verdict {
    IN_RANGE("in-range"),
    OUT_LOW("out-low"),
    OUT_HIGH("out-high"),
    /** The 95 % interval lies neither inside nor outside. */
    TOO_CLOSE("too-close"),
    /** The interval is wider than the range itself, and not wholly outside it. */
    CANNOT_TELL("cannot-tell"),
    /** There is no range that has a source for children. */
    NOT_FOR_CHILDREN("not-for-children"),
    /** It rests on marks that nobody has accepted yet. */
    DRAFT("draft"),
    /** The marks contradict each other, so that nothing is judged. */
    WITHHELD("withheld");

    /** Parts of a unit that are compared: finer than anybody writes. */
    private static final double FINEST = 1e6;

    private final String id;

    Verdict(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    public boolean isOut() {
        return this == OUT_LOW || this == OUT_HIGH;
    }

    /** Whether the reading surely lies in the range, or surely outside. */
    boolean isDecided() {
        return this == IN_RANGE || isOut();
    }

    /** Whether it tells where the reading lies, as far as the pictures tell. */
    public boolean isJudged() {
        return this != DRAFT && this != WITHHELD && this != NOT_FOR_CHILDREN;
    }

    /**
     * The one rule for words and drawing, of nothing but the ends of the drawn interval and of the range, all in one unit:
     * in range when the interval lies inside, out when it lies outside, cannot tell when it is wider than the range, else too
     * close to call.
     */
    public static Verdict of(double low, double high, double rangeLow, double rangeHigh) {
        double from = rounded(low);
        double to = rounded(high);
        double lower = rounded(rangeLow);
        double upper = rounded(rangeHigh);
        if (to < lower) {
            return OUT_LOW;
        }
        if (from > upper) {
            return OUT_HIGH;
        }
        if (from >= lower && to <= upper) {
            return IN_RANGE;
        }
        return to - from > upper - lower ? CANNOT_TELL : TOO_CLOSE;
    }

    /** A figure as documents write it, which is what is compared. */
    public static double rounded(double shown) {
        return Math.rint(shown * FINEST) / FINEST;
    }
}
