package org.toeline.advice;

import java.util.List;
import java.util.Optional;
import org.toeline.mark.Club;
import org.toeline.mark.Stature;
import org.toeline.reading.Reading;

/**
 * The decision rule: guarded acceptance and guarded rejection of JCGM 106:2012 (8.3), with a guard as wide as the drawn
 * 95 % interval on either side, so that the words and the drawing are one rule, {@link Verdict#of}.
 */
public final class Judge {

    /** In how many steps the interval of the player's size is looked through, to either side. */
    private static final int SIZES = 6;

    private Judge() {}

    /** Readings of a player of the usual size. */
    public static Advice advise(List<Reading> readings, Club club, RangeBook ranges, CauseChain causes) {
        List<Finding> findings = readings.stream()
                .map(r -> Finding.judged(r, ranges.range(r.kind(), club)))
                .toList();
        return Advice.of(findings, club, causes);
    }

    /** A reading against the range that fits a player of that size. */
    static Finding finding(Reading reading, Club club, RangeBook ranges, Stature size) {
        Optional<Range> range = ranges.range(reading.kind(), club);
        if (range.isPresent() && !range.get().isFor(size)) {
            return new Finding(reading, Optional.empty(), Optional.of(Verdict.NOT_FOR_CHILDREN));
        }
        return Finding.judged(reading, range.map(r -> fitted(reading, r, size)));
    }

    /**
     * The range at the player's size. Where the interval of the size leaves open which limits hold, and with some of them the
     * reading is called one way and with others another, the limits are those nearest to the likeliest size that leave it open.
     */
    private static Range fitted(Reading reading, Range range, Stature size) {
        Range likeliest = range.at(size.heightM());
        if (range.scaling() == Range.Scaling.NONE) {
            return likeliest;
        }
        Verdict verdict = verdict(reading, likeliest);
        for (int i = 1; i <= SIZES; i++) {
            for (int side = -1; side <= 1; side += 2) {
                double off = side * 1.96 * size.sigmaM() * i / SIZES;
                Range other = range.at(Math.max(0.8, size.heightM() + off));
                Verdict then = verdict(reading, other);
                if (then != verdict && (then == Verdict.TOO_CLOSE || then == Verdict.CANNOT_TELL)) {
                    return other;
                }
            }
        }
        return likeliest;
    }

    public static Verdict verdict(Reading reading, Range range) {
        return Verdict.of(reading.shownLow(), reading.shownHigh(), range.shownLow(), range.shownHigh());
    }
}
