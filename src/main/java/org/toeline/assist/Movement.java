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

    /** When most moves between two times: in a swing, about the strike. */
    public Optional<Amount> most(double fromSeconds, double toSeconds) {
        return amounts.stream()
                .filter(a -> a.seconds() >= fromSeconds && a.seconds() <= toSeconds)
                .max(Comparator.comparingDouble(Amount::amount));
    }
}
