package org.toeline.desk.shots;

import java.util.List;
import java.util.Optional;
import org.toeline.flight.Flight;
import org.toeline.flight.Implausible;
import org.toeline.flight.Launch;
import org.toeline.flight.Plausibility;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.RoughRun;
import org.toeline.flight.Shot;

/**
 * What follows from one shot.
 *
 * @param launch empty when speed, launch angle or spin is missing, or they make no flight
 * @param first  its flight by the model whose figures stand first, without the curve
 * @param flags  what no flight could give
 */
record FlownShot(Optional<Launch> launch, Optional<Flight> first, List<Implausible> flags) {

    static final FlownShot NONE = new FlownShot(Optional.empty(), Optional.empty(), List.of());

    FlownShot {
        flags = List.copyOf(flags);
    }

    static FlownShot of(Shot shot, RememberedFlights air) {
        Optional<Launch> launch = shot.launch();
        return new FlownShot(launch, launch.map(air::first), new Plausibility(air).check(shot));
    }

    /** Bounce and roll, rough. */
    Optional<RoughRun> run() {
        return first.map(RoughRun::after);
    }

    /** Whether no flight could give its figures: such a shot does not count. */
    Optional<String> impossible() {
        return flags.stream()
                .filter(f -> f.grade() == Implausible.Grade.IMPOSSIBLE)
                .map(Implausible::reason)
                .findFirst();
    }
}
