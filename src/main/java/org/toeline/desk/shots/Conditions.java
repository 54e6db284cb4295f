package org.toeline.desk.shots;

import org.toeline.flight.Air;

/**
 * The air as a coach states it.
 *
 * @param temperatureC    °C
 * @param from            what {@code height} is
 * @param height          altitude in metres, or pressure at the place itself in hPa, by {@code from}
 * @param humidityPercent relative
 * @param behindMps       wind from behind, m/s; below zero it blows against the shots
 * @param fromLeftMps     wind from the left, looking at the target, m/s; below zero from the right
 */
record Conditions(
        double temperatureC, From from, double height, double humidityPercent, double behindMps, double fromLeftMps) {

    static final Conditions USUAL = new Conditions(20, From.ALTITUDE, 0, 50, 0, 0);

    private static final double PA_IN_HPA = 100;
    private static final double PERCENT = 100;

    /** What the density is told by. */
    enum From {
        ALTITUDE("altitude"),
        PRESSURE("pressure");

        private final String id;

        From(String id) {
            this.id = id;
        }

        /** The name in documents. */
        String id() {
            return id;
        }
    }

    Conditions {
        air(temperatureC, from, height, humidityPercent, behindMps, fromLeftMps);
    }

    /** Wind from the left blows to the right, where {@code h} is below zero. */
    private static Air air(
            double temperatureC,
            From from,
            double height,
            double humidityPercent,
            double behindMps,
            double fromLeftMps) {
        Air still = from == From.ALTITUDE
                ? Air.atAltitude(temperatureC, height, humidityPercent / PERCENT)
                : Air.of(temperatureC, height * PA_IN_HPA, humidityPercent / PERCENT);
        return still.withWind(behindMps, -fromLeftMps);
    }

    Air air() {
        return air(temperatureC, from, height, humidityPercent, behindMps, fromLeftMps);
    }
}
