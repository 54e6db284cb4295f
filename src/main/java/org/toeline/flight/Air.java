package org.toeline.flight;

import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;

/**
 * The air a ball flies through: the same all along the flight.
 *
 * @param densityKgPerM3  density, above zero
 * @param viscosityM2PerS kinematic viscosity, above zero
 * @param windTMps        wind along the target line, positive towards the target (from behind), m/s
 * @param windHMps        wind across it, positive towards {@code h}, m/s
 */
public record Air(double densityKgPerM3, double viscosityM2PerS, double windTMps, double windHMps) {

    /** Still dry air at 20 °C at sea level, as in Penner 2001 (Am. J. Phys. 69:563): 1.204 kg/m³; 1.51e-5 m²/s. */
    public static final Air USUAL = new Air(1.204, 1.51e-5, 0, 0);

    /** Pressure at sea level in the standard atmosphere, Pa (ISO 2533). */
    public static final double SEA_LEVEL_PA = 101_325;

    private static final double ZERO_C_IN_K = 273.15;
    private static final double MOST_WIND = 40;
    private static final double PA_IN_HPA = 100;

    private static final Sentences SENTENCES = Sentences.of(Air.class);

    public Air {
        Finite.requirePositive(densityKgPerM3, "densityKgPerM3");
        Finite.requirePositive(viscosityM2PerS, "viscosityM2PerS");
        if (!(Math.hypot(windTMps, windHMps) <= MOST_WIND)) {
            throw new IllegalArgumentException(SENTENCES.of("air.wind", windTMps, windHMps, MOST_WIND));
        }
    }

    /**
     * Still air from what a weather station shows.
     *
     * @param temperatureC     −30 to 50 °C
     * @param pressurePa       at the place itself, not reduced to sea level; 50 000 to 110 000 Pa
     * @param relativeHumidity 0 to 1
     */
    public static Air of(double temperatureC, double pressurePa, double relativeHumidity) {
        if (!(temperatureC >= -30 && temperatureC <= 50)) {
            throw new IllegalArgumentException(SENTENCES.of("air.temperature", temperatureC));
        }
        if (!(pressurePa >= 50_000 && pressurePa <= 110_000)) {
            throw new IllegalArgumentException(SENTENCES.of("air.pressure", pressurePa / PA_IN_HPA));
        }
        if (!(relativeHumidity >= 0 && relativeHumidity <= 1)) {
            throw new IllegalArgumentException(SENTENCES.of("air.humidity", relativeHumidity * 100));
        }
        double density = MoistAir.densityKgPerM3(temperatureC, pressurePa, relativeHumidity);
        return new Air(density, dynamicViscosity(temperatureC) / density, 0, 0);
    }

    /** Still air at an altitude above sea level, from the pressure that the standard atmosphere has there. */
    public static Air atAltitude(double temperatureC, double altitudeM, double relativeHumidity) {
        return of(temperatureC, pressureAtPa(altitudeM), relativeHumidity);
    }

    /**
     * Pressure in the troposphere of the standard atmosphere (ISO 2533, the ICAO standard atmosphere): 288.15 K at sea
     * level, 6.5 K colder a kilometre.
     */
    static double pressureAtPa(double altitudeM) {
        if (!(altitudeM >= -500 && altitudeM <= 5000)) {
            throw new IllegalArgumentException(SENTENCES.of("air.altitude", altitudeM));
        }
        return SEA_LEVEL_PA * Math.pow(1 - 0.0065 * altitudeM / 288.15, 5.25588);
    }

    /** Sutherland's formula with the constants of the U.S. Standard Atmosphere 1976 (equation 51), Pa s. */
    private static double dynamicViscosity(double temperatureC) {
        double kelvin = temperatureC + ZERO_C_IN_K;
        return 1.458e-6 * Math.pow(kelvin, 1.5) / (kelvin + 110.4);
    }

    public Air withWind(double alongTMps, double acrossHMps) {
        return new Air(densityKgPerM3, viscosityM2PerS, alongTMps, acrossHMps);
    }
}
