package org.toeline.flight.table;

import static org.toeline.flight.FigureUnit.DEGREE;
import static org.toeline.flight.FigureUnit.FOOT;
import static org.toeline.flight.FigureUnit.KILOMETRES_PER_HOUR;
import static org.toeline.flight.FigureUnit.METRE;
import static org.toeline.flight.FigureUnit.METRES_PER_SECOND;
import static org.toeline.flight.FigureUnit.MILES_PER_HOUR;
import static org.toeline.flight.FigureUnit.SECOND;
import static org.toeline.flight.FigureUnit.TIMES;
import static org.toeline.flight.FigureUnit.TURNS_PER_MINUTE;
import static org.toeline.flight.FigureUnit.YARD;
import static org.toeline.flight.ShotFigure.APEX;
import static org.toeline.flight.ShotFigure.ATTACK_ANGLE;
import static org.toeline.flight.ShotFigure.BALL_SPEED;
import static org.toeline.flight.ShotFigure.CARRY;
import static org.toeline.flight.ShotFigure.CLUB_PATH;
import static org.toeline.flight.ShotFigure.CLUB_SPEED;
import static org.toeline.flight.ShotFigure.DESCENT_ANGLE;
import static org.toeline.flight.ShotFigure.DYNAMIC_LOFT;
import static org.toeline.flight.ShotFigure.HANG_TIME;
import static org.toeline.flight.ShotFigure.LAUNCH_ANGLE;
import static org.toeline.flight.ShotFigure.LAUNCH_DIRECTION;
import static org.toeline.flight.ShotFigure.SIDE;
import static org.toeline.flight.ShotFigure.SMASH_FACTOR;
import static org.toeline.flight.ShotFigure.SPIN_AXIS;
import static org.toeline.flight.ShotFigure.SPIN_RATE;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * Sixty tables of our own making as devices, spreadsheets and people of six languages may write them; the headings are
 * plain words of the trade (common practice), and no device's table is imitated. The shots are drawn and flown.
 */
final class MadeTables {

    static final List<Shot> DRIVES = DrawnShots.of(8, 66, 12.5, 2650, 11);
    private static final List<Shot> IRONS = DrawnShots.of(8, 53, 17, 6400, 12);

    private MadeTables() {}

    static MadeTable made(String name) {
        return new MadeTable(name, DRIVES);
    }

    static MadeTable english(String name) {
        return made(name)
                .commas()
                .number("Shot")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Launch Angle (deg)", LAUNCH_ANGLE, DEGREE, 1)
                .col("Spin Rate (rpm)", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("Carry (yd)", CARRY, YARD, 1);
    }

    private static MadeTable german(String name) {
        return made(name)
                .decimalComma()
                .number("Nr.")
                .col("Ballgeschwindigkeit [km/h]", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Abflugwinkel [°]", LAUNCH_ANGLE, DEGREE, 1)
                .col("Gesamtspin [U/min]", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("Carry-Weite [m]", CARRY, METRE, 1);
    }

    private static MadeTable french(String name) {
        return made(name)
                .decimalComma()
                .number("Coup")
                .col("Vitesse de balle (km/h)", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Angle de lancement (°)", LAUNCH_ANGLE, DEGREE, 1)
                .col("Taux de spin (tr/min)", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("Distance carry (m)", CARRY, METRE, 1)
                .col("Hauteur max. (m)", APEX, METRE, 1);
    }

    private static MadeTable spanish(String name) {
        return made(name)
                .decimalComma()
                .number("Golpe")
                .col("Velocidad de bola (km/h)", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Ángulo de lanzamiento (º)", LAUNCH_ANGLE, DEGREE, 1)
                .col("Velocidad de giro (rpm)", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("Distancia de carry (yardas)", CARRY, YARD, 1)
                .col("Altura máxima (pies)", APEX, FOOT, 0);
    }

    private static MadeTable italian(String name) {
        return made(name)
                .decimalComma()
                .number("Colpo")
                .col("Velocità palla (km/h)", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Angolo di lancio (gradi)", LAUNCH_ANGLE, DEGREE, 1)
                .col("Spin totale (giri/min)", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("Distanza di volo (metri)", CARRY, METRE, 1);
    }

    private static MadeTable japanese(String name) {
        return made(name)
                .commas()
                .number("番号")
                .col("ボールスピード(m/s)", BALL_SPEED, METRES_PER_SECOND, 1)
                .col("打ち出し角(度)", LAUNCH_ANGLE, DEGREE, 1)
                .col("スピン量(rpm)", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("キャリー(ヤード)", CARRY, YARD, 1);
    }

    static Function<Shot, String> drawn(double middle, double spread, int decimals) {
        SplittableRandom random = new SplittableRandom(99);
        Map<Shot, String> kept = new java.util.HashMap<>();
        return s -> kept.computeIfAbsent(
                s, x -> String.format(Locale.ROOT, "%." + decimals + "f", middle + spread * random.nextGaussian()));
    }

    static List<MadeTable> all() {
        List<MadeTable> all = new ArrayList<>();
        languages(all);
        summaries(all);
        others(all);
        units(all);
        sides(all);
        numbers(all);
        rows(all);
        delivery(all);
        all.addAll(ContradictoryTables.all());
        all.addAll(OddTables.all());
        return all;
    }

    private static void languages(List<MadeTable> all) {
        all.add(english("English"));
        all.add(german("German").in(Charset.forName("windows-1252")));
        all.add(french("French"));
        all.add(spanish("Spanish"));
        all.add(italian("Italian"));
        all.add(japanese("Japanese"));
        all.add(japanese("Japanese, in its old encoding").in(Charset.forName("windows-31j")));
        all.add(french("French, UTF-16 with its mark").above("\ufeff").in(StandardCharsets.UTF_16LE));
    }

    private static void summaries(List<MadeTable> all) {
        all.add(english("mean and spread, labelled").mean("Average").spread("± SD"));
        all.add(german("Mittelwert und Streuung").mean("Mittelwert").spread("Standardabweichung"));
        all.add(french("Moyenne, écart-type, meilleur")
                .mean("Moyenne")
                .spread("Écart-type")
                .most("Meilleur coup"));
        all.add(spanish("Promedio y desviación")
                .mean("Promedio")
                .spread("Desviación típica")
                .most("Mejor"));
        all.add(italian("Media e deviazione").mean("Media").spread("Dev. std.").most("Migliore"));
        all.add(japanese("平均と標準偏差").mean("平均").spread("標準偏差").most("最高"));
        all.add(english("a mean without a label").mean(""));
        all.add(english("mean and spread with unknown labels").mean("Keskiarvo").spread("Hajonta"));
        all.add(made("no numbers: mean and spread without labels")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Carry (yd)", CARRY, YARD, 1)
                .col("Apex (ft)", APEX, FOOT, 1)
                .decoy("Note", s -> "")
                .before(8, bare(x -> x / DRIVES.size(), false)));
        all.add(made("club first, mean called by the club")
                .decoy("Club", s -> "Driver")
                .col("Ball Speed (m/s)", BALL_SPEED, METRES_PER_SECOND, 2)
                .col("Carry (m)", CARRY, METRE, 2)
                .mean("Average"));
        all.add(made("a count").number("No.").col("Carry (m)", CARRY, METRE, 1).sumsUp("n", x -> 8.0, 0));
    }

    /** The means of ball speed, carry and apex as a row without a label. */
    private static String bare(java.util.function.DoubleUnaryOperator of, boolean label) {
        double v = DRIVES.stream()
                .mapToDouble(s -> MILES_PER_HOUR.fromInside(s.figure(BALL_SPEED).orElseThrow()))
                .sum();
        double c = DRIVES.stream()
                .mapToDouble(s -> YARD.fromInside(s.figure(CARRY).orElseThrow()))
                .sum();
        double a = DRIVES.stream()
                .mapToDouble(s -> FOOT.fromInside(s.figure(APEX).orElseThrow()))
                .sum();
        return String.format(
                Locale.ROOT, "%.1f;%.1f;%.1f;", of.applyAsDouble(v), of.applyAsDouble(c), of.applyAsDouble(a));
    }

    private static void others(List<MadeTable> all) {
        all.add(english("where the club swings").decoy("Swing Direction (deg)", drawn(1, 3, 1)));
        all.add(english("the lowest point").decoy("Low Point Distance (in)", drawn(2, 1, 1)));
        all.add(english("how far from the pin").decoy("Distance to Pin (yd)", drawn(14, 4, 1)));
        all.add(english("where on the face")
                .decoy("Impact Height (mm)", drawn(3, 4, 1))
                .decoy("Impact Offset (mm)", drawn(1, 5, 1)));
        all.add(made("only a distance to the pin")
                .number("Shot")
                .decoy("Distance to Pin (yd)", drawn(120, 6, 1))
                .col("Spin Rate (rpm)", SPIN_RATE, TURNS_PER_MINUTE, 0));
        all.add(english("deviations")
                .decoy("Carry Deviation (yd)", drawn(0, 5, 1))
                .decoy("Ball Speed Diff (mph)", drawn(0, 2, 1)));
        all.add(english("at the landing").decoy("Ball Speed at Landing (mph)", drawn(62, 2, 1)));
        all.add(german("Abweichung vom Ziel")
                .decoy("Carry Abweichung vom Ziel [m]", drawn(-4, 5, 1).andThen(x -> x.replace('.', ','))));
        all.add(made("back spin alone")
                .commas()
                .number("Shot")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .decoy("SpinBack (rpm)", drawn(2500, 150, 0))
                .decoy("SpinSide (rpm)", drawn(100, 150, 0)));
        all.add(made("back spin in its own words, alone")
                .commas()
                .number("Shot")
                .col("Carry (m)", CARRY, METRE, 1)
                .decoy("Backspin (rpm)", drawn(2500, 150, 0)));
        all.add(english("the total to the side")
                .decoy("Total Side (yd)", drawn(4, 9, 1))
                .decoy("Side (yd)", drawn(3, 8, 1)));
        all.add(made("two rows of headings")
                .above(";Ball;;Target;")
                .number("#")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Launch Angle (deg)", LAUNCH_ANGLE, DEGREE, 1)
                .decoy("Carry (yd)", drawn(8, 3, 1))
                .decoy("Side (yd)", drawn(2, 3, 1)));
        all.add(made("the same word for two things")
                .number("#")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .decoy("Carry (yd)", drawn(20, 5, 1))
                .col("Carry (yd)", CARRY, YARD, 1));
    }

    private static void units(List<MadeTable> all) {
        all.add(made("no units")
                .commas()
                .number("Shot")
                .col("Ball Speed", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Launch Angle", LAUNCH_ANGLE, DEGREE, 1)
                .col("Spin Rate", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("Carry", CARRY, YARD, 1));
        all.add(made("units below, one of them broken")
                .number("Shot")
                .col("Ball Speed", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Launch Angle", LAUNCH_ANGLE, DEGREE, 1)
                .col("Carry", CARRY, METRE, 1)
                .decoy("Mark", s -> "x")
                .units("[];[km/h];[°];[];[]"));
        all.add(made("units below")
                .number("Shot")
                .col("Ball Speed", BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .col("Carry", CARRY, METRE, 1)
                .units(";km/h;m"));
        all.add(made("a unit in each cell, of two kinds")
                .number("Shot")
                .cells(
                        "Carry",
                        CARRY,
                        v -> v > 225
                                ? String.format(Locale.ROOT, "%.1f m", v)
                                : String.format(Locale.ROOT, "%.1f yd", YARD.fromInside(v))));
        all.add(made("a column of units, row by row")
                .number("Shot")
                .cells(
                        "Carry",
                        CARRY,
                        v -> v > 225
                                ? String.format(Locale.ROOT, "%.1f", v)
                                : String.format(Locale.ROOT, "%.1f", YARD.fromInside(v)))
                .decoy("Unit", s -> s.figure(CARRY).orElseThrow() > 225 ? "m" : "yd"));
        all.add(made("miles an hour under metres a second")
                .number("Shot")
                .decoy(
                        "Ball Speed (m/s)",
                        s -> String.format(
                                Locale.ROOT,
                                "%.1f",
                                MILES_PER_HOUR.fromInside(s.figure(BALL_SPEED).orElseThrow())))
                .col("Launch Angle (°)", LAUNCH_ANGLE, DEGREE, 1)
                .col("Spin Rate (rpm)", SPIN_RATE, TURNS_PER_MINUTE, 0));
        all.add(made("kilometres an hour under miles an hour")
                .number("Shot")
                .decoy(
                        "Ball Speed (mph)",
                        s -> String.format(
                                Locale.ROOT,
                                "%.1f",
                                KILOMETRES_PER_HOUR.fromInside(
                                        s.figure(BALL_SPEED).orElseThrow())))
                .col("Club Speed (km/h)", CLUB_SPEED, KILOMETRES_PER_HOUR, 1));
        all.add(made("feet under metres")
                .number("Shot")
                .decoy(
                        "Apex (m)",
                        s -> String.format(
                                Locale.ROOT,
                                "%.1f",
                                FOOT.fromInside(s.figure(APEX).orElseThrow())))
                .col("Hang Time (s)", HANG_TIME, SECOND, 2));
        all.add(made("the same carry in two units")
                .number("Shot")
                .col("Carry (yd)", CARRY, YARD, 1)
                .decoy(
                        "Carry (m)",
                        s -> String.format(Locale.ROOT, "%.1f", s.figure(CARRY).orElseThrow())));
        all.add(made("two units in one heading")
                .number("Shot")
                .col("Carry (m/yd)", CARRY, METRE, 1)
                .col("Ball Speed (m/s)", BALL_SPEED, METRES_PER_SECOND, 1));
        all.add(made("words run together")
                .commas()
                .number("shot_no")
                .col("BallSpeed_mph", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("LaunchAngle_deg", LAUNCH_ANGLE, DEGREE, 1)
                .col("SpinRate_rpm", SPIN_RATE, TURNS_PER_MINUTE, 0)
                .col("CarryDistance_yd", CARRY, YARD, 1));
    }

    private static void sides(List<MadeTable> all) {
        all.add(made("left plus, said")
                .number("#")
                .plusLeft("Launch Direction (°, left +)", LAUNCH_DIRECTION, DEGREE, 2)
                .plusLeft("Spin Axis (°) (L+/R-)", SPIN_AXIS, DEGREE, 2));
        all.add(made("right plus, said")
                .number("#")
                .col("Launch Direction [°] (+ = right)", LAUNCH_DIRECTION, DEGREE, 2)
                .col("Carry Side (yd, R+)", SIDE, YARD, 1));
        all.add(made("plus is a draw")
                .number("#")
                .plusLeft("Spin Axis (°, + = draw)", SPIN_AXIS, DEGREE, 2)
                .col("Carry (m)", CARRY, METRE, 1));
        all.add(made("nothing said")
                .number("#")
                .col("Launch Direction (°)", LAUNCH_DIRECTION, DEGREE, 2)
                .col("Spin Axis (°)", SPIN_AXIS, DEGREE, 2)
                .col("Carry (m)", CARRY, METRE, 1));
        all.add(made("links und rechts")
                .decimalComma()
                .number("Nr")
                .letters("Startrichtung (°)", LAUNCH_DIRECTION, DEGREE, "links", "rechts")
                .letters("Spinachse (°)", SPIN_AXIS, DEGREE, "L", "R"));
        all.add(made("gauche et droite")
                .decimalComma()
                .number("N°")
                .letters("Direction de lancement (°)", LAUNCH_DIRECTION, DEGREE, "G", "D")
                .plusLeft("Axe de spin (°, gauche +)", SPIN_AXIS, DEGREE, 2));
        all.add(made("izquierda y derecha")
                .decimalComma()
                .number("Golpe")
                .letters("Dirección de salida (º)", LAUNCH_DIRECTION, DEGREE, "I", "D")
                .letters("Eje de giro (º)", SPIN_AXIS, DEGREE, "izq", "der"));
        all.add(made("左右")
                .commas()
                .number("番号")
                .letters("打ち出し方向(度)", LAUNCH_DIRECTION, DEGREE, "左", "右")
                .plusLeft("スピン軸(度)(左+)", SPIN_AXIS, DEGREE, 2));
        all.add(made("back and side spin, said").number("#").spins("Backspin (rpm)", "Sidespin (rpm, left +)", 1));
        all.add(made("sizes without sides")
                .number("#")
                .cells("Carry Side (m)", SIDE, v -> String.format(Locale.ROOT, "%.1f", Math.abs(v)))
                .col("Carry (m)", CARRY, METRE, 1));
    }

    private static void numbers(List<MadeTable> all) {
        all.add(german("grouped the German way")
                .cells(
                        "Spinrate [U/min]",
                        SPIN_RATE,
                        v -> String.format(Locale.GERMANY, "%,.0f", TURNS_PER_MINUTE.fromInside(v))));
        all.add(made("grouped, with other columns to tell by")
                .decimalComma()
                .number("Nr")
                .cells(
                        "Gesamtspin (U/min)",
                        SPIN_RATE,
                        v -> String.format(Locale.GERMANY, "%,.0f", TURNS_PER_MINUTE.fromInside(v)))
                .decoy("Temperatur", s -> "21,5"));
        all.add(made("three decimals and nothing to tell by")
                .number("#")
                .cells(
                        "Launch Angle (°)",
                        LAUNCH_ANGLE,
                        v -> String.format(Locale.ROOT, "%.3f", DEGREE.fromInside(v))));
        all.add(made("both marks in one table")
                .number("#")
                .col("Ball Speed (m/s)", BALL_SPEED, METRES_PER_SECOND, 1)
                .cells(
                        "Carry (m)",
                        CARRY,
                        v -> String.format(Locale.ROOT, "%.1f", v).replace('.', ',')));
        all.add(english("nothing measured: zeros and nines").before(3, "9,0,0,0,0\n10,9999,999,9999,999.9"));
        all.add(made("figures of full width")
                .commas()
                .number("番号")
                .cells("ボールスピード(m/s)", BALL_SPEED, v -> wide(String.format(Locale.ROOT, "%.1f", v))));
    }

    private static String wide(String text) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(c -> out.append(Character.isDigit(c) ? (char) (c - '0' + '０') : (char) c));
        return out.toString();
    }

    private static void rows(List<MadeTable> all) {
        all.add(new MadeTable("carries alone, some alike", alike()).col("Carry (m)", CARRY, METRE, 0));
        all.add(english("titles within the table").before(0, "Driver,,,,").before(4, "Driver again,,,,"));
        all.add(english("another table below").before(8, "\nClub,Ball Speed (mph),Carry (yd)\nDriver,150.1,244\n"));
        all.add(english("the headings again")
                .before(4, "Shot,Ball Speed (mph),Launch Angle (deg),Spin Rate (rpm),Carry (yd)"));
        all.add(made("two clubs")
                .commas()
                .decoy("Club", s -> DRIVES.indexOf(s) < 4 ? "Driver" : "7")
                .col("Carry (m)", CARRY, METRE, 1)
                .col("Ball Speed (m/s)", BALL_SPEED, METRES_PER_SECOND, 1));
        all.add(english("a goal to compare with").before(0, "Target,150,12,2500,250"));
        all.add(new MadeTable("irons with remarks", IRONS)
                .tabs()
                .number("Shot")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Landing Angle (°)", DESCENT_ANGLE, DEGREE, 1)
                .col("Peak Height (ft)", APEX, FOOT, 0)
                .decoy("Comment", s -> "best so far"));
        all.add(made("a row in two views")
                .commas()
                .number("Shot")
                .col("Ball Speed (mph)", BALL_SPEED, MILES_PER_HOUR, 1)
                .col("Carry (yd)", CARRY, YARD, 1)
                .before(1, twin()));
    }

    /** Twelve carries, five of them different. */
    private static List<Shot> alike() {
        return java.util.stream.IntStream.range(0, 12)
                .mapToObj(i -> new Shot(Map.of(CARRY, 200.0 + 5 * (i * i % 5))))
                .toList();
    }

    /** The first shot once more, as computed for other air. */
    private static String twin() {
        Shot first = DRIVES.get(0);
        return String.format(
                Locale.ROOT,
                "1,%.1f,%.1f",
                MILES_PER_HOUR.fromInside(first.figure(BALL_SPEED).orElseThrow()),
                YARD.fromInside(first.figure(CARRY).orElseThrow()) + 4);
    }

    private static void delivery(List<MadeTable> all) {
        all.add(english("delivery")
                .col("Club Speed (mph)", CLUB_SPEED, MILES_PER_HOUR, 1)
                .col("Smash Factor", SMASH_FACTOR, TIMES, 2)
                .col("Dynamic Loft (deg)", DYNAMIC_LOFT, DEGREE, 1)
                .col("Attack Angle (deg)", ATTACK_ANGLE, DEGREE, 1)
                .col("Club Path (deg)", CLUB_PATH, DEGREE, 1)
                .letters("Face to Path (deg)", ShotFigure.FACE_TO_PATH, DEGREE, "L", "R"));
        all.add(made("smash that does not agree")
                .number("#")
                .col("Ball Speed (m/s)", BALL_SPEED, METRES_PER_SECOND, 1)
                .decoy("Club Speed (m/s)", drawn(41, 0.4, 1))
                .decoy("Smash Factor", drawn(1.32, 0.01, 2)));
        all.add(made("totals shorter than carries")
                .number("#")
                .decoy("Carry (m)", drawn(240, 3, 1))
                .decoy("Total Distance (m)", drawn(205, 4, 1))
                .col("Ball Speed (m/s)", BALL_SPEED, METRES_PER_SECOND, 1));
    }
}
