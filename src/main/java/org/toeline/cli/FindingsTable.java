package org.toeline.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Range;
import org.toeline.advice.Verdict;
import org.toeline.posture.Doubt;
import org.toeline.reading.Reading;

/** Findings as lines of text. */
final class FindingsTable {

    private FindingsTable() {
    }

    static void print(Assessment assessment, PrintWriter out) {
        for (Finding finding : assessment.advice().findings()) {
            out.println(line(finding));
        }
        for (Doubt doubt : assessment.posture().doubts()) {
            out.printf(Locale.ROOT, "In doubt: %s in the %s view does not fit the rest, %.0f px off; it was left out.%n",
                    doubt.mark(), doubt.view().id(), doubt.offPx());
        }
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            out.println("First: " + first.get().finding().kind().id());
            if (!first.get().mayFollow().isEmpty()) {
                out.println("  may follow from it: " + String.join(", ",
                        first.get().mayFollow().stream().map(k -> k.id()).toList()));
            }
        } else {
            out.println("Nothing is out of range.");
        }
    }

    private static String line(Finding finding) {
        Reading r = finding.reading();
        double half = (r.shownHigh() - r.shownLow()) / 2;
        String range = finding.range().map(FindingsTable::range).orElse("");
        return String.format(Locale.ROOT, "%-27s %8.1f ± %-6.1f %-8s %-16s %s", r.kind().id(), r.shownValue(), half,
                r.kind().unit().id(), range, finding.verdict().map(FindingsTable::words).orElse(""));
    }

    private static String range(Range range) {
        return String.format(Locale.ROOT, "%.4g to %.4g", range.shownLow(), range.shownHigh());
    }

    private static String words(Verdict verdict) {
        return switch (verdict) {
            case IN_RANGE -> "in range";
            case OUT_LOW -> "out of range, low";
            case OUT_HIGH -> "out of range, high";
            case TOO_CLOSE -> "too close to call";
            case CANNOT_TELL -> "this view cannot tell";
        };
    }
}
