package org.toeline.flight;

import java.util.Comparator;
import java.util.List;

/** One launch flown by every published model: the band between them says how far models can be trusted. */
public final class FlightBand {

    /**
     * The models, the one whose figures stand first in front: that which is nearest to published means of carry by club, men's
     * and women's together ({@code docs/flight.md}).
     */
    public static final List<Aerodynamics> MODELS = List.of(
            new TestRange(), SmitsSmith.WITH_REYNOLDS_TERM, SmitsSmith.WITHOUT_REYNOLDS_TERM, new BearmanHarvey());

    private final List<Trajectory> trajectories;

    public FlightBand(Air air) {
        trajectories = MODELS.stream().map(model -> new Trajectory(air, model)).toList();
    }

    /**
     * The same launch by each model, in the order of {@link #MODELS}.
     */
    public record Figures(List<Flight> flights) {

        public Figures {
            flights = List.copyOf(flights);
            if (flights.isEmpty()) {
                throw new IllegalArgumentException("no flight; at least one is needed");
            }
        }

        /** By the model whose figures stand first. */
        public Flight first() {
            return flights.get(0);
        }

        public double shortestM() {
            return flights.stream().mapToDouble(Flight::carryM).min().orElseThrow();
        }

        public double longestM() {
            return flights.stream().mapToDouble(Flight::carryM).max().orElseThrow();
        }

        public double lowestM() {
            return flights.stream().mapToDouble(Flight::apexM).min().orElseThrow();
        }

        public double highestM() {
            return flights.stream().mapToDouble(Flight::apexM).max().orElseThrow();
        }

        /** The flight with the longest carry, and so the model to name beside it. */
        public Flight longest() {
            return flights.stream()
                    .max(Comparator.comparingDouble(Flight::carryM))
                    .orElseThrow();
        }
    }

    /** The launch by each model, without the curves. */
    public Figures of(Launch launch) {
        return new Figures(trajectories.stream().map(t -> t.land(launch)).toList());
    }

    /** The launch by each model, with the curves. */
    public List<Flight> curves(Launch launch) {
        return trajectories.stream().map(t -> t.fly(launch)).toList();
    }

    /** The launch by the model whose figures stand first, without the curve. */
    public Flight first(Launch launch) {
        return trajectories.get(0).land(launch);
    }

    /** The launch by the model whose figures stand first, with the curve. */
    public Flight firstCurve(Launch launch) {
        return trajectories.get(0).fly(launch);
    }
}
