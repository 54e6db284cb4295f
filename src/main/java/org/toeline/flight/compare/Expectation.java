package org.toeline.flight.compare;

import java.util.Arrays;
import java.util.Set;
import org.toeline.flight.ShotFigure;

/**
 * What a figure of the shots is expected to do when a reading of the setup goes up: a sign, no size.
 *
 * @param reading    the reading's name in documents
 * @param clubs      for which clubs it was said, by their names in documents
 * @param start      where the reading must be for it to hold
 * @param provenance on whose word: {@code published} or {@code common-practice}
 * @param strength   how much that word weighs
 * @param source     the word itself
 */
public record Expectation(
        String reading,
        ShotFigure figure,
        Goes goes,
        Set<String> clubs,
        Start start,
        String provenance,
        Strength strength,
        String source) {

    /** Where a reading must be. */
    public enum Start {
        ANYWHERE,
        /** Above zero at the end of the change that is farther up: a ball beyond the lead shoulder, say. */
        BEYOND_ZERO
    }

    /** How much a source weighs. */
    public enum Strength {
        /** One study that measured it, or several that agree. */
        MEASURED,
        /** One study that was not reviewed, or is known by quotation only. */
        REPORTED,
        /** Said by many, measured by nobody we know of. */
        SAID
    }

    /** Which way a figure goes. */
    public enum Goes {
        UP("up"),
        DOWN("down"),
        TO_TRAIL_SIDE("to-trail-side"),
        TO_LEAD_SIDE("to-lead-side");

        private final String id;

        Goes(String id) {
            this.id = id;
        }

        /** The name in documents. */
        public String id() {
            return id;
        }

        static Goes of(String id) {
            return Arrays.stream(values())
                    .filter(g -> g.id.equals(id))
                    .findFirst()
                    .orElseThrow();
        }

        private double sign(TrailSide trail) {
            return switch (this) {
                case UP -> 1;
                case DOWN -> -1;
                case TO_TRAIL_SIDE -> trail == TrailSide.LEFT ? 1 : -1;
                case TO_LEAD_SIDE -> trail == TrailSide.LEFT ? -1 : 1;
            };
        }
    }

    /** What came of an expectation. */
    public enum Outcome {
        /** The whole interval of the figure's difference lies on the side expected. */
        AS_EXPECTED,
        /** It lies on the other side. */
        AGAINST_IT,
        /** It is as small as makes no difference, whichever way. */
        NEITHER,
        /** The interval holds both, or there are too few shots for one. */
        CANNOT_TELL
    }

    /**
     * Whether it was said of such a change.
     *
     * @param club by its name in documents
     */
    public boolean applies(String club, double readingBefore, double readingAfter) {
        return (clubs.isEmpty() || clubs.contains(club))
                && (start == Start.ANYWHERE || Math.max(readingBefore, readingAfter) > 0);
    }

    public Expectation {
        clubs = Set.copyOf(clubs);
        boolean sideways = goes == Goes.TO_TRAIL_SIDE || goes == Goes.TO_LEAD_SIDE;
        if (sideways != figure.sided()) {
            throw new IllegalArgumentException(figure.id() + " goes " + goes.id()
                    + ": only sided figures go to a side, " + "and they go nowhere else");
        }
    }

    /**
     * What came of it from one setup to another.
     *
     * @param readingChange how the reading changed, in any unit; only its sign counts
     */
    public Outcome outcome(double readingChange, Difference difference, TrailSide trail) {
        if (difference.figure() != figure) {
            throw new IllegalArgumentException(
                    "a difference of " + difference.figure().id() + "; " + figure.id() + " is needed");
        }
        if (readingChange == 0 || difference.estimate().isEmpty()) {
            return Outcome.CANNOT_TELL;
        }
        double expected = Math.signum(readingChange) * goes.sign(trail);
        Estimate found = difference.estimate().get();
        if (difference.state() == State.REAL) {
            return expected * found.difference() > 0 ? Outcome.AS_EXPECTED : Outcome.AGAINST_IT;
        }
        return difference.state() == State.NOT_SHOWN ? Outcome.NEITHER : Outcome.CANNOT_TELL;
    }
}
