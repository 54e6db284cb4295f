package org.toeline.flight;

/**
 * Density of moist air: the CIPM-2007 equation (Picard, Davis, Gläser and Fujii 2008, Metrologia 45:149–155, equation 1
 * and appendix A) with 400 µmol/mol of carbon dioxide. Meant for 15 to 27 °C and 600 to 1100 hPa, where it holds to 22
 * parts in a million; a little outside it is still far better than a ball's flight needs.
 */
final class MoistAir {

    private static final double GAS_CONSTANT = 8.314472;
    private static final double MOLAR_MASS_DRY = 28.96546e-3;
    private static final double MOLAR_MASS_WATER = 18.01528e-3;

    private MoistAir() {}

    static double densityKgPerM3(double celsius, double pascal, double humidity) {
        double kelvin = celsius + 273.15;
        double water = humidity * enhancement(celsius, pascal) * saturationPa(kelvin) / pascal;
        return pascal
                * MOLAR_MASS_DRY
                / (compressibility(celsius, pascal, water) * GAS_CONSTANT * kelvin)
                * (1 - water * (1 - MOLAR_MASS_WATER / MOLAR_MASS_DRY));
    }

    static double saturationPa(double kelvin) {
        return Math.exp(1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin);
    }

    private static double enhancement(double celsius, double pascal) {
        return 1.00062 + 3.14e-8 * pascal + 5.6e-7 * celsius * celsius;
    }

    private static double compressibility(double celsius, double pascal, double water) {
        double ratio = pascal / (celsius + 273.15);
        return 1
                - ratio
                        * (1.58123e-6
                                - 2.9331e-8 * celsius
                                + 1.1043e-10 * celsius * celsius
                                + (5.707e-6 - 2.051e-8 * celsius) * water
                                + (1.9898e-4 - 2.376e-6 * celsius) * water * water)
                + ratio * ratio * (1.83e-11 - 0.765e-8 * water * water);
    }
}
