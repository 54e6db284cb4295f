package org.toeline.desk.ranges;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.toeline.advice.Range;
import org.toeline.desk.records.OwnRanges;
import org.toeline.desk.text.TypedNumber;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * One reading's range for one club as it is typed: what counts now, and what would with what is in the fields.
 *
 * @param shipped what comes with the program; empty when it says nothing
 * @param own     the coach's own; empty when there is none
 */
record RangeRow(ReadingKind kind, Club club, Optional<Range> shipped, Optional<Range> own) {

    static RangeRow of(OwnRanges ranges, ReadingKind kind, Club club) {
        return new RangeRow(
                kind, club, org.toeline.advice.RangeBook.shipped().range(kind, club), ranges.own(kind, club));
    }

    /** What lessons are judged by; empty when the reading is not judged. */
    Optional<Range> counts() {
        return own.or(() -> shipped);
    }

    /**
     * The range that three fields hold.
     *
     * @return empty when they are empty, or hold what counts already
     * @throws IllegalArgumentException with the key of a sentence, when they hold no range
     */
    Optional<Range> typed(String low, String aim, String high, String why) {
        if (low.isBlank() && aim.isBlank() && high.isBlank()) {
            return Optional.empty();
        }
        OptionalDouble[] numbers = {TypedNumber.read(low), TypedNumber.read(aim), TypedNumber.read(high)};
        for (OptionalDouble number : numbers) {
            if (number.isEmpty()) {
                throw new IllegalArgumentException("ranges.no-number");
            }
        }
        double least = numbers[0].getAsDouble();
        double wanted = numbers[1].getAsDouble();
        double most = numbers[2].getAsDouble();
        if (!(least < most) || wanted < least || wanted > most) {
            throw new IllegalArgumentException("ranges.not-rising");
        }
        Range typed = Range.coachsOwn(kind, counts().map(Range::clubs).orElse(Set.of(club)), least, most, wanted, why);
        boolean same = counts().filter(c -> shown(c.shownLow()).equals(shown(least))
                        && shown(c.shownAim()).equals(shown(wanted))
                        && shown(c.shownHigh()).equals(shown(most)))
                .isPresent();
        return same ? Optional.empty() : Optional.of(typed);
    }

    static String shown(double value) {
        return TypedNumber.shown(value, "0.##");
    }
}
