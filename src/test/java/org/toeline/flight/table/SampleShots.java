package org.toeline.flight.table;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.toeline.flight.Air;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Flight;
import org.toeline.flight.Launch;
import org.toeline.flight.SmitsSmith;
import org.toeline.flight.Trajectory;

/**
 * A command: writes the sample tables of shots, {@code before.csv} and {@code after.csv}, into the folder named. The
 * shots are drawn, not hit: a drive teed low with the ball too far forward, and after the change (common practice: 9 to
 * 11° and close to 3000 turns a minute against 12 to 14°), flown by Smits and Smith without the Reynolds term, with the
 * spread of a fair player; the seventh shot before is a mishit.
 */
public final class SampleShots {

    private SampleShots() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        SplittableRandom random = new SplittableRandom(2026);
        Files.writeString(folder.resolve("before.csv"), english(random), StandardCharsets.UTF_8);
        Files.write(
                folder.resolve("after.csv"), german(random).getBytes(java.nio.charset.Charset.forName("windows-1252")));
    }

    private static Launch shot(SplittableRandom random, double mph, double launchDeg, double rpm, double tiltDeg) {
        return new Launch(
                FigureUnit.MILES_PER_HOUR.toInside(mph + 1.6 * random.nextGaussian()),
                Math.toRadians(launchDeg + 1.1 * random.nextGaussian()),
                Math.toRadians(1.4 * random.nextGaussian()),
                FigureUnit.TURNS_PER_MINUTE.toInside(rpm + 190 * random.nextGaussian()),
                Math.toRadians(tiltDeg + 3 * random.nextGaussian()));
    }

    private static Flight fly(Launch launch) {
        return new Trajectory(Air.USUAL, SmitsSmith.WITHOUT_REYNOLDS_TERM).fly(launch);
    }

    private static String english(SplittableRandom random) {
        StringBuilder out = new StringBuilder("Shot,Ball Speed (mph),Launch Angle (deg),Launch Direction (deg),"
                + "Spin Rate (rpm),Spin Axis (deg),Carry (yd),Apex (ft),Carry Side (yd)\r\n");
        for (int i = 1; i <= 10; i++) {
            Launch launch = i == 7 ? shot(random, 118, 4.5, 3900, -14) : shot(random, 146, 10.1, 2950, -8);
            Flight flight = fly(launch);
            out.append(String.format(
                    Locale.ROOT,
                    "%d,%.1f,%.1f,%s,%.0f,%s,%.1f,%.0f,%s\r\n",
                    i,
                    FigureUnit.MILES_PER_HOUR.fromInside(launch.speedMps()),
                    Math.toDegrees(launch.angleRad()),
                    lettered(Math.toDegrees(launch.directionRad())),
                    FigureUnit.TURNS_PER_MINUTE.fromInside(launch.spinRadPerS()),
                    lettered(Math.toDegrees(launch.axisRad())),
                    FigureUnit.YARD.fromInside(flight.carryM()),
                    FigureUnit.FOOT.fromInside(flight.apexM()),
                    lettered(FigureUnit.YARD.fromInside(flight.sideM()))));
        }
        return out.append("Average,,,,,,,,\r\n").toString();
    }

    private static String lettered(double towardsLeft) {
        return String.format(Locale.ROOT, "%.1f%s", Math.abs(towardsLeft), towardsLeft > 0 ? "L" : "R");
    }

    private static String german(SplittableRandom random) {
        List<String> rows = new ArrayList<>();
        rows.add("Schlag;Ballgeschwindigkeit [km/h];Abflugwinkel [°];Abflugrichtung [°] (+ = rechts);Backspin [U/min];"
                + "Sidespin [U/min] (+ = rechts);Flugweite [m];Scheitelhöhe [m];"
                + "Seitliche Abweichung Carry [m] (+ = rechts)");
        for (int i = 1; i <= 10; i++) {
            Launch launch = shot(random, 147, 13.0, 2550, -1);
            Flight flight = fly(launch);
            double rpm = FigureUnit.TURNS_PER_MINUTE.fromInside(launch.spinRadPerS());
            rows.add(String.format(
                    Locale.GERMANY,
                    "%d;%.1f;%.1f;%.1f;%.0f;%.0f;%.1f;%.1f;%.1f",
                    i,
                    FigureUnit.KILOMETRES_PER_HOUR.fromInside(launch.speedMps()),
                    Math.toDegrees(launch.angleRad()),
                    -Math.toDegrees(launch.directionRad()),
                    rpm * Math.cos(launch.axisRad()),
                    -rpm * Math.sin(launch.axisRad()),
                    flight.carryM(),
                    flight.apexM(),
                    -flight.sideM()));
        }
        return String.join("\r\n", rows) + "\r\n";
    }
}
