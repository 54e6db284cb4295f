package org.toeline.desk.players;

import java.util.Arrays;
import java.util.Optional;
import org.toeline.advice.Words;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Days;
import org.toeline.desk.text.Texts;
import org.toeline.language.Written;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** What the ledger's rows are called on the screen. */
public final class Said {

    /** Half widths below this are told with a decimal. */
    private static final double FINE = 3;

    private Said() {}

    public static String player(Optional<String> name, int id) {
        return name.orElseGet(() -> Texts.of("players.nameless", Integer.toString(id)));
    }

    /** The day; as it is written when it is no date. */
    public static String day(Optional<String> recorded) {
        return recorded.map(r -> Days.of(r).orElse(r)).orElse(Texts.of("players.no-date"));
    }

    static String club(Words words, String id) {
        String name = Arrays.stream(Club.values())
                .filter(c -> c.id().equals(id))
                .findFirst()
                .map(words::name)
                .orElse(id);
        return Controls.sentence(name);
    }

    /** A figure as it was stated that day, as it is told everywhere; in the unit of that day where the program does not know it. */
    static String figure(Words words, StatedFinding finding) {
        Optional<ReadingKind> kind =
                kind(finding.reading()).filter(k -> k.unit().id().equals(finding.unit()));
        return kind.isPresent()
                ? words.figure(
                        kind.get(),
                        kind.get().unit().toInside(finding.value()),
                        kind.get().unit().toInside((finding.high() - finding.low()) / 2))
                : unknown(finding);
    }

    private static String unknown(StatedFinding finding) {
        double half = (finding.high() - finding.low()) / 2;
        String number = half < FINE ? "%.1f" : "%.0f";
        String unit =
                switch (finding.unit()) {
                    case "percent" -> "\u00a0%";
                    case "deg" -> "°";
                    case "ratio" -> "";
                    default -> "\u00a0" + finding.unit();
                };
        return Written.number(number, finding.value()) + " ± " + Written.number(number, half) + unit;
    }

    static String first(Words words, LessonLine line) {
        return line.first()
                .map(id -> Texts.of("players.first", reading(words, id)))
                .orElseGet(() -> Texts.of(
                        switch (line.judged()) {
                            case YES -> "players.nothing-first";
                            case NOT_YET -> "players.not-judged";
                            case DAMAGED -> "players.damaged";
                        }));
    }

    static String reading(Words words, String id) {
        return kind(id).map(words::name).orElse(id);
    }

    private static Optional<ReadingKind> kind(String id) {
        return Arrays.stream(ReadingKind.values())
                .filter(k -> k.id().equals(id))
                .findFirst();
    }
}
