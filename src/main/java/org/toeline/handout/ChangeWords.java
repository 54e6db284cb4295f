package org.toeline.handout;

import java.util.Optional;
import org.toeline.across.ChangeCall;
import org.toeline.across.Family;
import org.toeline.across.LessonChange;
import org.toeline.across.OwnSpread;
import org.toeline.advice.Finding;
import org.toeline.advice.Range;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.advice.page.PlayerWords;
import org.toeline.reading.Measured;
import org.toeline.reading.ReadingKind;

/**
 * What became of one reading from a lesson to a later one, for the player: better, worse and no change are worded differently,
 * and what went well is praised first. Only a real change is called one.
 */
final class ChangeWords {

    private final Words words;
    private final PlayerWords player;

    ChangeWords(Words words, PlayerWords player) {
        this.words = words;
        this.player = player;
    }

    /** @param family of the readings that both lessons have, from which this one was picked */
    String of(ReadingKind kind, Optional<Finding> before, Optional<Finding> after, Family family) {
        String name = player.name(kind);
        if (before.isEmpty() || after.isEmpty()) {
            return words.text("compare.not-in-both", name);
        }
        LessonChange change = LessonChange.between(
                Measured.shown(before.get().reading()),
                Measured.shown(after.get().reading()),
                OwnSpread.usual(kind),
                family);
        if (change.call() == ChangeCall.NOT_SHOWN) {
            double detectable = kind.unit().toInside(change.smallestDetectable());
            return words.text("compare.not-shown", name, words.amount(kind, detectable));
        }
        if (change.call() == ChangeCall.TOO_CLOSE) {
            return words.text("compare.too-close", name);
        }
        return real(kind, name, before.get(), after.get());
    }

    private String real(ReadingKind kind, String name, Finding before, Finding after) {
        Optional<Range> range = after.range();
        if (range.isEmpty()) {
            return words.text("compare.real", name);
        }
        boolean wasOut = before.verdict().filter(Verdict::isOut).isPresent();
        if (wasOut && after.verdict().equals(Optional.of(Verdict.IN_RANGE))) {
            return words.text("compare.well", player.now(kind));
        }
        double was = off(range.get(), before.reading().value());
        double is = off(range.get(), after.reading().value());
        if (was * is < 0 && Math.abs(is) > 0) {
            return words.text("compare.past", name);
        }
        String call = Math.abs(is) < Math.abs(was) ? "nearer" : was == 0 && is == 0 ? "still-in" : "farther";
        return words.text("compare." + call, name);
    }

    /** How far above the range, below it when negative. */
    private static double off(Range range, double value) {
        return Math.max(0, value - range.high()) - Math.max(0, range.low() - value);
    }
}
