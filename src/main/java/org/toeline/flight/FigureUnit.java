package org.toeline.flight;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Units in which people write down shots. The yard is the international one, 0.9144 m; the mile 1609.344 m; the foot
 * 0.3048 m (exact by definition, NIST SP 811, appendix B.8).
 */
public enum FigureUnit {
    METRES_PER_SECOND("m/s", 1),
    MILES_PER_HOUR("mph", 0.44704),
    KILOMETRES_PER_HOUR("km/h", 1 / 3.6),
    METRE("m", 1),
    YARD("yd", 0.9144),
    FOOT("ft", 0.3048),
    RADIAN("rad", 1),
    DEGREE("°", Math.PI / 180),
    RADIANS_PER_SECOND("rad/s", 1),
    TURNS_PER_MINUTE("rpm", Math.PI / 30),
    SECOND("s", 1),
    /** A plain number: how many times one figure is another. */
    TIMES("×", 1);

    private final String id;
    private final double size;

    FigureUnit(String id, double size) {
        this.id = id;
        this.size = size;
    }

    /** The name in documents and in print. */
    public String id() {
        return id;
    }

    public Quantity quantity() {
        return switch (this) {
            case METRES_PER_SECOND, MILES_PER_HOUR, KILOMETRES_PER_HOUR -> Quantity.SPEED;
            case METRE, YARD, FOOT -> Quantity.LENGTH;
            case RADIAN, DEGREE -> Quantity.ANGLE;
            case RADIANS_PER_SECOND, TURNS_PER_MINUTE -> Quantity.SPIN;
            case SECOND -> Quantity.TIME;
            case TIMES -> Quantity.RATIO;
        };
    }

    /** A figure in this unit, in the unit used inside. */
    public double toInside(double figure) {
        return figure * size;
    }

    /** A figure in the unit used inside, in this unit. */
    public double fromInside(double figure) {
        return figure / size;
    }

    public static Optional<FigureUnit> of(String id) {
        return Arrays.stream(values()).filter(u -> u.id.equals(id)).findFirst();
    }

    /** The units a quantity may come in. */
    public static List<FigureUnit> of(Quantity quantity) {
        return Arrays.stream(values()).filter(u -> u.quantity() == quantity).toList();
    }
}
