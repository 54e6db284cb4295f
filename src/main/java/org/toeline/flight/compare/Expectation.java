package org.toeline.flight.compare;

import java.util.Arrays;
import org.toeline.flight.ShotFigure;

/**
 * What a figure of the shots is expected to do when a reading of the setup goes up: a sign, no size.
 *
 * @param reading    the reading's name in documents
 * @param provenance on whose word: {@code published} or {@code common-practice}
 * @param source     the word itself
 */
public record Expectation(String reading, ShotFigure figure, Goes goes, String provenance, String source) {

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
        AS_EXPECTED,
        AGAINST_IT,
        /** The reading did not change, or no real difference of the figure was shown. */
        CANNOT_TELL
    }

    public Expectation {
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
        if (readingChange == 0
                || difference.state() != State.REAL
                || difference.estimate().isEmpty()) {
            return Outcome.CANNOT_TELL;
        }
        double expected = Math.signum(readingChange) * goes.sign(trail);
        return expected * difference.estimate().get().difference() > 0 ? Outcome.AS_EXPECTED : Outcome.AGAINST_IT;
    }
}
