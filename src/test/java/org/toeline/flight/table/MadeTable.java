package org.toeline.flight.table;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/** A table made up for a test, and what is true of it: which line is which shot. */
final class MadeTable {

    /** A column: how its cells are written, and which figure of the shot they are, if they are one. */
    private record Made(String heading, Function<Shot, String> cell, List<ShotFigure> figures) {}

    final String name;
    private final List<Shot> shots;
    private final List<Made> columns = new ArrayList<>();
    private final List<String> above = new ArrayList<>();
    private final List<UnaryOperator<List<String>>> footers = new ArrayList<>();
    private final Map<Integer, String> between = new TreeMap<>();
    private String unitRow = "";
    private String separator = ";";
    private char decimal = '.';
    private Charset charset = StandardCharsets.UTF_8;

    MadeTable(String name, List<Shot> shots) {
        this.name = name;
        this.shots = shots;
    }

    MadeTable commas() {
        separator = ",";
        return this;
    }

    MadeTable tabs() {
        separator = "\t";
        return this;
    }

    MadeTable decimalComma() {
        decimal = ',';
        return this;
    }

    MadeTable in(Charset other) {
        charset = other;
        return this;
    }

    String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value).replace('.', decimal);
    }

    /** A figure; sided ones with a plus to the right. */
    MadeTable col(String heading, ShotFigure figure, FigureUnit unit, int decimals) {
        double sign = figure.sided() ? -1 : 1;
        return cells(heading, figure, v -> number(sign * unit.fromInside(v), decimals));
    }

    MadeTable plusLeft(String heading, ShotFigure figure, FigureUnit unit, int decimals) {
        return cells(heading, figure, v -> number(unit.fromInside(v), decimals));
    }

    MadeTable letters(String heading, ShotFigure figure, FigureUnit unit, String left, String right) {
        return cells(heading, figure, v -> number(Math.abs(unit.fromInside(v)), 2) + " " + (v > 0 ? left : right));
    }

    MadeTable cells(String heading, ShotFigure figure, Function<Double, String> written) {
        columns.add(new Made(
                heading,
                s -> s.figure(figure).isPresent()
                        ? written.apply(s.figure(figure).getAsDouble())
                        : "",
                List.of(figure)));
        return this;
    }

    /** A column that is about something else. */
    MadeTable decoy(String heading, Function<Shot, String> cell) {
        columns.add(new Made(heading, cell, List.of()));
        return this;
    }

    MadeTable number(String heading) {
        return decoy(heading, s -> String.valueOf(shots.indexOf(s) + 1));
    }

    MadeTable spins(String back, String side, double sideSign) {
        columns.add(
                new Made(back, s -> rpm(s, Math.cos(axis(s))), List.of(ShotFigure.SPIN_RATE, ShotFigure.SPIN_AXIS)));
        columns.add(new Made(side, s -> rpm(s, sideSign * Math.sin(axis(s))), List.of()));
        return this;
    }

    private static double axis(Shot shot) {
        return shot.figure(ShotFigure.SPIN_AXIS).orElse(0);
    }

    private String rpm(Shot shot, double share) {
        return number(
                FigureUnit.TURNS_PER_MINUTE.fromInside(
                        shot.figure(ShotFigure.SPIN_RATE).orElseThrow() * share),
                1);
    }

    MadeTable above(String line) {
        above.add(line);
        return this;
    }

    MadeTable units(String row) {
        unitRow = row;
        return this;
    }

    MadeTable before(int shot, String line) {
        between.put(shot, line);
        return this;
    }

    /** A row that sums up: the label first, then a statistic of each column of numbers. */
    MadeTable sumsUp(String label, Function<double[], Double> statistic, int decimals) {
        int place = footers.size();
        footers.add(cells -> {
            List<String> row = new ArrayList<>();
            for (int c = 0; c < columns.size(); c++) {
                int column = c;
                double[] numbers = shots.stream()
                        .map(s -> columns.get(column).cell.apply(s))
                        .filter(x -> x.matches("[-+]?\\d+([.,]\\d+)?"))
                        .mapToDouble(x -> Double.parseDouble(x.replace(',', '.')))
                        .toArray();
                row.add(c == 0 ? label : numbers.length < 2 ? "" : number(statistic.apply(numbers), decimals));
            }
            return row;
        });
        return place < 0 ? null : this;
    }

    MadeTable mean(String label) {
        return sumsUp(label, x -> Arrays.stream(x).average().orElseThrow(), 2);
    }

    MadeTable spread(String label) {
        return sumsUp(
                label,
                x -> {
                    double mean = Arrays.stream(x).average().orElseThrow();
                    return Math.sqrt(
                            Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / (x.length - 1));
                },
                2);
    }

    MadeTable most(String label) {
        return sumsUp(label, x -> Arrays.stream(x).max().orElseThrow(), 2);
    }

    /** What the table says, by the line of the file: only the figures that columns of it are. */
    Map<Integer, Shot> truth() {
        Map<Integer, Shot> truth = new TreeMap<>();
        List<String> lines = lines();
        int[] before = new int[lines.size() + 1];
        for (int i = 0; i < lines.size(); i++) {
            before[i + 1] = before[i] + lines.get(i).split("\n", -1).length;
        }
        byRow().forEach((row, shot) -> truth.put(before[row - 1] + 1, shot));
        return truth;
    }

    private Map<Integer, Shot> byRow() {
        Map<Integer, Shot> truth = new TreeMap<>();
        List<String> lines = lines();
        for (int i = 0; i < shots.size(); i++) {
            String row = row(shots.get(i));
            int line = lines.indexOf(row) + 1;
            while (truth.containsKey(line)) {
                int from = line;
                line = lines.subList(from, lines.size()).indexOf(row) + from + 1;
            }
            Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
            for (Made column : columns) {
                if (!column.cell.apply(shots.get(i)).isEmpty()) {
                    for (ShotFigure figure : column.figures) {
                        shots.get(i).figure(figure).ifPresent(v -> figures.put(figure, v));
                    }
                }
            }
            truth.put(line, new Shot(figures));
        }
        return truth;
    }

    private String row(Shot shot) {
        return join(columns.stream().map(c -> c.cell.apply(shot)).toList());
    }

    private String join(List<String> cells) {
        return cells.stream()
                .map(c -> c.contains(separator) ? '"' + c + '"' : c)
                .collect(Collectors.joining(separator));
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(above);
        lines.add(join(columns.stream().map(Made::heading).toList()));
        if (!unitRow.isEmpty()) {
            lines.add(unitRow);
        }
        for (int i = 0; i < shots.size(); i++) {
            if (between.containsKey(i)) {
                lines.addAll(List.of(between.get(i).split("\n", -1)));
            }
            lines.add(row(shots.get(i)));
        }
        footers.forEach(f -> lines.add(join(f.apply(List.of()))));
        if (between.containsKey(shots.size())) {
            lines.addAll(List.of(between.get(shots.size()).split("\n", -1)));
        }
        return lines;
    }

    byte[] bytes() {
        return (String.join("\r\n", lines()) + "\r\n").getBytes(charset);
    }

    @Override
    public String toString() {
        return name;
    }
}
