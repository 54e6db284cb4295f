package org.toeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.mark.Club;
import org.toeline.reading.Reading;

/**
 * The decision rule (JCGM 106:2012): with the reading's distribution, p is the probability that the true value lies in
 * the range. An interval wider than the range cannot tell; p ≥ 0.95 is in range, p ≤ 0.05 out of range, anything
 * between is too close to call.
 */
public final class Judge {

    /** How sure a verdict must be. */
    public static final double CONFIDENCE = 0.95;

    private Judge() {}

    public static Advice advise(List<Reading> readings, Club club, RangeBook ranges, CauseChain causes) {
        List<Finding> findings = new ArrayList<>();
        for (Reading reading : readings) {
            Optional<Finding.Judged> judged =
                    ranges.range(reading.kind(), club).map(range -> new Finding.Judged(range, verdict(reading, range)));
            findings.add(new Finding(reading, judged));
        }
        return new Advice(findings, causes.first(findings, club));
    }

    /** The probability that the true value lies in the range. */
    public static double conformity(Reading reading, Range range) {
        return reading.spread().probabilityBelow(range.high())
                - reading.spread().probabilityBelow(range.low());
    }

    /** A reading surely outside is called so even when its interval is wide: that much the views do tell. */
    public static Verdict verdict(Reading reading, Range range) {
        double inside = conformity(reading, range);
        double below = reading.spread().probabilityBelow(range.low());
        if (inside <= 1 - CONFIDENCE && Math.max(below, 1 - below - inside) >= CONFIDENCE) {
            return below > 0.5 ? Verdict.OUT_LOW : Verdict.OUT_HIGH;
        }
        if (reading.high() - reading.low() > range.high() - range.low()) {
            return Verdict.CANNOT_TELL;
        }
        if (inside >= CONFIDENCE) {
            return Verdict.IN_RANGE;
        }
        return Verdict.TOO_CLOSE;
    }
}
