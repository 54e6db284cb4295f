package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.toeline.desk.text.Texts;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.SharesOfSides;
import org.toeline.flight.compare.SpreadDifference;
import org.toeline.language.Written;

/** How the scatter of the shots changed: how far apart they lie, and to which side they went. */
final class SpreadLines {

    private static final double PERCENT = 100;

    private SpreadLines() {}

    static List<List<TextGrid.Cell>> of(SetupComparison comparison) {
        List<List<TextGrid.Cell>> lines = new ArrayList<>();
        for (SpreadDifference s : comparison.spreads()) {
            lines.add(line(
                    s.real(),
                    Texts.of(
                            "shots.spread." + (s.real() ? s.ratio() > 1 ? "wider" : "narrower" : "unclear"),
                            Texts.of("shots.figure." + s.figure().id()),
                            times(s.ratio()),
                            times(s.low()),
                            times(s.high()))));
        }
        for (SharesOfSides s : comparison.sides()) {
            lines.add(line(
                    s.real(),
                    Texts.of(
                            "shots.sides." + s.side().name().toLowerCase(Locale.ROOT),
                            s.before(),
                            s.of(),
                            s.after(),
                            s.ofThen(),
                            signed(s.difference()),
                            signed(s.low()),
                            signed(s.high()))));
        }
        return lines;
    }

    private static String times(double ratio) {
        return Written.number("%.1f", ratio);
    }

    private static String signed(double share) {
        return Written.number("%+.0f", PERCENT * share);
    }

    private static List<TextGrid.Cell> line(boolean real, String text) {
        return List.of(TextGrid.Cell.of((real ? "● " : "○ ") + text, "shots-line"));
    }
}
