package org.toeline.advice;

/** The unit in which a person reads lengths. */
public enum LengthUnit {
    CENTIMETRE("cm", 0.01),
    /** The international inch, 25.4 mm. */
    INCH("in", 0.0254);

    private final String id;
    private final double sizeM;

    LengthUnit(String id, double sizeM) {
        this.id = id;
        this.sizeM = sizeM;
    }

    /** The name in documents and in the resource bundle. */
    public String id() {
        return id;
    }

    public double fromMetres(double lengthM) {
        return lengthM / sizeM;
    }

    public double toMetres(double length) {
        return length * sizeM;
    }
}
