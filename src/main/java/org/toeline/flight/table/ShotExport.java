package org.toeline.flight.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * Shots as a table: commas, points, RFC 4180 quoting, units in the headings, a plus to the right of the target line. Its
 * template reads it back. A remark that a spreadsheet would take for a formula gets an apostrophe in front.
 */
public final class ShotExport {

    private static final String REMARK = "Remark";
    /** Surely names the setup where it is read again. */
    private static final String SETUP = "Setup";

    private static final int DECIMALS = 4;

    private ShotExport() {}

    /** The template that reads back what is written here. */
    public static Template template() {
        List<Column> columns = Arrays.stream(ShotFigure.values())
                .map(f -> new Column(heading(f), Meaning.of(f), f.shownUnit(), PositiveSide.RIGHT))
                .toList();
        return new Template("toeline-shots", Separator.COMMA, DecimalMark.POINT, columns, List.of(REMARK));
    }

    /** All figures that any of the shots has, and with which setup each was hit where anyone said so. */
    public static String csv(List<Shot> shots) {
        List<ShotFigure> figures = Arrays.stream(ShotFigure.values())
                .filter(f -> shots.stream().anyMatch(s -> s.figure(f).isPresent()))
                .toList();
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            List<String> headings =
                    new ArrayList<>(figures.stream().map(ShotExport::heading).toList());
            boolean setups = shots.stream().anyMatch(s -> !s.setup().isEmpty());
            if (setups) {
                headings.add(SETUP);
            }
            headings.add(REMARK);
            printer.printRecord(headings);
            for (Shot shot : shots) {
                List<String> cells =
                        new ArrayList<>(figures.stream().map(f -> cell(shot, f)).toList());
                if (setups) {
                    cells.add(harmless(shot.setup()));
                }
                cells.add(harmless(remark(shot)));
                printer.printRecord(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    /** With why it was put aside, in brackets. */
    private static String remark(Shot shot) {
        return shot.aside().isEmpty() ? shot.remark() : ("[" + shot.aside() + "] " + shot.remark()).strip();
    }

    /** In whatever language the program speaks: what reads the table again knows it by its headings. */
    private static String heading(ShotFigure figure) {
        String id =
                switch (figure) {
                    case SIDE -> "carry-side";
                    case TOTAL -> "total-distance";
                    default -> figure.id();
                };
        String words = id.replace('-', ' ');
        String signs = figure.sided() ? ", right +" : figure == ShotFigure.ATTACK_ANGLE ? ", up +" : "";
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + " ("
                + figure.shownUnit().id() + signs + ")";
    }

    private static String cell(Shot shot, ShotFigure figure) {
        OptionalDouble value = shot.figure(figure);
        if (value.isEmpty()) {
            return "";
        }
        double shown = figure.shownUnit().fromInside(value.getAsDouble()) * (figure.sided() ? -1 : 1);
        return BigDecimal.valueOf(shown)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Text that begins like a formula (=, +, −, @, tab, line end; also in full width) is made plain text. */
    static String harmless(String text) {
        String begun = text.stripLeading();
        boolean formula = !begun.isEmpty() && "=+-@\uff1d\uff0b\uff0d\uff20".indexOf(begun.charAt(0)) >= 0;
        boolean control = !text.isEmpty() && "\t\r\n".indexOf(text.charAt(0)) >= 0;
        return formula || control ? "'" + text : text;
    }
}
