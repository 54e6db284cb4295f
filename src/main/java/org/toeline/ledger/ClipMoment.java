package org.toeline.ledger;

import java.util.OptionalDouble;
import org.toeline.language.Sentences;

/**
 * The frame a view was marked on.
 *
 * @param clip     the clip's file name as written in the document, relative to it or absolute
 * @param seconds  the frame's presentation time; empty when none was chosen yet
 * @param filmedAt frames a second at which the coach says the clip was filmed, 1 to 100 000; empty where the file knows
 */
public record ClipMoment(String clip, OptionalDouble seconds, OptionalDouble filmedAt) {

    private static final double MOST_A_SECOND = 100_000;

    public ClipMoment {
        if (filmedAt.isPresent() && !(filmedAt.getAsDouble() >= 1 && filmedAt.getAsDouble() <= MOST_A_SECOND)) {
            throw new IllegalArgumentException(
                    Sentences.of(ClipMoment.class).of("clip.filmed-at", filmedAt.getAsDouble(), MOST_A_SECOND));
        }
    }

    /** A clip of which nobody said at what rate it was filmed. */
    public ClipMoment(String clip, OptionalDouble seconds) {
        this(clip, seconds, OptionalDouble.empty());
    }

    /** The same clip in another place. */
    public ClipMoment moved(String to) {
        return new ClipMoment(to, seconds, filmedAt);
    }

    /** Another frame of it. */
    public ClipMoment at(double otherSeconds) {
        return new ClipMoment(clip, OptionalDouble.of(otherSeconds), filmedAt);
    }

    /** What the coach says of its rate. */
    public ClipMoment filmed(OptionalDouble framesPerSecond) {
        return new ClipMoment(clip, seconds, framesPerSecond);
    }
}
