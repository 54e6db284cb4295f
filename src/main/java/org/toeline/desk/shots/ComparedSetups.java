package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.toeline.flight.ComputedFigures;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightBand;
import org.toeline.flight.LaunchWindow;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.HitOrder;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.SetupFigure;

/**
 * One or two setups by their shots: where each lies, and what differs.
 *
 * @param setups     the earlier first
 * @param computed   figures that were computed for all shots of both, since nobody measured them
 * @param order      in which both were hit, where both are of the same table
 * @param comparison from the first to the second; empty when there is one only
 */
record ComparedSetups(
        List<Setup> setups, Set<ShotFigure> computed, Optional<HitOrder> order, Optional<SetupComparison> comparison) {

    /**
     * One of them.
     *
     * @param measured as they were typed
     * @param rows     for each, in which row of the table it stands; none of another lesson's
     * @param counts   for each, whether it counts
     * @param drawn    the places of those that are drawn: of many some, from all over them
     * @param counted  how many count
     * @param kinds    the setups with which those were hit; an empty one where shots name none
     * @param middles  where they lie in each figure, computed ones included
     * @param flights  each shot's flight by the model whose figures stand first, where it can be computed
     * @param middle   the flight of the middle launch, by each model; empty when it cannot be computed
     * @param window   from where a ball of its middle speed would carry farthest; empty without a speed
     */
    record Setup(
            String name,
            List<Shot> measured,
            List<Integer> rows,
            List<Boolean> counts,
            List<Integer> drawn,
            int counted,
            Set<String> kinds,
            List<SetupFigure> middles,
            List<Optional<Flight>> flights,
            List<Flight> middle,
            Optional<LaunchWindow> window) {

        /** Which of its shots stands in a row of the table. */
        OptionalInt at(int row) {
            int place = Collections.binarySearch(rows, row);
            return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
        }

        /** Whether the middle launch tells where it goes sideways. */
        boolean middleTellsSide() {
            return middle(ShotFigure.LAUNCH_DIRECTION).isPresent()
                    && middle(ShotFigure.SPIN_AXIS).isPresent();
        }

        Optional<SetupFigure> middle(ShotFigure figure) {
            return middles.stream().filter(m -> m.figure() == figure).findFirst();
        }
    }

    /**
     * Shots under a name, in the order they were hit.
     *
     * @param rows   for each, in which row of the table it stands, from above; none of another lesson's
     * @param counts for each, whether it counts: it was not put aside, and a flight could give it
     */
    record Named(String name, List<Shot> shots, List<Integer> rows, List<Boolean> counts) {

        /** Those of another lesson. */
        static Named ofOther(String name, List<Shot> shots, List<FlownShot> flown) {
            return new Named(name, shots, List.of(), counts(shots, flown));
        }

        /** The rows of the table. */
        static Named ofRows(String name, List<Shot> shots, List<FlownShot> flown) {
            return new Named(
                    name, shots, IntStream.range(0, shots.size()).boxed().toList(), counts(shots, flown));
        }

        private static List<Boolean> counts(List<Shot> shots, List<FlownShot> flown) {
            List<Boolean> counts = new ArrayList<>();
            for (int i = 0; i < shots.size(); i++) {
                counts.add(shots.get(i).aside().isEmpty()
                        && flown.get(i).impossible().isEmpty());
            }
            return counts;
        }

        /** Those of them that were hit with a setup. */
        Named with(String setup) {
            List<Integer> some = IntStream.range(0, shots.size())
                    .filter(i -> shots.get(i).setup().equals(setup))
                    .boxed()
                    .toList();
            return new Named(
                    LessonNames.setup(setup),
                    some.stream().map(shots::get).toList(),
                    some.stream().map(rows::get).toList(),
                    some.stream().map(counts::get).toList());
        }

        private List<Integer> countedRows() {
            return IntStream.range(0, rows.size())
                    .filter(counts::get)
                    .mapToObj(rows::get)
                    .toList();
        }

        List<Shot> counted() {
            return IntStream.range(0, shots.size())
                    .filter(counts::get)
                    .mapToObj(shots::get)
                    .toList();
        }
    }

    static final int MOST_CURVES = 150;
    /** More points than this nobody tells apart. */
    private static final int MOST_POINTS = 600;
    /** Slower balls are not hit as far as they go. */
    private static final double SLOW_MPS = 30;

    ComparedSetups {
        setups = List.copyOf(setups);
        computed = Set.copyOf(computed);
    }

    /** Figures are computed for all setups alike: no measured figure is held against a computed one. */
    static ComparedSetups of(List<Named> named, RememberedFlights air) {
        List<List<Shot>> counted = named.stream().map(Named::counted).toList();
        ComputedFigures all = ComputedFigures.of(
                counted.stream().flatMap(List::stream).toList(),
                FlightBand.MODELS.get(0).words(),
                air::first);
        List<Setup> setups = new ArrayList<>();
        List<List<Shot>> figures = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < named.size(); i++) {
            Named one = named.get(i);
            List<Shot> filled = all.shots().subList(from, from + counted.get(i).size());
            from += filled.size();
            figures.add(filled);
            List<SetupFigure> middles = SetupFigure.of(filled);
            setups.add(new Setup(
                    one.name,
                    one.shots,
                    one.rows,
                    one.counts,
                    drawn(one.counts),
                    filled.size(),
                    filled.stream().map(Shot::setup).collect(Collectors.toSet()),
                    middles,
                    curves(one, air),
                    middleFlight(middles, air),
                    window(middles, air)));
        }
        Optional<HitOrder> order = order(named, figures);
        return new ComparedSetups(
                setups,
                all.computed(),
                order,
                figures.size() < 2
                        ? Optional.empty()
                        : Optional.of(order.map(SetupComparison::of)
                                .orElseGet(() -> SetupComparison.of(figures.get(0), figures.get(1)))));
    }

    /** Two setups of the same table were hit in the order of its rows. */
    private static Optional<HitOrder> order(List<Named> named, List<List<Shot>> counted) {
        if (named.size() < 2 || named.stream().anyMatch(n -> n.rows.isEmpty())) {
            return Optional.empty();
        }
        Map<Integer, Boolean> turns = new TreeMap<>();
        named.get(0).countedRows().forEach(row -> turns.put(row, false));
        named.get(1).countedRows().forEach(row -> turns.put(row, true));
        return Optional.of(HitOrder.inTurns(counted.get(0), counted.get(1), List.copyOf(turns.values())));
    }

    private static List<Integer> drawn(List<Boolean> counts) {
        int points = Math.max(1, counts.size() / MOST_POINTS);
        int curves = Math.max(1, counts.size() / MOST_CURVES);
        return IntStream.range(0, counts.size())
                .filter(i -> counts.get(i) && (i % points == 0 || i % curves == 0))
                .boxed()
                .toList();
    }

    /** Of many shots some, from all over them, have a curve: more nobody tells apart. Those put aside have none. */
    private static List<Optional<Flight>> curves(Named named, RememberedFlights air) {
        int step = Math.max(1, named.shots.size() / MOST_CURVES);
        List<Optional<Flight>> curves = new ArrayList<>();
        for (int i = 0; i < named.shots.size(); i++) {
            curves.add(
                    i % step == 0 && named.counts.get(i)
                            ? named.shots.get(i).launch().map(air::curve)
                            : Optional.empty());
        }
        return curves;
    }

    private static Optional<LaunchWindow> window(List<SetupFigure> middles, RememberedFlights air) {
        return middles.stream()
                .filter(m -> m.figure() == ShotFigure.BALL_SPEED && m.centre() > SLOW_MPS)
                .findFirst()
                .map(m -> air.window(m.centre()));
    }

    private static List<Flight> middleFlight(List<SetupFigure> middles, RememberedFlights air) {
        Map<ShotFigure, Double> launch = middles.stream()
                .collect(Collectors.toMap(
                        SetupFigure::figure, SetupFigure::centre, (a, b) -> a, () -> new EnumMap<>(ShotFigure.class)));
        return new Shot(launch).launch().map(air::curves).orElse(List.of());
    }
}
