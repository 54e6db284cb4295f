package org.toeline.across;

import java.util.List;
import org.toeline.advice.Words;
import org.toeline.reading.Measured;
import org.toeline.reading.ReadingKind;

/**
 * What changed from lesson to lesson, in words. Figures come as the ledger keeps them, in {@link ReadingKind#unit()}. Never says
 * that nothing changed: what is not shown may still be there.
 */
public final class ChangeWords {

    private static final double SURE = 1.96;

    private final Words words;

    public ChangeWords(Words words) {
        this.words = words;
    }

    public String call(ChangeCall call) {
        return words.text("change." + call.id());
    }

    /** The call and the figure with its 95 % interval, such as “real: −6.2 ± 2.1 cm”. */
    public String change(ReadingKind kind, LessonChange change) {
        return words.text(
                "change.figure",
                call(change.call()),
                difference(kind, change.difference(), change.smallestDetectable()));
    }

    /** What one lesson said, such as “+12.1 ± 1.3 cm”. */
    public String figure(ReadingKind kind, Measured measured) {
        return words.figure(
                kind,
                kind.unit().toInside(measured.value()),
                kind.unit().toInside(SURE * measured.standardUncertainty()));
    }

    /** A limit or an axis's end, without an interval. */
    public String amount(ReadingKind kind, double shown) {
        return words.amount(kind, kind.unit().toInside(shown));
    }

    /** From one lesson's figure to another's. */
    public String fromTo(ReadingKind kind, Measured earlier, Measured later) {
        return words.text("change.from-to", figure(kind, earlier), figure(kind, later));
    }

    /** The trend, weighted by uncertainty, for each lesson. */
    public String trend(ReadingKind kind, Trend trend) {
        return words.text("trend." + trend.call().id(), difference(kind, trend.slope(), trend.smallestDetectable()));
    }

    /** What is known of how much the player varies from one address to the next. */
    public String spread(ReadingKind kind, OwnSpread spread) {
        return spread.isKnown()
                ? words.text("spread.known", words.half(kind, kind.unit().toInside(SURE * spread.standardDeviation())))
                : words.text("spread.unknown");
    }

    private String difference(ReadingKind kind, double shown, double half) {
        return words.difference(kind, kind.unit().toInside(shown), kind.unit().toInside(half));
    }

    /** Which readings really changed, in one sentence. */
    public String real(List<ReadingKind> kinds) {
        return kinds.isEmpty() ? words.text("change.no-real") : words.text("change.real-list", named(kinds));
    }

    /** Of which it is too close to call; {@code kinds} is not empty. */
    public String close(List<ReadingKind> kinds) {
        return words.text("change.close-list", named(kinds));
    }

    private String named(List<ReadingKind> kinds) {
        return words.list(
                kinds.stream().map(k -> words.inSentence(words.name(k))).toList());
    }
}
