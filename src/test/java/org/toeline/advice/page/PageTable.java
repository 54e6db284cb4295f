package org.toeline.advice.page;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.toeline.advice.Advice;
import org.toeline.advice.Finding;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Provenance;
import org.toeline.advice.Range;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/**
 * Every page there is, for a professional to read: {@code main LANGUAGE} prints for each reading and direction what a
 * right-handed player reads who is a quarter of the shipped range past its limit; where clubs differ, once a kind of club. A
 * star marks what is said only with a coach's own range, since none ships.
 */
final class PageTable {

    private static final List<Club> ONE_A_KIND =
            List.of(Club.DRIVER, Club.FAIRWAY_WOOD, Club.MID_IRON, Club.WEDGE, Club.PUTTER);

    private PageTable() {}

    public static void main(String[] args) {
        Words words = Words.of(Locale.forLanguageTag(args.length > 0 ? args[0] : "en"), LengthUnit.CENTIMETRE);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        for (ReadingKind kind : ReadingKind.values()) {
            for (Verdict way : List.of(Verdict.OUT_LOW, Verdict.OUT_HIGH)) {
                out.println("\n## " + kind.id() + ", " + way.id());
                for (Part part : Part.values()) {
                    row(out, words, kind, way, part);
                }
            }
        }
    }

    private static void row(PrintStream out, Words words, ReadingKind kind, Verdict way, Part part) {
        String before = "";
        for (Club club : ONE_A_KIND) {
            String said = say(words, kind, way, part, club);
            if (!said.equals(before)) {
                out.printf(
                        "%-7s %-7s %s%n",
                        before.isEmpty() ? part.id() : "",
                        ClubKind.of(club).id()
                                + (RangeBook.shipped().range(kind, club).isPresent() ? "" : "*"),
                        said);
            }
            before = said;
        }
    }

    private static String say(Words words, ReadingKind kind, Verdict way, Part part, Club club) {
        Range range = RangeBook.shipped()
                .range(kind, club)
                .orElse(new Range(kind, Set.of(club), -1, 1, 0, Provenance.COACHS_OWN, "table", ""));
        double past = (range.high() - range.low()) / 4;
        double value = way == Verdict.OUT_LOW ? range.low() - past : range.high() + past;
        Finding finding = finding(kind, value, range, way);
        List<Finding> findings = Stream.concat(
                        Stream.of(finding),
                        Stream.of(ReadingKind.STANCE_WIDTH, ReadingKind.STANCE_TO_SHOULDER_WIDTH)
                                .filter(stance -> stance != kind)
                                .flatMap(stance -> RangeBook.shipped().range(stance, club).stream())
                                .map(r -> finding(r.kind(), r.aim(), r, Verdict.IN_RANGE)))
                .toList();
        Advice advice = new Advice(findings, Optional.empty(), Optional.empty());
        return new PlayerWords(words, Handedness.RIGHT, club, advice).say(part, finding);
    }

    private static Finding finding(ReadingKind kind, double value, Range range, Verdict verdict) {
        return new Finding(
                new Reading(kind, value, new Normal(value, 0.01 * (range.high() - range.low())), Source.MARKS),
                Optional.of(range),
                Optional.of(verdict));
    }
}
