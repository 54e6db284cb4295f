package org.toeline.advice;

import java.util.Optional;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/**
 * A reading and what is said of it. A reading without a range for this club and player is shown and not judged.
 *
 * @param range   what is recommended, fitted to the player's size; empty when there is nothing
 * @param verdict empty when there is no range; {@link Verdict#DRAFT} and {@link Verdict#WITHHELD} with or without one
 */
public record Finding(Reading reading, Optional<Range> range, Optional<Verdict> verdict) {

    /** A reading judged by the rule, where there is a range. */
    public static Finding judged(Reading reading, Optional<Range> range) {
        return new Finding(reading, range, range.map(r -> Judge.verdict(reading, r)));
    }

    /** The same with nothing judged, and why. */
    public Finding instead(Verdict notJudged) {
        return new Finding(reading, range, Optional.of(notJudged));
    }

    public ReadingKind kind() {
        return reading.kind();
    }

    /** Whether it was held against a range. */
    public boolean isJudged() {
        return verdict.filter(Verdict::isJudged).isPresent();
    }

    public boolean isOut() {
        return verdict.filter(Verdict::isOut).isPresent();
    }

    public boolean isDraft() {
        return verdict.equals(Optional.of(Verdict.DRAFT));
    }
}
