package org.toeline.advice;

import java.util.Set;
import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * What is recommended for a reading, in the inside units of the reading (metres, radians, plain number).
 *
 * @param low    lower limit, included
 * @param high   upper limit, included, above {@code low}
 * @param aim    what to aim for, within the limits
 * @param source the citation, or why it is common practice
 * @param note   what the coach should know about it; may be empty
 */
public record Range(
        ReadingKind kind,
        Set<Club> clubs,
        double low,
        double high,
        double aim,
        Provenance provenance,
        String source,
        String note) {

    public Range {
        Finite.require(low, "low");
        Finite.require(high, "high");
        Finite.require(aim, "aim");
        clubs = Set.copyOf(clubs);
        if (!(low < high) || aim < low || aim > high) {
            throw new IllegalArgumentException(Sentences.of(Range.class)
                    .of("range.order", kind.id(), Double.toString(low), Double.toString(aim), Double.toString(high)));
        }
    }

    Range forClubs(Set<Club> fewer) {
        return new Range(kind, fewer, low, high, aim, provenance, source, note);
    }

    /** The same in a coach's own limits, given in the unit a person reads. */
    public Range coachsOwn(double shownLow, double shownHigh, double shownAim, String why) {
        return coachsOwn(kind, clubs, shownLow, shownHigh, shownAim, why);
    }

    /** A coach's own range, in the unit a person reads. */
    public static Range coachsOwn(
            ReadingKind kind, Set<Club> clubs, double shownLow, double shownHigh, double shownAim, String why) {
        return new Range(
                kind,
                clubs,
                kind.unit().toInside(shownLow),
                kind.unit().toInside(shownHigh),
                kind.unit().toInside(shownAim),
                Provenance.COACHS_OWN,
                why,
                "");
    }

    public double shownLow() {
        return kind.unit().fromInside(low);
    }

    public double shownHigh() {
        return kind.unit().fromInside(high);
    }

    public double shownAim() {
        return kind.unit().fromInside(aim);
    }
}
