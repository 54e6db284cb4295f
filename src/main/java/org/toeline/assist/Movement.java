package org.toeline.assist;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a clip moves. All times in the clip's presentation time, seconds.
 *
 * @param amounts how much of the picture moves, over time
 * @param stills  where nothing much does
 * @param moments the moments of address among them
 */
public record Movement(List<Amount> amounts, List<Still> stills, List<StillSpan> moments) {

    /** Nobody stands quite still: further off the body is another one. */
    private static final double MOST_BESIDE_S = 0.5;

    /** How much moves at a time: hundred times the mean difference of grey levels, 0 and more. */
    public record Amount(double seconds, double amount) {}

    /** A stretch of standing still. */
    public record Still(double fromSeconds, double toSeconds) {}

    public Movement {
        amounts = List.copyOf(amounts);
        stills = List.copyOf(stills);
        moments = List.copyOf(moments);
    }

    /** The clearest moment of address; the first of equals. */
    public Optional<StillSpan> address() {
        return moments.stream().max(AddressFinder.CLEAREST);
    }

    /**
     * Other times at which the player stands as at one: half way to either end of the moment of address that it lies in, half a
     * second of real time away at most. None where it lies in no such moment.
     *
     * @param slowedDown how many seconds of the clip a second of real time takes
     */
    public List<Double> besides(double seconds, double slowedDown) {
        double most = MOST_BESIDE_S * slowedDown;
        return moments.stream()
                .filter(m -> m.startSeconds() <= seconds && seconds <= m.endSeconds())
                .findFirst()
                .map(m -> List.of(
                        Math.max(seconds - most, (seconds + m.startSeconds()) / 2),
                        Math.min(seconds + most, (seconds + m.endSeconds()) / 2)))
                .orElse(List.of());
    }

    /** When most moves between two times: in a swing, about the strike. */
    public Optional<Amount> most(double fromSeconds, double toSeconds) {
        return amounts.stream()
                .filter(a -> a.seconds() >= fromSeconds && a.seconds() <= toSeconds)
                .max(Comparator.comparingDouble(Amount::amount));
    }
}
