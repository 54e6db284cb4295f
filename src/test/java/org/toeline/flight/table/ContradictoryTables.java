package org.toeline.flight.table;

import static org.toeline.flight.FigureUnit.DEGREE;
import static org.toeline.flight.FigureUnit.MILES_PER_HOUR;
import static org.toeline.flight.FigureUnit.TURNS_PER_MINUTE;
import static org.toeline.flight.FigureUnit.YARD;
import static org.toeline.flight.ShotFigure.BALL_SPEED;
import static org.toeline.flight.ShotFigure.CARRY;
import static org.toeline.flight.ShotFigure.LAUNCH_ANGLE;
import static org.toeline.flight.ShotFigure.LAUNCH_DIRECTION;
import static org.toeline.flight.ShotFigure.SIDE;
import static org.toeline.flight.ShotFigure.SPIN_RATE;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.toeline.flight.Shot;

/**
 * Tables that contradict themselves: units that disagree with the heading above them, a heading twice, signs said twice, a
 * minus written otherwise, means within. Each was read wrongly without a word before it stood here, or was thought likely to be.
 */
final class ContradictoryTables {

    private static final List<Shot> DRIVES = MadeTables.DRIVES;

    private ContradictoryTables() {}

    static List<MadeTable> all() {
        return List.of(
                MadeTables.english("units below that disagree with the headings")
                        .units(",km/h,deg,rpm,m"),
                MadeTables.made("a heading twice, first over deviations")
                        .number("Shot")
                        .decoy("Carry (yd)", MadeTables.drawn(0, 6, 1))
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .col("Carry (yd)", CARRY, YARD, 1),
                MadeTables.made("a heading twice, first over nothing")
                        .number("Shot")
                        .decoy("Carry (yd)", s -> "")
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .col("Carry (yd)", CARRY, YARD, 1),
                minus("a minus in brackets", v -> String.format(Locale.ROOT, v < 0 ? "(%.2f)" : "%.2f", Math.abs(v))),
                minus("a minus behind", v -> String.format(Locale.ROOT, v < 0 ? "%.2f-" : "%.2f", Math.abs(v))),
                MadeTables.made("a side said twice, differently")
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .plusLeft("Launch Direction (left + / right +)", LAUNCH_DIRECTION, DEGREE, 2),
                MadeTables.made("letters under a heading that states signs")
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .letters("Carry Side (yd, left +)", SIDE, YARD, "L", "R"),
                MadeTables.made("letters in some cells, signs in others")
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .cells(
                                "Carry Side (yd)",
                                SIDE,
                                v -> v > 0
                                        ? String.format(Locale.ROOT, "%.1f L", YARD.fromInside(v))
                                        : String.format(Locale.ROOT, "%.1f", YARD.fromInside(v))),
                MadeTables.made("degrees and minutes")
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .cells("Launch Angle", LAUNCH_ANGLE, ContradictoryTables::minutes),
                MadeTables.made("numbers with powers of ten")
                        .cells(
                                "Ball Speed (mph)",
                                BALL_SPEED,
                                v -> String.format(Locale.ROOT, "%.3e", MILES_PER_HOUR.fromInside(v)))
                        .col("Spin Rate (rpm)", SPIN_RATE, TURNS_PER_MINUTE, 0),
                new MadeTable("the worst shot twice", worstTwice())
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .col("Launch Angle (deg)", LAUNCH_ANGLE, DEGREE, 1)
                        .col("Spin Rate (rpm)", SPIN_RATE, TURNS_PER_MINUTE, 0)
                        .col("Carry (yd)", CARRY, YARD, 1),
                MadeTables.made("a mean below each block, without a word")
                        .commas()
                        .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                        .col("Carry (yd)", CARRY, YARD, 1)
                        .before(4, mean(0, 4))
                        .before(8, mean(4, 8)));
    }

    private static List<Shot> worstTwice() {
        Shot worst = new Shot(Map.of(
                BALL_SPEED,
                55.0,
                LAUNCH_ANGLE,
                Math.toRadians(6),
                SPIN_RATE,
                TURNS_PER_MINUTE.toInside(2000),
                CARRY,
                140.0));
        return Stream.concat(DRIVES.stream(), Stream.of(worst, worst)).toList();
    }

    private static MadeTable minus(String name, ToText written) {
        return MadeTables.made(name)
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .cells("Launch Direction (°; right +)", LAUNCH_DIRECTION, v -> written.of(-DEGREE.fromInside(v)));
    }

    private interface ToText {
        String of(double value);
    }

    private static String minutes(double angleRad) {
        double degrees = Math.toDegrees(angleRad);
        return String.format(Locale.ROOT, "%d°%02d'", (int) degrees, (int) (60 * (degrees - (int) degrees)));
    }

    private static String mean(int from, int to) {
        return String.format(
                Locale.ROOT,
                "%.1f,%.1f",
                mean(
                        from,
                        to,
                        s -> rounded(
                                MILES_PER_HOUR.fromInside(s.figure(BALL_SPEED).orElseThrow()))),
                mean(from, to, s -> rounded(YARD.fromInside(s.figure(CARRY).orElseThrow()))));
    }

    private static double rounded(double value) {
        return Math.round(10 * value) / 10.0;
    }

    private static double mean(int from, int to, ToDoubleFunction<Shot> of) {
        return IntStream.range(from, to)
                .mapToDouble(i -> of.applyAsDouble(DRIVES.get(i)))
                .average()
                .orElseThrow();
    }
}
