package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.toeline.flight.ComputedFigures;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightBand;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.SetupFigure;

/**
 * One or two setups by their shots: where each lies, and what differs.
 *
 * @param setups     the earlier first
 * @param computed   figures that were computed for all shots of both, since nobody measured them
 * @param comparison from the first to the second; empty when there is one only
 */
record ComparedSetups(List<Setup> setups, Set<ShotFigure> computed, Optional<SetupComparison> comparison) {

    /**
     * One of them.
     *
     * @param measured as they were typed
     * @param middles  where they lie in each figure, computed ones included
     * @param flights  each shot's flight by the model whose figures stand first, where it can be computed
     * @param middle   the flight of the middle launch, by each model; empty when it cannot be computed
     */
    record Setup(
            String name,
            List<Shot> measured,
            List<SetupFigure> middles,
            List<Optional<Flight>> flights,
            List<Flight> middle) {

        Optional<SetupFigure> middle(ShotFigure figure) {
            return middles.stream().filter(m -> m.figure() == figure).findFirst();
        }
    }

    /** Shots under a name. */
    record Named(String name, List<Shot> shots) {}

    static final int MOST_CURVES = 150;

    ComparedSetups {
        setups = List.copyOf(setups);
        computed = Set.copyOf(computed);
    }

    /** Figures are computed for all setups alike: no measured figure is held against a computed one. */
    static ComparedSetups of(List<Named> named, RememberedFlights air) {
        ComputedFigures all = ComputedFigures.of(
                named.stream().flatMap(n -> n.shots.stream()).toList(),
                FlightBand.MODELS.get(0).words(),
                air::first);
        List<Setup> setups = new ArrayList<>();
        List<List<Shot>> figures = new ArrayList<>();
        int from = 0;
        for (Named one : named) {
            List<Shot> filled = all.shots().subList(from, from + one.shots.size());
            from += one.shots.size();
            figures.add(filled);
            List<SetupFigure> middles = SetupFigure.of(filled);
            setups.add(new Setup(one.name, one.shots, middles, curves(one.shots, air), middleFlight(middles, air)));
        }
        return new ComparedSetups(
                setups,
                all.computed(),
                figures.size() < 2
                        ? Optional.empty()
                        : Optional.of(SetupComparison.of(figures.get(0), figures.get(1))));
    }

    /** Of many shots some, from all over them, have a curve: more nobody tells apart. */
    private static List<Optional<Flight>> curves(List<Shot> shots, RememberedFlights air) {
        int step = Math.max(1, shots.size() / MOST_CURVES);
        List<Optional<Flight>> curves = new ArrayList<>();
        for (int i = 0; i < shots.size(); i++) {
            curves.add(i % step == 0 ? shots.get(i).launch().map(air::curve) : Optional.empty());
        }
        return curves;
    }

    private static List<Flight> middleFlight(List<SetupFigure> middles, RememberedFlights air) {
        Map<ShotFigure, Double> launch = middles.stream()
                .collect(Collectors.toMap(
                        SetupFigure::figure, SetupFigure::centre, (a, b) -> a, () -> new EnumMap<>(ShotFigure.class)));
        return new Shot(launch).launch().map(air::curves).orElse(List.of());
    }
}
