package org.toeline.flight.table;

import static org.toeline.flight.FigureUnit.DEGREE;
import static org.toeline.flight.FigureUnit.FOOT;
import static org.toeline.flight.FigureUnit.KILOMETRES_PER_HOUR;
import static org.toeline.flight.FigureUnit.METRE;
import static org.toeline.flight.FigureUnit.METRES_PER_SECOND;
import static org.toeline.flight.FigureUnit.MILES_PER_HOUR;
import static org.toeline.flight.FigureUnit.SECOND;
import static org.toeline.flight.FigureUnit.TURNS_PER_MINUTE;
import static org.toeline.flight.FigureUnit.YARD;
import static org.toeline.flight.ShotFigure.APEX;
import static org.toeline.flight.ShotFigure.BALL_SPEED;
import static org.toeline.flight.ShotFigure.CARRY;
import static org.toeline.flight.ShotFigure.CLUB_SPEED;
import static org.toeline.flight.ShotFigure.HANG_TIME;
import static org.toeline.flight.ShotFigure.LAUNCH_ANGLE;
import static org.toeline.flight.ShotFigure.LAUNCH_DIRECTION;
import static org.toeline.flight.ShotFigure.SIDE;
import static org.toeline.flight.ShotFigure.SPIN_RATE;
import static org.toeline.flight.table.MadeTables.DRIVES;
import static org.toeline.flight.table.MadeTables.english;
import static org.toeline.flight.table.MadeTables.made;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.toeline.flight.Shot;

/**
 * Tables of kinds that spreadsheets and other languages bring: written by hand of what people do (common practice), no
 * device's table among them.
 */
final class OddTables {

    private OddTables() {}

    static List<MadeTable> all() {
        return List.of(
                portuguese(),
                dutch(),
                korean(),
                mergedHeadings(),
                unitsInCells(),
                linesInHeadings(),
                everythingGrouped(),
                times(),
                daysAsNumbers(),
                sums(),
                clubsWithMeans(),
                bracketsForMinus(),
                capitals(),
                powersOfTen(),
                swiss(),
                shares(),
                feetAndInches(),
                linesInRemarks());
    }

    private static MadeTable portuguese() {
        return made("Portuguese, which is not among the six")
                .decimalComma()
                .number("Tacada")
                .col("Velocidade da bola (km/h)", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Ângulo de lançamento (°)", LAUNCH_ANGLE, DEGREE, 1)
                .decoy("Distância ao pino (m)", MadeTables.drawn(9, 3, 1))
                .col("Distância de voo (m)", CARRY, METRE, 1);
    }

    private static MadeTable dutch() {
        return made("Dutch, which is not among the six")
                .decimalComma()
                .number("Slag")
                .col("Balsnelheid (km/u)", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Lanceerhoek (°)", LAUNCH_ANGLE, DEGREE, 1)
                .col("Spin (tpm)", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("Carry (m)", CARRY, METRE, 1)
                .decoy("Afwijking (m)", MadeTables.drawn(4, 3, 1));
    }

    private static MadeTable korean() {
        return made("Korean, which is not among the six")
                .commas()
                .number("번호")
                .col("볼 스피드 (m/s)", BALL_SPEED, METRES_PER_SECOND, 1)
                .col("발사각 (도)", LAUNCH_ANGLE, DEGREE, 1)
                .col("캐리 (m)", CARRY, METRE, 1);
    }

    private static MadeTable mergedHeadings() {
        return made("headings merged above two columns each")
                .above(";Ball;;Club;;Flight;")
                .number("No.")
                .col("Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Launch (deg)", LAUNCH_ANGLE, DEGREE, 1)
                .col("Speed (mph)", CLUB_SPEED, MILES_PER_HOUR, 1)
                .decoy("Launch (deg)", MadeTables.drawn(3, 1, 1))
                .col("Carry (yd)", CARRY, YARD, 1)
                .decoy("Carry (%)", MadeTables.drawn(98, 2, 0));
    }

    private static MadeTable unitsInCells() {
        MadeTable table = made("decimal commas with units in the cells").decimalComma();
        return table.number("Nr.")
                .cells("Ballgeschwindigkeit", BALL_SPEED, v -> table.number(v, 1) + " m/s")
                .cells("Abflugwinkel", LAUNCH_ANGLE, v -> table.number(DEGREE.fromInside(v), 1) + " °")
                .cells("Gesamtspin", SPIN_RATE, v -> grouped(TURNS_PER_MINUTE.fromInside(v), 0, '.', ',') + " U/min")
                .cells("Carry-Weite", CARRY, v -> table.number(v, 1) + " m");
    }

    private static MadeTable linesInHeadings() {
        return made("headings of two lines in quotes")
                .commas()
                .number("\"Shot\nno.\"")
                .col("\"Ball Speed\n(mph)\"", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("\"Launch Angle\n(deg)\"", LAUNCH_ANGLE, DEGREE, 1)
                .col("\"Carry\n(yd)\"", CARRY, YARD, 1);
    }

    private static MadeTable everythingGrouped() {
        return made("1.234,5 in every column that reaches it")
                .decimalComma()
                .number("Nr.")
                .cells(
                        "Ballgeschwindigkeit [km/h]",
                        BALL_SPEED,
                        v -> grouped(KILOMETRES_PER_HOUR.fromInside(v), 1, '.', ','))
                .cells("Gesamtspin [U/min]", SPIN_RATE, v -> grouped(TURNS_PER_MINUTE.fromInside(v), 1, '.', ','))
                .cells("Carry-Weite [m]", CARRY, v -> grouped(v, 1, '.', ','));
    }

    private static MadeTable times() {
        return english("a time of day, a time in flight with minutes, seconds since the first")
                .decoy(
                        "Time",
                        s -> String.format(Locale.ROOT, "14:%02d:%02d", 3 + DRIVES.indexOf(s), 7 * DRIVES.indexOf(s)))
                .cells("Hang Time", HANG_TIME, v -> String.format(Locale.ROOT, "0:%04.1f", v))
                .decoy("Elapsed Time (s)", s -> String.valueOf(41 * DRIVES.indexOf(s)));
    }

    private static MadeTable daysAsNumbers() {
        return english("days and times as a spreadsheet's numbers")
                .decoy("Date", s -> "46021")
                .decoy("Day", s -> "20260711")
                .decoy("Timestamp", s -> String.format(Locale.ROOT, "46021.%d", 58541 + 37 * DRIVES.indexOf(s)));
    }

    private static MadeTable sums() {
        return english("totals below, labelled and not")
                .sumsUp("Total", x -> Arrays.stream(x).sum(), 1)
                .sumsUp("", x -> Arrays.stream(x).sum(), 1)
                .sumsUp("Grand total (8)", x -> Arrays.stream(x).sum(), 1);
    }

    private static MadeTable clubsWithMeans() {
        return made("a mean within the table after each club")
                .decoy("Club", s -> DRIVES.indexOf(s) < 4 ? "Driver" : "7 Iron")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Carry (yd)", CARRY, YARD, 1)
                .before(4, "Driver Avg;" + mean(0, 4, BALL_SPEED, MILES_PER_HOUR) + ";" + mean(0, 4, CARRY, YARD))
                .before(8, "7 Iron Avg;" + mean(4, 8, BALL_SPEED, MILES_PER_HOUR) + ";" + mean(4, 8, CARRY, YARD));
    }

    private static String mean(
            int from, int to, org.toeline.flight.ShotFigure figure, org.toeline.flight.FigureUnit unit) {
        return String.format(
                Locale.ROOT,
                "%.1f",
                DRIVES.subList(from, to).stream()
                        .mapToDouble(s -> unit.fromInside(s.figure(figure).orElseThrow()))
                        .average()
                        .orElseThrow());
    }

    private static MadeTable bracketsForMinus() {
        return english("brackets for a minus, as accounts have it")
                .cells("Launch Direction (deg, right +)", LAUNCH_DIRECTION, v -> bracketed(-DEGREE.fromInside(v)))
                .cells("Side (yd, right +)", SIDE, v -> bracketed(-YARD.fromInside(v)));
    }

    private static String bracketed(double value) {
        return String.format(Locale.ROOT, value < 0 ? "(%.1f)" : "%.1f", Math.abs(value));
    }

    private static MadeTable capitals() {
        return made("capitals and underscores")
                .commas()
                .number("SHOT_NO")
                .col("BALL_SPEED_MPH", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("LAUNCH_ANGLE_DEG", LAUNCH_ANGLE, DEGREE, 1)
                .col("SPIN_RATE_RPM", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("CARRY_YDS", CARRY, YARD, 1)
                .decoy("CARRY_DEV_YDS", MadeTables.drawn(6, 2, 1));
    }

    private static MadeTable powersOfTen() {
        return made("powers of ten")
                .commas()
                .number("Shot")
                .cells("Ball Speed (m/s)", BALL_SPEED, v -> String.format(Locale.ROOT, "%.3E", v))
                .cells(
                        "Spin Rate (rpm)",
                        SPIN_RATE,
                        v -> String.format(Locale.ROOT, "%.4E", TURNS_PER_MINUTE.fromInside(v)))
                .cells("Carry (m)", CARRY, v -> String.format(Locale.ROOT, "%.4E", v));
    }

    private static MadeTable swiss() {
        return made("grouped by apostrophes")
                .number("Nr.")
                .col("Ballgeschwindigkeit [km/h]", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .cells("Gesamtspin [U/min]", SPIN_RATE, v -> grouped(TURNS_PER_MINUTE.fromInside(v), 0, '\'', '.'))
                .col("Carry-Weite [m]", CARRY, METRE, 1);
    }

    private static MadeTable shares() {
        return english("shares of something beside figures of the same name")
                .decoy("Carry (% of best)", MadeTables.drawn(95, 3, 0))
                .decoy("Smash Factor (%)", MadeTables.drawn(96, 2, 0))
                .decoy("Ball Speed Percentile", MadeTables.drawn(60, 20, 0));
    }

    private static MadeTable feetAndInches() {
        return english("a height in feet and inches").cells("Apex", APEX, v -> {
            long inches = Math.round(12 * FOOT.fromInside(v));
            return inches / 12 + "' " + inches % 12 + "''";
        });
    }

    private static MadeTable linesInRemarks() {
        return english("remarks of two lines in quotes")
                .decoy("Remark", s -> DRIVES.indexOf(s) % 3 == 0 ? "\"struck low\n3 yd 150.0\"" : "well");
    }

    private static String grouped(double value, int decimals, char group, char decimal) {
        return String.format(Locale.ROOT, "%,." + decimals + "f", value)
                .replace('.', '\0')
                .replace(',', group)
                .replace('\0', decimal);
    }

    /** Figures down, shots across: nothing in it is what it looks like. */
    static byte[] across() {
        StringBuilder text = new StringBuilder("Figure");
        for (int i = 1; i <= DRIVES.size(); i++) {
            text.append(",Shot ").append(i);
        }
        text.append("\nBall Speed (mph)");
        DRIVES.forEach(s -> text.append(',').append(figure(s, BALL_SPEED, MILES_PER_HOUR)));
        text.append("\nLaunch Angle (deg)");
        DRIVES.forEach(s -> text.append(',').append(figure(s, LAUNCH_ANGLE, DEGREE)));
        text.append("\nHang Time (s)");
        DRIVES.forEach(s -> text.append(',').append(figure(s, HANG_TIME, SECOND)));
        text.append("\nCarry (yd)");
        DRIVES.forEach(s -> text.append(',').append(figure(s, CARRY, YARD)));
        return text.append('\n').toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    private static String figure(Shot shot, org.toeline.flight.ShotFigure figure, org.toeline.flight.FigureUnit unit) {
        return String.format(
                Locale.ROOT, "%.1f", unit.fromInside(shot.figure(figure).orElseThrow()));
    }
}
