package org.toeline.assist;

/**
 * A moment of address: the player stands still before taking the club away. Seconds in the clip's presentation time.
 *
 * @param addressSeconds the frame suggested, within the span
 * @param confidence     how clearly stillness and swing stand out, 0.5 (just enough to be named) to 0.95, or 1 where a
 *                       person says so; a score by which moments can be ranked, not a probability
 */
public record StillSpan(double startSeconds, double endSeconds, double addressSeconds, double confidence) {

    public StillSpan {
        if (!(startSeconds <= addressSeconds && addressSeconds <= endSeconds)) {
            throw new IllegalArgumentException(
                    "address at " + addressSeconds + " s is outside " + startSeconds + " to " + endSeconds + " s");
        }
        if (!(confidence >= 0.5 && confidence <= 1)) {
            throw new IllegalArgumentException("confidence " + confidence + "; 0.5 to 1 is possible");
        }
    }

    /** A span that somebody chose, and so is sure of. */
    public StillSpan(double startSeconds, double endSeconds, double addressSeconds) {
        this(startSeconds, endSeconds, addressSeconds, 1);
    }
}
