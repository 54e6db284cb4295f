package org.toeline.advice;

import java.util.OptionalDouble;
import java.util.Set;
import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;
import org.toeline.mark.Club;
import org.toeline.mark.Stature;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Unit;

/**
 * What is recommended for a reading, in the inside units of the reading (metres, radians, plain number).
 *
 * @param low    lower limit, included
 * @param high   upper limit, included, above {@code low}
 * @param aim    what to aim for, within the limits
 * @param source the citation, or why it is common practice
 * @param note   what the coach should know about it; may be empty
 * @param statureM the stature that limits which grow were fitted to, metres; empty as written in the book, for
 *                 {@link #USUAL_STATURE_M}
 */
public record Range(
        ReadingKind kind,
        Set<Club> clubs,
        double low,
        double high,
        double aim,
        Provenance provenance,
        String source,
        String note,
        Scaling scaling,
        Whom whom,
        OptionalDouble statureM) {

    /** The stature that limits which grow with the player are written for, metres: ANSUR II, between men and women. */
    public static final double USUAL_STATURE_M = 1.70;

    /** Players smaller than this are taken for children, metres: about the smallest woman of ANSUR II, from memory. */
    public static final double GROWN_M = 1.40;

    /** How limits follow the player's size. */
    public enum Scaling {
        /** Angles, ratios, and what belongs to ball and club. */
        NONE("none"),
        /** Lengths of the body grow as the stature does. */
        STATURE("stature");

        private final String id;

        Scaling(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }

        static Scaling usual(ReadingKind kind) {
            return kind.unit() == Unit.CENTIMETRE ? STATURE : NONE;
        }
    }

    /** For whom a range has a source. */
    public enum Whom {
        EVERYONE("everyone"),
        /** Not for children. */
        GROWN("grown");

        private final String id;

        Whom(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }

        static Whom usual(ReadingKind kind) {
            return kind.unit() == Unit.CENTIMETRE ? GROWN : EVERYONE;
        }
    }

    /** Lengths of the body follow the stature and are for grown people, everything else is the same for all. */
    public Range(
            ReadingKind kind,
            Set<Club> clubs,
            double low,
            double high,
            double aim,
            Provenance provenance,
            String source,
            String note) {
        this(
                kind,
                clubs,
                low,
                high,
                aim,
                provenance,
                source,
                note,
                Scaling.usual(kind),
                Whom.usual(kind),
                OptionalDouble.empty());
    }

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
        return new Range(kind, fewer, low, high, aim, provenance, source, note, scaling, whom, statureM);
    }

    boolean isFor(Stature size) {
        return whom == Whom.EVERYONE || size.heightM() >= GROWN_M;
    }

    /** The limits for a player of that stature; the same where they do not grow. */
    Range at(double heightM) {
        if (scaling == Scaling.NONE) {
            return this;
        }
        double by = heightM / USUAL_STATURE_M;
        return new Range(
                kind,
                clubs,
                low * by,
                high * by,
                aim * by,
                provenance,
                source,
                note,
                scaling,
                whom,
                OptionalDouble.of(heightM));
    }

    /** The same in a coach's own limits, given in the unit a person reads. */
    public Range coachsOwn(double shownLow, double shownHigh, double shownAim, String why) {
        Range own = coachsOwn(kind, clubs, shownLow, shownHigh, shownAim, why);
        return new Range(
                kind,
                clubs,
                own.low,
                own.high,
                own.aim,
                own.provenance,
                why,
                "",
                scaling,
                whom,
                OptionalDouble.empty());
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
