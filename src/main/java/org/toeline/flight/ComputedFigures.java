package org.toeline.flight;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Shots with the figures of flight that nobody measured, computed from their launches by one model. A figure is computed
 * only if no shot of the table has it measured: measured and computed figures of one kind are never mixed.
 *
 * @param shots    in the order given
 * @param computed which figures were computed
 * @param model    by which model; to be named beside them
 */
public record ComputedFigures(List<Shot> shots, Set<ShotFigure> computed, String model) {

    private static final Set<ShotFigure> OF_FLIGHT =
            Set.of(ShotFigure.CARRY, ShotFigure.APEX, ShotFigure.SIDE, ShotFigure.DESCENT_ANGLE, ShotFigure.HANG_TIME);

    public ComputedFigures {
        shots = List.copyOf(shots);
        computed = Set.copyOf(computed);
    }

    public static ComputedFigures of(List<Shot> shots, Trajectory trajectory) {
        return of(shots, trajectory.aerodynamics().words(), trajectory::fly);
    }

    /**
     * @param model the name of the model by which {@code fly} flies
     * @param fly   the flight of a launch
     */
    public static ComputedFigures of(List<Shot> shots, String model, Function<Launch, Flight> fly) {
        Set<ShotFigure> wanted = new TreeSet<>(OF_FLIGHT);
        shots.forEach(s -> wanted.removeAll(s.figures().keySet()));
        List<Shot> filled = shots.stream().map(s -> filled(s, fly, wanted)).toList();
        Set<ShotFigure> computed = new TreeSet<>(wanted);
        computed.removeIf(f -> filled.stream().allMatch(s -> s.figure(f).isEmpty()));
        return new ComputedFigures(filled, computed, model);
    }

    private static Shot filled(Shot shot, Function<Launch, Flight> fly, Set<ShotFigure> wanted) {
        Optional<Launch> launch = wanted.isEmpty() ? Optional.empty() : shot.launch();
        if (launch.isEmpty()) {
            return shot;
        }
        Map<ShotFigure, Double> flown = figures(fly.apply(launch.get()));
        Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
        figures.putAll(shot.figures());
        wanted.stream()
                .filter(f -> f != ShotFigure.SIDE || shot.tellsSide())
                .forEach(f -> figures.put(f, flown.get(f)));
        return shot.withFigures(figures);
    }

    private static Map<ShotFigure, Double> figures(Flight flight) {
        return Map.of(
                ShotFigure.CARRY,
                flight.carryM(),
                ShotFigure.APEX,
                flight.apexM(),
                ShotFigure.SIDE,
                flight.sideM(),
                ShotFigure.DESCENT_ANGLE,
                flight.descentRad(),
                ShotFigure.HANG_TIME,
                flight.hangTimeS());
    }
}
