package org.toeline.desk.shots;

import java.util.List;
import java.util.Optional;
import org.toeline.flight.FlightBand;
import org.toeline.flight.Implausible;
import org.toeline.flight.Plausibility;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.RoughRun;
import org.toeline.flight.Shot;

/**
 * What follows from one shot.
 *
 * @param flights by each model; empty when speed, launch angle or spin is missing, or they make no flight
 * @param run     bounce and roll, rough
 * @param flags   what no flight could give
 */
record FlownShot(Optional<FlightBand.Figures> flights, Optional<RoughRun> run, List<Implausible> flags) {

    static final FlownShot NONE = new FlownShot(Optional.empty(), Optional.empty(), List.of());

    FlownShot {
        flags = List.copyOf(flags);
    }

    static FlownShot of(Shot shot, RememberedFlights air) {
        Optional<FlightBand.Figures> flights = shot.launch().map(air::of);
        return new FlownShot(
                flights, flights.map(f -> RoughRun.after(f.first())), new Plausibility(air::of).check(shot));
    }
}
