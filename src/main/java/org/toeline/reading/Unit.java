package org.toeline.reading;

/** The unit a reading is written in, and its size in the units used inside (metres, radians, plain numbers). */
public enum Unit {
    PERCENT("percent", 0.01),
    MILLIMETRE("mm", 0.001),
    CENTIMETRE("cm", 0.01),
    DEGREE("deg", Math.PI / 180),
    RATIO("ratio", 1);

    private final String id;
    private final double size;

    Unit(String id, double size) {
        this.id = id;
        this.size = size;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    /** A value of metres, radians or plain number, written in this unit. */
    public double fromInside(double inside) {
        return inside / size;
    }

    public double toInside(double shown) {
        return shown * size;
    }
}
