package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.flight.Implausible;
import org.toeline.flight.Plausibility;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.Shot;

/**
 * All that follows from the shots on the screen; a pure function of them and the air.
 *
 * @param shots    those of this lesson, in the order of the rows
 * @param together what is odd about all of them together
 * @param compared this lesson's shots and, where chosen, another's
 * @param air      remembers the flights
 */
record Reckoned(List<FlownShot> shots, Optional<Implausible> together, ComparedSetups compared, RememberedFlights air) {

    Reckoned {
        shots = List.copyOf(shots);
    }

    /**
     * @param own   this lesson's shots
     * @param other those of the lesson to compare with
     * @param order which of the two comes first
     */
    static Reckoned of(
            ComparedSetups.Named own, Optional<ComparedSetups.Named> other, Order order, RememberedFlights air) {
        List<FlownShot> flown =
                own.shots().parallelStream().map(s -> FlownShot.of(s, air)).toList();
        List<Shot> complete =
                own.shots().stream().filter(s -> !s.figures().isEmpty()).toList();
        List<ComparedSetups.Named> named = new ArrayList<>(List.of(own));
        other.ifPresent(o -> named.add(order == Order.OWN_FIRST ? 1 : 0, o));
        return new Reckoned(flown, new Plausibility(air).checkTogether(complete), ComparedSetups.of(named, air), air);
    }

    FlownShot shot(int row) {
        return row >= 0 && row < shots.size() ? shots.get(row) : FlownShot.NONE;
    }

    /** Which of two setups comes first. */
    enum Order {
        OWN_FIRST,
        OTHER_FIRST
    }
}
