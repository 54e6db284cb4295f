package org.toeline.flight.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.toeline.flight.FigureUnit.DEGREE;
import static org.toeline.flight.FigureUnit.FOOT;
import static org.toeline.flight.FigureUnit.KILOMETRES_PER_HOUR;
import static org.toeline.flight.FigureUnit.METRE;
import static org.toeline.flight.FigureUnit.METRES_PER_SECOND;
import static org.toeline.flight.FigureUnit.MILES_PER_HOUR;
import static org.toeline.flight.FigureUnit.SECOND;
import static org.toeline.flight.FigureUnit.TURNS_PER_MINUTE;
import static org.toeline.flight.FigureUnit.YARD;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/** Thirty tables as people and programs write them: each read in full, or what is not read named by line and reason. */
class ManyTablesTest {

    /** Half a unit in the last place that the tables write, in the roughest unit. */
    private static final Map<ShotFigure, Double> ROUNDING = Map.of(
            ShotFigure.CLUB_SPEED,
            0.03,
            ShotFigure.BALL_SPEED,
            0.03,
            ShotFigure.LAUNCH_ANGLE,
            1e-3,
            ShotFigure.LAUNCH_DIRECTION,
            1e-3,
            ShotFigure.SPIN_RATE,
            0.06,
            ShotFigure.SPIN_AXIS,
            2e-3,
            ShotFigure.CARRY,
            0.05,
            ShotFigure.APEX,
            0.05,
            ShotFigure.SIDE,
            0.05,
            ShotFigure.HANG_TIME,
            0.006);

    private static double rounding(ShotFigure figure) {
        return ROUNDING.getOrDefault(figure, 1e-3);
    }

    private static final List<Shot> SHOTS = shots();

    /** A table, how many shots it holds in what order, which figures, and which lines are left out for what reason. */
    private record Case(
            String name, byte[] bytes, List<Shot> shots, Set<ShotFigure> figures, Map<Integer, String> out) {

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Shot> shots() {
        double[][] rows = {
            {65.4, 12.3, 2.1, 2611, 6.4, 221.5, 27.9, 8.8, 6.31},
            {66.1, 13.0, -1.4, 2540, -3.2, 224.9, 29.3, -9.1, 6.42},
            {64.2, 11.1, 0.4, 2988, 11.7, 214.7, 24.4, 14.2, 6.02},
            {67.0, 14.2, -0.2, 2295, -1.1, 231.2, 31.8, -2.7, 6.68},
            {63.7, 10.4, 1.9, 3054, 8.9, 208.3, 22.2, 12.4, 5.81}
        };
        ShotFigure[] figures = {
            ShotFigure.BALL_SPEED,
            ShotFigure.LAUNCH_ANGLE,
            ShotFigure.LAUNCH_DIRECTION,
            ShotFigure.SPIN_RATE,
            ShotFigure.SPIN_AXIS,
            ShotFigure.CARRY,
            ShotFigure.APEX,
            ShotFigure.SIDE,
            ShotFigure.HANG_TIME
        };
        List<Shot> shots = new ArrayList<>();
        for (double[] row : rows) {
            Map<ShotFigure, Double> map = new EnumMap<>(ShotFigure.class);
            for (int i = 0; i < figures.length; i++) {
                map.put(figures[i], figures[i].shownUnit().toInside(row[i]));
            }
            shots.add(new Shot(map));
        }
        return shots;
    }

    private static TableWriter english() {
        return new TableWriter()
                .column("Ball Speed (mph)", ShotFigure.BALL_SPEED, MILES_PER_HOUR, 1)
                .column("Launch Angle (deg)", ShotFigure.LAUNCH_ANGLE, DEGREE, 1)
                .column("Spin Rate (rpm)", ShotFigure.SPIN_RATE, TURNS_PER_MINUTE, 0)
                .column("Carry (yd)", ShotFigure.CARRY, YARD, 1);
    }

    private static TableWriter german() {
        return new TableWriter()
                .separator(";")
                .decimalComma()
                .column("Ballgeschwindigkeit [km/h]", ShotFigure.BALL_SPEED, KILOMETRES_PER_HOUR, 1)
                .column("Abflugwinkel [°]", ShotFigure.LAUNCH_ANGLE, DEGREE, 1)
                .column("Drehzahl [U/min]", ShotFigure.SPIN_RATE, TURNS_PER_MINUTE, 0)
                .column("Flugweite [m]", ShotFigure.CARRY, METRE, 1)
                .column("Scheitelhöhe [m]", ShotFigure.APEX, METRE, 1);
    }

    private static final Set<ShotFigure> FOUR =
            Set.of(ShotFigure.BALL_SPEED, ShotFigure.LAUNCH_ANGLE, ShotFigure.SPIN_RATE, ShotFigure.CARRY);
    private static final Set<ShotFigure> FIVE = Set.of(
            ShotFigure.BALL_SPEED, ShotFigure.LAUNCH_ANGLE, ShotFigure.SPIN_RATE, ShotFigure.CARRY, ShotFigure.APEX);

    private static Case all(String name, byte[] bytes, Set<ShotFigure> figures) {
        return new Case(name, bytes, SHOTS, figures, Map.of());
    }

    private static Stream<Case> tables() {
        return Stream.of(encodings(), separators(), sides(), junk(), faults()).flatMap(s -> s);
    }

    private static Stream<Case> encodings() {
        String english = english().text(SHOTS);
        String german = german().text(SHOTS);
        return Stream.of(
                all("UTF-8", TableWriter.utf8(english), FOUR),
                all("UTF-8 with its mark", TableWriter.marked(german, StandardCharsets.UTF_8), FIVE),
                all("UTF-8 without a mark, umlauts", TableWriter.utf8(german), FIVE),
                all("UTF-16 little end first", TableWriter.marked(german, StandardCharsets.UTF_16LE), FIVE),
                all("UTF-16 big end first", TableWriter.marked(english, StandardCharsets.UTF_16BE), FOUR),
                all("UTF-16 without a mark", english.getBytes(StandardCharsets.UTF_16LE), FOUR),
                all("windows-1252", TableWriter.windows(german), FIVE));
    }

    private static Stream<Case> separators() {
        return Stream.of(
                all("tabs", TableWriter.utf8(english().separator("\t").text(SHOTS)), FOUR),
                all("bars", TableWriter.utf8(english().separator("|").text(SHOTS)), FOUR),
                all(
                        "semicolons with points",
                        TableWriter.utf8(english().separator(";").text(SHOTS)),
                        FOUR),
                all(
                        "commas, decimal commas in quotes",
                        TableWriter.utf8(english().decimalComma().text(SHOTS)),
                        FOUR),
                all(
                        "spaces after commas",
                        TableWriter.utf8(english().separator(", ").text(SHOTS)),
                        FOUR),
                all("old line ends", TableWriter.utf8(english().lineEnd("\r").text(SHOTS)), FOUR),
                all(
                        "no unit stated anywhere",
                        TableWriter.utf8(new TableWriter()
                                .column("BallSpeed", ShotFigure.BALL_SPEED, MILES_PER_HOUR, 1)
                                .column("LaunchAngle", ShotFigure.LAUNCH_ANGLE, DEGREE, 1)
                                .column("carry_distance", ShotFigure.CARRY, YARD, 1)
                                .text(SHOTS)),
                        Set.of(ShotFigure.BALL_SPEED, ShotFigure.LAUNCH_ANGLE, ShotFigure.CARRY)),
                all(
                        "units in the cells",
                        TableWriter.utf8(new TableWriter()
                                .column(
                                        "Ball Speed",
                                        s -> String.format(
                                                java.util.Locale.ROOT,
                                                "%.1f km/h",
                                                KILOMETRES_PER_HOUR.fromInside(s.figure(ShotFigure.BALL_SPEED)
                                                        .getAsDouble())))
                                .column(
                                        "Carry",
                                        s -> String.format(
                                                java.util.Locale.ROOT,
                                                "%.1f m",
                                                s.figure(ShotFigure.CARRY).getAsDouble()))
                                .text(SHOTS)),
                        Set.of(ShotFigure.BALL_SPEED, ShotFigure.CARRY)),
                all(
                        "thousands grouped",
                        TableWriter.utf8(new TableWriter()
                                .column("Ball Speed (m/s)", ShotFigure.BALL_SPEED, METRES_PER_SECOND, 1)
                                .column(
                                        "Total Spin (rpm)",
                                        s -> String.format(
                                                java.util.Locale.ROOT,
                                                "%,.0f",
                                                TURNS_PER_MINUTE.fromInside(s.figure(ShotFigure.SPIN_RATE)
                                                        .getAsDouble())))
                                .text(SHOTS)),
                        Set.of(ShotFigure.BALL_SPEED, ShotFigure.SPIN_RATE)),
                all(
                        "thousands grouped the German way",
                        TableWriter.utf8(new TableWriter()
                                .separator(";")
                                .decimalComma()
                                .column("Abflugwinkel (Grad)", ShotFigure.LAUNCH_ANGLE, DEGREE, 1)
                                .column(
                                        "Drehzahl (U/min)",
                                        s -> String.format(
                                                java.util.Locale.GERMANY,
                                                "%,.0f",
                                                TURNS_PER_MINUTE.fromInside(s.figure(ShotFigure.SPIN_RATE)
                                                        .getAsDouble())))
                                .text(SHOTS)),
                        Set.of(ShotFigure.LAUNCH_ANGLE, ShotFigure.SPIN_RATE)));
    }

    private static Stream<Case> sides() {
        Set<ShotFigure> sided = Set.of(ShotFigure.LAUNCH_DIRECTION, ShotFigure.SPIN_AXIS, ShotFigure.SIDE);
        return Stream.of(
                all(
                        "plus to the right",
                        TableWriter.utf8(new TableWriter()
                                .right("Launch Direction (°)", ShotFigure.LAUNCH_DIRECTION, DEGREE, 2)
                                .right("Spin Axis (°)", ShotFigure.SPIN_AXIS, DEGREE, 2)
                                .right("Side (ft)", ShotFigure.SIDE, FOOT, 1)
                                .text(SHOTS)),
                        sided),
                all(
                        "letters after",
                        TableWriter.utf8(new TableWriter()
                                .letters(
                                        "Horizontal Launch (deg)",
                                        ShotFigure.LAUNCH_DIRECTION,
                                        DEGREE,
                                        "%s %s",
                                        "L",
                                        "R")
                                .letters("Axis Tilt (deg)", ShotFigure.SPIN_AXIS, DEGREE, "%s° %s", "L", "R")
                                .letters("Offline (m)", ShotFigure.SIDE, METRE, "%s%s", "L", "R")
                                .text(SHOTS)),
                        sided),
                all(
                        "letters before, in words, German",
                        TableWriter.windows(new TableWriter()
                                .separator(";")
                                .decimalComma()
                                .letters(
                                        "Abflugrichtung (°)",
                                        ShotFigure.LAUNCH_DIRECTION,
                                        DEGREE,
                                        "%2$s %1$s",
                                        "L",
                                        "R")
                                .letters("Spinachse (°)", ShotFigure.SPIN_AXIS, DEGREE, "%2$s %1$s", "links", "rechts")
                                .letters(
                                        "Seitliche Abweichung (m)",
                                        ShotFigure.SIDE,
                                        METRE,
                                        "%s m %s",
                                        "links",
                                        "rechts")
                                .text(SHOTS)),
                        sided),
                all(
                        "back and side spin",
                        TableWriter.utf8(new TableWriter()
                                .column(
                                        "Back Spin (rpm)",
                                        s -> spin(
                                                s,
                                                Math.cos(s.figure(ShotFigure.SPIN_AXIS)
                                                        .getAsDouble())))
                                .column(
                                        "Side Spin (rpm)",
                                        s -> spin(
                                                s,
                                                -Math.sin(s.figure(ShotFigure.SPIN_AXIS)
                                                        .getAsDouble())))
                                .column("Flight Time (s)", ShotFigure.HANG_TIME, SECOND, 2)
                                .text(SHOTS)),
                        Set.of(ShotFigure.SPIN_RATE, ShotFigure.SPIN_AXIS, ShotFigure.HANG_TIME)),
                all(
                        "true minus signs",
                        TableWriter.utf8(new TableWriter()
                                .right("Launch Direction (°)", ShotFigure.LAUNCH_DIRECTION, DEGREE, 2)
                                .right("Side (yd)", ShotFigure.SIDE, YARD, 1)
                                .text(SHOTS)
                                .replace('-', '−')),
                        Set.of(ShotFigure.LAUNCH_DIRECTION, ShotFigure.SIDE)));
    }

    private static String spin(Shot shot, double share) {
        return String.format(
                java.util.Locale.ROOT,
                "%.1f",
                TURNS_PER_MINUTE.fromInside(shot.figure(ShotFigure.SPIN_RATE).getAsDouble() * share));
    }

    private static Stream<Case> junk() {
        return Stream.of(
                new Case(
                        "lines above and a footer",
                        TableWriter.utf8(english()
                                .before("Practice of a Tuesday\r\nBay 3,,,\r\n\r\n")
                                .after("\r\nAverage,146.1,12.2,2698\r\nStandard deviation,2.9,1.5,316\r\n")
                                .text(SHOTS)),
                        SHOTS,
                        FOUR,
                        Map.of(1, "above", 2, "above", 11, "summary", 12, "summary")),
                new Case(
                        "a row of units, a German footer",
                        TableWriter.utf8(new TableWriter()
                                .separator(";")
                                .decimalComma()
                                .column("Ballgeschwindigkeit", ShotFigure.BALL_SPEED, METRES_PER_SECOND, 2)
                                .column("Startwinkel", ShotFigure.LAUNCH_ANGLE, DEGREE, 1)
                                .column("Carry", ShotFigure.CARRY, METRE, 1)
                                .unitsBelow("m/s;°;m")
                                .after("Mittelwert;65,3;12,2;220,1\r\n")
                                .text(SHOTS)),
                        SHOTS,
                        Set.of(ShotFigure.BALL_SPEED, ShotFigure.LAUNCH_ANGLE, ShotFigure.CARRY),
                        Map.of(2, "units", 8, "summary")),
                new Case(
                        "duplicates and headings again",
                        TableWriter.utf8(english()
                                .after("Ball Speed (mph),Launch Angle (deg),Spin Rate (rpm),Carry (yd)\r\n"
                                        + english()
                                                .text(SHOTS.subList(1, 2))
                                                .lines()
                                                .skip(1)
                                                .findFirst()
                                                .orElseThrow()
                                        + "\r\n")
                                .text(SHOTS)),
                        Stream.concat(SHOTS.stream(), Stream.of(SHOTS.get(1))).toList(),
                        FOUR,
                        Map.of(7, "headings again")),
                new Case(
                        "columns that are about the club",
                        TableWriter.utf8(english()
                                .column("Club Path (deg)", s -> "-2.1")
                                .column("Smash Factor", s -> "1.47")
                                .text(SHOTS)),
                        SHOTS.stream()
                                .map(shot -> shot.with(ShotFigure.SMASH_FACTOR, 1.47)
                                        .with(ShotFigure.CLUB_PATH, Math.toRadians(2.1)))
                                .toList(),
                        Stream.concat(FOUR.stream(), Stream.of(ShotFigure.SMASH_FACTOR, ShotFigure.CLUB_PATH))
                                .collect(java.util.stream.Collectors.toSet()),
                        Map.of()),
                new Case(
                        "the club's own speed",
                        TableWriter.utf8(english()
                                .column("Club Head Speed (mph)", ShotFigure.CLUB_SPEED, MILES_PER_HOUR, 1)
                                .text(withClubSpeed())),
                        withClubSpeed(),
                        Stream.concat(FOUR.stream(), Stream.of(ShotFigure.CLUB_SPEED))
                                .collect(java.util.stream.Collectors.toSet()),
                        Map.of()));
    }

    private static List<Shot> withClubSpeed() {
        return SHOTS.stream()
                .map(s -> s.with(
                        ShotFigure.CLUB_SPEED, s.figure(ShotFigure.BALL_SPEED).getAsDouble() / 1.47))
                .toList();
    }

    private static Stream<Case> faults() {
        String good = english().text(SHOTS);
        return Stream.of(
                new Case(
                        "cells that are no figures",
                        TableWriter.utf8(good + "about 145,12.0,2600,240.1\r\n,,,\r\n--,n/a,,\r\nabc,def,ghi,jkl\r\n"),
                        withoutSpeed(SHOTS),
                        FOUR,
                        Map.of(7, "“about 145” is not a number", 9, "no figure", 10, "is not a number")),
                new Case(
                        "decimal commas among commas",
                        TableWriter.utf8("Ball Speed (m/s),Launch Angle (deg)\r\n65,4,12,3\r\n66,1,13,0\r\n"),
                        List.of(),
                        Set.of(),
                        Map.of(2, "separator within a figure", 3, "separator within a figure")),
                new Case(
                        "prose",
                        TableWriter.utf8("Dear coach,\r\nthe numbers will follow, I promise.\r\n"),
                        List.of(),
                        Set.of(),
                        Map.of(1, "no heading")),
                new Case("nothing at all", new byte[0], List.of(), Set.of(), Map.of(1, "no heading")));
    }

    /** The good shots and one whose ball speed could not be read. */
    private static List<Shot> withoutSpeed(List<Shot> good) {
        List<Shot> all = new ArrayList<>(good);
        all.add(new Shot(Map.of(
                ShotFigure.LAUNCH_ANGLE,
                Math.toRadians(12),
                ShotFigure.SPIN_RATE,
                TURNS_PER_MINUTE.toInside(2600),
                ShotFigure.CARRY,
                YARD.toInside(240.1))));
        return all;
    }

    @Test
    void thereAreThirty() {
        assertThat(tables()).hasSizeGreaterThanOrEqualTo(30);
    }

    /** The tables and what is true of them, by the line; for the count of {@link NothingSilentlyWrongTest}. */
    static Map<Object, Map<Integer, Shot>> truths() {
        Map<Object, Map<Integer, Shot>> all = new java.util.LinkedHashMap<>();
        tables().forEach(t -> {
            Imported read = ShotImport.read(t.bytes, decided(t));
            Map<Integer, Shot> truth = new java.util.TreeMap<>();
            for (int i = 0; i < t.shots.size(); i++) {
                Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
                figures.putAll(t.shots.get(i).figures());
                figures.keySet().retainAll(t.figures);
                truth.put(read.lines().get(i), new Shot(figures));
            }
            all.put(t, truth);
        });
        return all;
    }

    static byte[] bytes(Object table) {
        return ((Case) table).bytes;
    }

    /** The sure columns and, as a coach would who knows the table, the asked ones as they were asked about. */
    private static Template decided(Case table) {
        Proposal proposal = Proposal.of(table.bytes, "test");
        List<Column> columns = new ArrayList<>(proposal.template().columns());
        proposal.asked().stream()
                .flatMap(a -> a.perhaps().stream())
                .filter(c -> columns.stream().noneMatch(x -> x.meaning() == c.meaning()))
                .forEach(columns::add);
        return new Template(
                "decided",
                Separator.GUESS,
                DecimalMark.GUESS,
                columns,
                proposal.template().remarks());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tables")
    void isReadOrRefusedByLineAndReason(Case table) {
        Imported imported = ShotImport.read(table.bytes, decided(table));
        assertThat(imported.shots()).as("%s", imported).hasSize(table.shots.size());
        for (int i = 0; i < table.shots.size(); i++) {
            Shot truth = table.shots.get(i);
            Shot read = imported.shots().get(i);
            for (ShotFigure figure : table.figures) {
                assertThat(read.figure(figure).isPresent())
                        .as("%s %s", figure, read)
                        .isEqualTo(truth.figure(figure).isPresent());
                truth.figure(figure)
                        .ifPresent(v -> assertThat(read.figure(figure).getAsDouble())
                                .as(figure.id())
                                .isCloseTo(v, within(rounding(figure))));
            }
            assertThat(table.figures).containsAll(read.figures().keySet());
        }
        assertThat(imported.leftOut()).as("%s", imported.leftOut()).hasSize(table.out.size());
        imported.leftOut().forEach(l -> {
            assertThat(table.out).containsKey(l.line());
            assertThat(l.reason()).contains(table.out.get(l.line()));
        });
    }
}
