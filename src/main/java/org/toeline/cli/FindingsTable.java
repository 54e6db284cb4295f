package org.toeline.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.toeline.advice.Assessment;
import org.toeline.advice.CameraMove;
import org.toeline.advice.CameraStand;
import org.toeline.advice.CameraWords;
import org.toeline.advice.CauseWords;
import org.toeline.advice.Contradiction;
import org.toeline.advice.ContradictionWords;
import org.toeline.advice.Finding;
import org.toeline.advice.FindingWords;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.advice.page.PlayerWords;
import org.toeline.language.Sentences;
import org.toeline.mark.View;

/** Findings as lines of text. */
final class FindingsTable {

    private static final Sentences SENTENCES = Sentences.of(FindingsTable.class);

    private FindingsTable() {}

    static void print(Assessment assessment, PrintWriter out) {
        Words words = Words.usual();
        Optional<Contradiction> withheld = assessment.advice().withheld();
        if (withheld.isPresent()) {
            withheld(withheld.get(), words, out);
            doubts(assessment, words, out);
            return;
        }
        for (Finding finding : assessment.advice().findings()) {
            out.println(line(finding, words));
        }
        doubts(assessment, words, out);
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            out.println(SENTENCES.of(
                    "findings.first",
                    new FindingWords(words).fault(first.get().finding()),
                    words.figure(first.get().finding()),
                    first.get().finding().kind().id()));
            out.println("  "
                    + PlayerWords.of(words, assessment).instruction(first.get().finding()));
            new CauseWords(words).mayFollow(first.get()).ifPresent(text -> out.println("  " + text));
        } else {
            out.println(new FindingWords(words).nothing(assessment.advice()) + ".");
        }
        CameraWords cameras = new CameraWords(words);
        for (View view : View.values()) {
            CameraStand.of(assessment.posture(), view)
                    .ifPresent(stand -> out.println(
                            cameras.stand(stand) + " " + cameras.move(view, CameraMove.best(assessment, view))));
        }
    }

    /** What contradicts what, and no figure: none of them is earned. */
    private static void withheld(Contradiction c, Words words, PrintWriter out) {
        out.println(words.text("contradiction.title") + ": " + new ContradictionWords(words).sentence(c));
        out.println("  " + new ContradictionWords(words).mend(c)
                + (c.mend().isPresent() ? ": --mend " + c.likely().id() : "."));
    }

    private static void doubts(Assessment assessment, Words words, PrintWriter out) {
        assessment
                .posture()
                .doubts()
                .forEach(d -> out.println(SENTENCES.of("findings.doubt", new ContradictionWords(words).doubt(d))));
    }

    private static String line(Finding finding, Words words) {
        return String.format(
                        Locale.ROOT,
                        "%-27s %-24s %-20s %s",
                        finding.kind().id(),
                        words.figure(finding),
                        finding.range()
                                .map(r -> words.range(finding.kind(), r.low(), r.high()))
                                .orElse(""),
                        finding.verdict().map(v -> verdict(finding, words)).orElse(""))
                .stripTrailing();
    }

    private static String verdict(Finding finding, Words words) {
        String side = finding.verdict()
                .map(v -> v == Verdict.OUT_LOW
                        ? SENTENCES.of("findings.low")
                        : v == Verdict.OUT_HIGH ? SENTENCES.of("findings.high") : "")
                .orElse("");
        return words.verdict(finding) + side;
    }
}
