package org.toeline.flight;

/** What kind of thing a figure of a shot is, and hence which units it may come in. */
public enum Quantity {
    SPEED(FigureUnit.METRES_PER_SECOND),
    LENGTH(FigureUnit.METRE),
    ANGLE(FigureUnit.RADIAN),
    SPIN(FigureUnit.RADIANS_PER_SECOND),
    TIME(FigureUnit.SECOND),
    RATIO(FigureUnit.TIMES);

    private final FigureUnit inside;

    Quantity(FigureUnit inside) {
        this.inside = inside;
    }

    /** The unit that is used inside the program. */
    public FigureUnit inside() {
        return inside;
    }
}
