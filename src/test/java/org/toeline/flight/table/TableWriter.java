package org.toeline.flight.table;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/** Writes shots as some table or other: any headings, separator, decimal mark, encoding, junk. */
final class TableWriter {

    private final List<String> headings = new ArrayList<>();
    private final List<Function<Shot, String>> cells = new ArrayList<>();
    private char decimal = '.';
    private String separator = ",";
    private String lineEnd = "\r\n";
    private String before = "";
    private String after = "";
    private String units = "";

    TableWriter column(String heading, ShotFigure figure, FigureUnit unit, int decimals) {
        return column(
                heading, shot -> number(unit.fromInside(shot.figure(figure).orElseThrow()), decimals));
    }

    /** A sided column whose plus is to the right. */
    TableWriter right(String heading, ShotFigure figure, FigureUnit unit, int decimals) {
        return column(
                heading, shot -> number(-unit.fromInside(shot.figure(figure).orElseThrow()), decimals));
    }

    /** A sided column with the side as letters, after (“3.2 L”) or before (“L 3.2”) the figure. */
    TableWriter letters(String heading, ShotFigure figure, FigureUnit unit, String pattern, String left, String right) {
        return column(heading, shot -> {
            double value = unit.fromInside(shot.figure(figure).orElseThrow());
            return String.format(pattern, number(Math.abs(value), 2), value > 0 ? left : right);
        });
    }

    TableWriter column(String heading, Function<Shot, String> cell) {
        headings.add(heading);
        cells.add(cell);
        return this;
    }

    TableWriter decimalComma() {
        decimal = ',';
        return this;
    }

    TableWriter separator(String sign) {
        separator = sign;
        return this;
    }

    TableWriter lineEnd(String end) {
        lineEnd = end;
        return this;
    }

    TableWriter before(String lines) {
        before = lines;
        return this;
    }

    TableWriter after(String lines) {
        after = lines;
        return this;
    }

    TableWriter unitsBelow(String row) {
        units = row;
        return this;
    }

    String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value).replace('.', decimal);
    }

    String text(List<Shot> shots) {
        StringBuilder out = new StringBuilder(before);
        row(out, headings);
        if (!units.isEmpty()) {
            out.append(units).append(lineEnd);
        }
        for (Shot shot : shots) {
            row(out, cells.stream().map(c -> c.apply(shot)).toList());
        }
        return out.append(after).toString();
    }

    private void row(StringBuilder out, List<String> row) {
        out.append(String.join(separator, row.stream().map(this::quoted).toList()))
                .append(lineEnd);
    }

    private String quoted(String cell) {
        return cell.contains(separator) || cell.contains("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static byte[] marked(String text, Charset charset) {
        return ("\ufeff" + text).getBytes(charset);
    }

    static byte[] windows(String text) {
        return text.getBytes(Charset.forName("windows-1252"));
    }
}
