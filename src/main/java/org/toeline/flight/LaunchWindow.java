package org.toeline.flight;

import java.util.ArrayList;
import java.util.List;

/**
 * From which launches a ball of one speed carries nearly as far as it can, by each model of flight: what the models agree on,
 * and where they do not. It is about carry alone, and about what the models know of balls.
 *
 * @param models by each model
 */
public record LaunchWindow(List<OfModel> models) {

    /** A carry so near to the longest is as good. */
    private static final double NEARLY = 0.98;

    private static final int LEAST_DEG = 6;
    private static final int MOST_DEG = 30;
    private static final int STEP_DEG = 2;
    /** Less spin than this no ball of a fast club keeps; the models were published for more. */
    private static final int LEAST_RPM = 1500;

    private static final int MOST_RPM = 6000;
    private static final int STEP_RPM = 300;

    /**
     * By one model.
     *
     * @param bestDeg  launch angle of the longest carry, to two degrees
     * @param bestRpm  its spin, to 300 turns a minute
     * @param carryM   that carry
     * @param leastDeg from here
     * @param mostDeg  to here a carry within 2 % of it is possible, with some spin
     * @param leastRpm from here
     * @param mostRpm  to here, from some angle
     */
    public record OfModel(
            String model,
            double bestDeg,
            double bestRpm,
            double carryM,
            double leastDeg,
            double mostDeg,
            double leastRpm,
            double mostRpm) {}

    public LaunchWindow {
        models = List.copyOf(models);
    }

    public static LaunchWindow of(double speedMps, Air air) {
        return new LaunchWindow(FlightBand.MODELS.parallelStream()
                .map(m -> of(speedMps, new Trajectory(air, m)))
                .toList());
    }

    private record Flown(double deg, double rpm, double carryM) {}

    private static OfModel of(double speedMps, Trajectory trajectory) {
        List<Flown> all = new ArrayList<>();
        for (int deg = LEAST_DEG; deg <= MOST_DEG; deg += STEP_DEG) {
            for (int rpm = LEAST_RPM; rpm <= MOST_RPM; rpm += STEP_RPM) {
                all.add(new Flown(
                        deg,
                        rpm,
                        trajectory.land(Launch.straight(speedMps, deg, rpm)).carryM()));
            }
        }
        Flown best = all.stream()
                .max(java.util.Comparator.comparingDouble(Flown::carryM))
                .orElseThrow();
        List<Flown> near =
                all.stream().filter(f -> f.carryM >= NEARLY * best.carryM).toList();
        return new OfModel(
                trajectory.aerodynamics().words(),
                best.deg,
                best.rpm,
                best.carryM,
                near.stream().mapToDouble(Flown::deg).min().orElseThrow(),
                near.stream().mapToDouble(Flown::deg).max().orElseThrow(),
                near.stream().mapToDouble(Flown::rpm).min().orElseThrow(),
                near.stream().mapToDouble(Flown::rpm).max().orElseThrow());
    }
}
