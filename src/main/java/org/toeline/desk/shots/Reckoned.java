package org.toeline.desk.shots;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.toeline.flight.Implausible;
import org.toeline.flight.Plausibility;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.Shot;

/**
 * All that the screen shows of the shots besides what was typed; reckoned off the interface thread.
 *
 * @param shots    those of this lesson, in the order of the rows
 * @param impossible how many of this lesson's shots no flight could give
 * @param aside    how many of them the coach put aside
 * @param setups   with which setups the shots say they were hit, the first of them first
 * @param together what is odd about all of them together
 * @param compared this lesson's shots and, where chosen, another's
 * @param air      remembers the flights
 */
record Reckoned(
        List<FlownShot> shots,
        long impossible,
        long aside,
        List<String> setups,
        Optional<Implausible> together,
        ComparedSetups compared,
        RememberedFlights air) {

    static final Reckoned NOTHING = of(
            new Asked("", List.of()),
            new Against.Nothing(),
            new RememberedFlights(Conditions.USUAL.air()),
            new Watch(0));

    Reckoned {
        shots = List.copyOf(shots);
        setups = List.copyOf(setups);
    }

    /** Shots under a name. */
    record Asked(String name, List<Shot> shots) {}

    /** What the shots of the table are compared with. */
    sealed interface Against {

        /** With nothing. */
        record Nothing() implements Against {}

        /** With another lesson's. */
        record Lesson(Asked shots, Order order) implements Against {}

        /** Those of them that were hit with one setup with those hit with another. */
        record Setups(String first, String second) implements Against {}
    }

    /** Which of two setups comes first: the change is from the first to the second. */
    enum Order {
        OWN_FIRST,
        OTHER_FIRST
    }

    /** @param watch told of each shot that is done; once it is stopped, the rest have no flight */
    static Reckoned of(Asked own, Against against, RememberedFlights air, Watch watch) {
        List<FlownShot> flown = flown(own.shots, air, watch);
        List<Shot> complete =
                own.shots.stream().filter(s -> !s.figures().isEmpty()).toList();
        List<ComparedSetups.Named> named = named(ComparedSetups.Named.ofRows(own.name, own.shots, flown), against, air);
        return new Reckoned(
                flown,
                flown.stream().filter(s -> s.impossible().isPresent()).count(),
                own.shots.stream().filter(s -> !s.aside().isEmpty()).count(),
                own.shots.stream()
                        .map(Shot::setup)
                        .filter(s -> !s.isEmpty())
                        .distinct()
                        .toList(),
                new Plausibility(air).checkTogether(complete),
                ComparedSetups.of(named, air),
                air);
    }

    private static List<ComparedSetups.Named> named(ComparedSetups.Named own, Against against, RememberedFlights air) {
        if (against instanceof Against.Setups setups) {
            return List.of(own.with(setups.first), own.with(setups.second));
        }
        if (against instanceof Against.Lesson lesson) {
            Asked other = lesson.shots;
            ComparedSetups.Named theirs =
                    ComparedSetups.Named.ofOther(other.name, other.shots, flown(other.shots, air, new Watch(0)));
            return lesson.order == Order.OWN_FIRST ? List.of(own, theirs) : List.of(theirs, own);
        }
        return List.of(own);
    }

    private static List<FlownShot> flown(List<Shot> shots, RememberedFlights air, Watch watch) {
        return IntStream.range(0, shots.size())
                .parallel()
                .mapToObj(i -> watch.stopped() ? FlownShot.NONE : watch.done(FlownShot.of(shots.get(i), air)))
                .toList();
    }

    /** How many shots were hit with neither of two setups of the lesson that are compared. */
    int withNeither() {
        return compared.order().isEmpty()
                ? 0
                : shots.size()
                        - compared.setups().stream()
                                .mapToInt(s -> s.measured().size())
                                .sum();
    }

    FlownShot shot(int row) {
        return row >= 0 && row < shots.size() ? shots.get(row) : FlownShot.NONE;
    }
}
