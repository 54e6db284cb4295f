package org.toeline.flight;

/**
 * How the ball leaves the club: all that a flight needs.
 *
 * @param speedMps        speed, (0, 120] m/s
 * @param angleRad        elevation, (0, π/2)
 * @param directionRad    heading from the target line towards {@code h}, (−π/2, π/2)
 * @param spinRadPerS     rate of spin, [0, 2000] rad/s; with the axis level it is back spin
 * @param axisRad         tilt of the axis, [−π/2, π/2]; positive bends the flight towards {@code h}. The axis is square
 *                        to the first flight: spin about the line of flight does not bend it and is not measured
 */
public record Launch(double speedMps, double angleRad, double directionRad, double spinRadPerS, double axisRad) {

    private static final double MOST_SPEED = 120;
    private static final double MOST_SPIN = 2000;

    public Launch {
        if (!makesAFlight(speedMps, angleRad, spinRadPerS, directionRad, axisRad)) {
            throw new IllegalArgumentException("speed " + speedMps + " m/s, angle " + angleRad + " rad, direction "
                    + directionRad + " rad, spin " + spinRadPerS + " rad/s, axis " + axisRad + " rad; needed are (0, "
                    + MOST_SPEED + "], (0, π/2), (−π/2, π/2), [0, " + MOST_SPIN + "], [−π/2, π/2]");
        }
    }

    /** In the units of the trade: m/s, degrees and turns a minute, straight along the target line. */
    public static Launch straight(double speedMps, double angleDeg, double spinRpm) {
        return new Launch(speedMps, Math.toRadians(angleDeg), 0, FigureUnit.TURNS_PER_MINUTE.toInside(spinRpm), 0);
    }

    static boolean makesAFlight(
            double speedMps, double angleRad, double spinRadPerS, double directionRad, double axisRad) {
        return speedMps > 0
                && speedMps <= MOST_SPEED
                && angleRad > 0
                && angleRad < Math.PI / 2
                && spinRadPerS >= 0
                && spinRadPerS <= MOST_SPIN
                && Math.abs(directionRad) < Math.PI / 2
                && Math.abs(axisRad) <= Math.PI / 2;
    }

    /** Velocity along t, h and u, m/s. */
    double[] velocity() {
        double level = speedMps * Math.cos(angleRad);
        return new double[] {
            level * Math.cos(directionRad), level * Math.sin(directionRad), speedMps * Math.sin(angleRad)
        };
    }

    /** Unit vector of the spin (right-hand rule) along t, h and u: level, it points to −h and lifts. */
    double[] axis() {
        double cosD = Math.cos(directionRad);
        double sinD = Math.sin(directionRad);
        double sinA = Math.sin(angleRad);
        double level = -Math.cos(axisRad);
        double tilted = Math.sin(axisRad);
        return new double[] {
            -level * sinD - tilted * sinA * cosD, level * cosD - tilted * sinA * sinD, tilted * Math.cos(angleRad)
        };
    }
}
