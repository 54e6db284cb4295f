package org.toeline.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.toeline.advice.Assessment;
import org.toeline.advice.CameraMove;
import org.toeline.advice.CameraStand;
import org.toeline.advice.CameraWords;
import org.toeline.advice.Finding;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Range;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.mark.View;
import org.toeline.reading.Reading;

/** Findings as lines of text. */
final class FindingsTable {

    private static final Words WORDS = Words.english();

    private FindingsTable() {}

    static void print(Assessment assessment, PrintWriter out) {
        for (Finding finding : assessment.advice().findings()) {
            out.println(line(finding));
        }
        assessment.posture().doubts().forEach(d -> out.println("In doubt, and left out: " + WORDS.doubt(d)));
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            out.println("First: " + WORDS.fault(first.get().finding()) + ", "
                    + WORDS.figure(first.get().finding().reading()) + " ("
                    + first.get().finding().kind().id() + ").");
            out.println("  " + WORDS.instruction(first.get()));
            WORDS.mayFollow(first.get()).ifPresent(text -> out.println("  " + text));
        } else {
            out.println(WORDS.nothing(assessment.advice()) + ".");
        }
        CameraWords cameras = new CameraWords(WORDS);
        for (View view : View.values()) {
            CameraStand.of(assessment.posture(), view)
                    .ifPresent(stand -> out.println(
                            cameras.stand(stand) + " " + cameras.move(view, CameraMove.best(assessment, view))));
        }
    }

    private static String line(Finding finding) {
        Reading r = finding.reading();
        double half = (r.shownHigh() - r.shownLow()) / 2;
        String range = finding.range().map(FindingsTable::range).orElse("");
        return String.format(
                Locale.ROOT,
                "%-27s %8.1f ± %-6.1f %-8s %-16s %s",
                r.kind().id(),
                r.shownValue(),
                half,
                r.kind().unit().id(),
                range,
                finding.verdict().map(v -> words(finding)).orElse(""));
    }

    private static String range(Range range) {
        return String.format(Locale.ROOT, "%.4g to %.4g", range.shownLow(), range.shownHigh());
    }

    private static String words(Finding finding) {
        String side = finding.verdict()
                .map(v -> v == Verdict.OUT_LOW ? ", low" : v == Verdict.OUT_HIGH ? ", high" : "")
                .orElse("");
        return WORDS.verdict(finding) + side;
    }
}
