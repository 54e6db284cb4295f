package org.toeline.assist;

import java.util.List;
import java.util.OptionalDouble;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * Where the thing under one mark was in the frames around the marked one.
 *
 * @param mark    the mark that was followed, on the marked frame
 * @param outcome whether it could be followed; with any but {@link Outcome#HELD} the steps are those until it was lost
 * @param steps   in the order of time, the marked frame among them; never empty
 * @param noisePx how far following to a frame and back misses the mark, rms over the steps, pixels
 */
public record Track(ImagePoint mark, Outcome outcome, List<Step> steps, double noisePx) {

    /** How following went. */
    public enum Outcome {
        /** Seen in every frame looked at. */
        HELD,
        /** Hidden, blurred or changed: following there and back did not return to the mark, or it looks different. */
        LOST,
        /** Nothing under the mark that could be told from its surroundings in both directions. */
        NOTHING_TO_HOLD,
        /** It left the picture, or lies too near to its edge. */
        OUTSIDE
    }

    /**
     * Where it was in one frame.
     *
     * @param seconds presentation time
     */
    public record Step(double seconds, ImagePoint at) {}

    public Track {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a track without a step; the marked frame is always one");
        }
        Finite.requireNotNegative(noisePx, "noisePx");
    }

    public boolean held() {
        return outcome == Outcome.HELD;
    }

    /** The middle of where it was: the mark, freed from what was the sway of the one moment. */
    public ImagePoint mean() {
        return new ImagePoint(
                steps.stream().mapToDouble(s -> s.at().xPx()).average().orElseThrow(),
                steps.stream().mapToDouble(s -> s.at().yPx()).average().orElseThrow());
    }

    /** Standard deviation across the picture, pixels; empty for a single step. */
    public OptionalDouble spreadXPx() {
        double mean = mean().xPx();
        return spread(steps.stream()
                .mapToDouble(s -> (s.at().xPx() - mean) * (s.at().xPx() - mean))
                .sum());
    }

    /** Standard deviation up and down the picture, pixels; empty for a single step. */
    public OptionalDouble spreadYPx() {
        double mean = mean().yPx();
        return spread(steps.stream()
                .mapToDouble(s -> (s.at().yPx() - mean) * (s.at().yPx() - mean))
                .sum());
    }

    private OptionalDouble spread(double squares) {
        return steps.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / (steps.size() - 1)));
    }
}
