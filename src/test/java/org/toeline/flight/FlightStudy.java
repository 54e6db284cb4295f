package org.toeline.flight;

import java.util.List;
import java.util.Locale;

/**
 * A command: prints the tables of models in {@code docs/flight.md}: the common-practice drives and the mean drive of a
 * tour against what each model computes.
 */
public final class FlightStudy {

    /** A drive and what is commonly said of it: apex in feet and carry in yards, from low to high; 0 if nothing is. */
    private record Said(
            String name,
            double mph,
            double launchDeg,
            double rpm,
            double apexLow,
            double apexHigh,
            double carryLow,
            double carryHigh) {}

    /**
     * Common practice (no source): 145 to 150 mph, teed and set up well, 12 to 14°, 80 to 95 ft, 240 to 250 yd; teed low
     * or off the lead foot with open shoulders 9 to 11° and 70 to 75 ft, the latter with close to 3000 turns a minute.
     * No spin is given with the good drive: 2500 is supposed. The tour mean is published without apex or carry.
     */
    private static final List<Said> DRIVES = List.of(
            new Said("set up well, low end", 145, 12, 2500, 80, 95, 240, 250),
            new Said("set up well, middle", 147.5, 13, 2500, 80, 95, 240, 250),
            new Said("set up well, high end", 150, 14, 2500, 80, 95, 240, 250),
            new Said("teed low", 147.5, 10, 2500, 70, 75, 0, 0),
            new Said("off the lead foot, shoulders open", 147.5, 10, 3000, 70, 75, 0, 0),
            new Said("mean of a tour, 2015", 167.7, 10.8, 2599, 0, 0, 0, 0));

    private FlightStudy() {}

    public static void main(String[] args) {
        System.out.println("| drive | launch | said: apex ft, carry yd | "
                + String.join(
                        " | ",
                        FlightBand.MODELS.stream().map(Aerodynamics::words).toList()) + " |");
        System.out.println("| --- | --- | --- |" + " --- |".repeat(FlightBand.MODELS.size()));
        for (Said drive : DRIVES) {
            StringBuilder row = new StringBuilder(String.format(
                    Locale.ROOT,
                    "| %s | %.1f mph, %.1f°, %.0f rpm | %s, %s |",
                    drive.name,
                    drive.mph,
                    drive.launchDeg,
                    drive.rpm,
                    span(drive.apexLow, drive.apexHigh),
                    span(drive.carryLow, drive.carryHigh)));
            Launch launch = Launch.straight(FigureUnit.MILES_PER_HOUR.toInside(drive.mph), drive.launchDeg, drive.rpm);
            for (Aerodynamics model : FlightBand.MODELS) {
                Flight flight = new Trajectory(Air.USUAL, model).fly(launch);
                double apex = FigureUnit.FOOT.fromInside(flight.apexM());
                double carry = FigureUnit.YARD.fromInside(flight.carryM());
                row.append(String.format(
                        Locale.ROOT,
                        " %.0f%s, %.0f%s; %.0f° down, %.1f s; %.0f %% outside |",
                        apex,
                        off(apex, drive.apexLow, drive.apexHigh),
                        carry,
                        off(carry, drive.carryLow, drive.carryHigh),
                        Math.toDegrees(flight.descentRad()),
                        flight.hangTimeS(),
                        100 * flight.outsideShare()));
            }
            System.out.println(row);
        }
        means();
    }

    /** Each model against published means by club. */
    private static void means() {
        System.out.println("\n| club | launch | published: carry yd, height yd | "
                + String.join(
                        " | ",
                        FlightBand.MODELS.stream().map(Aerodynamics::words).toList()) + " |");
        System.out.println("| --- | --- | --- |" + " --- |".repeat(FlightBand.MODELS.size()));
        for (PublishedMeans mean : PublishedMeans.ALL) {
            StringBuilder row = new StringBuilder(String.format(
                    Locale.ROOT,
                    "| %s, %s | %.0f mph, %.1f°, %.0f rpm | %.0f, %.0f |",
                    mean.who(),
                    mean.club(),
                    mean.mph(),
                    mean.launchDeg(),
                    mean.rpm(),
                    mean.carryYd(),
                    mean.heightYd()));
            FlightBand.MODELS.forEach(m -> row.append(String.format(
                    Locale.ROOT, " %+.1f %%, %+.0f %% |", 100 * mean.carryOff(m), 100 * mean.heightOff(m))));
            System.out.println(row);
        }
        for (String who : List.of("men", "women", "")) {
            StringBuilder row = new StringBuilder("| **" + (who.isEmpty() ? "all" : who) + ", rms of carry** | | |");
            FlightBand.MODELS.forEach(
                    m -> row.append(String.format(Locale.ROOT, " **%.1f %%** |", 100 * PublishedMeans.rms(m, who))));
            System.out.println(row);
        }
    }

    private static String span(double low, double high) {
        return high == 0 ? "–" : String.format(Locale.ROOT, "%.0f–%.0f", low, high);
    }

    /** How far a figure lies outside what is said, in brackets; nothing inside. */
    private static String off(double figure, double low, double high) {
        if (high == 0) {
            return "";
        }
        double off = figure < low ? figure - low : Math.max(0, figure - high);
        return Math.abs(off) < 0.5 ? " (in)" : String.format(Locale.ROOT, " (%+.0f)", off);
    }
}
