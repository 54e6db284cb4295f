package org.toeline.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.reading.Reading;

/**
 * What changed between two lessons. A change is shown when it exceeds what measuring twice would give,
 * 1.96·√(u₁² + u₂²); the player's own spread from one address to the next is not known from one address each, so it is
 * left out, and that is said.
 */
final class LessonChange {

    private LessonChange() {
    }

    static void print(Assessment before, Assessment after, PrintWriter out) {
        Words words = Words.english();
        for (Reading first : before.readings()) {
            after.readings().stream().filter(r -> r.kind() == first.kind()).findFirst().ifPresent(second -> {
                double change = second.shownValue() - first.shownValue();
                double least = 1.96 * Math.hypot(first.shownStandardUncertainty(), second.shownStandardUncertainty());
                out.printf(Locale.ROOT, "%-32s %+8.1f %-8s %s%n", words.name(first.kind()), change,
                        first.kind().unit().id(), Math.abs(change) > least
                                ? "changed" : String.format(Locale.ROOT, "no change shown (less than %.1f)", least));
            });
        }
        out.println("(The player's own spread from one address to the next is not known from one address each.)");
    }
}
