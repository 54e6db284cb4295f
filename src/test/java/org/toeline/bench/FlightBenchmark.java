package org.toeline.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.toeline.flight.Air;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Launch;
import org.toeline.flight.SmitsSmith;
import org.toeline.flight.Trajectory;

/** A thousand flights one after the other on one core, with a point every 0.05 s: from wedges to drives, curved. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class FlightBenchmark {

    private final Launch[] launches = new Launch[1000];
    private final Trajectory trajectory = new Trajectory(Air.USUAL.withWind(2, 1), SmitsSmith.WITH_REYNOLDS_TERM);

    /** A thousand different launches, so that no single easy one is measured. */
    public FlightBenchmark() {
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < launches.length; i++) {
            double speed = random.nextDouble(35, 75);
            double loft = 40 - 0.4 * speed + random.nextDouble(-3, 3);
            launches[i] = new Launch(
                    speed,
                    Math.toRadians(loft),
                    random.nextDouble(-0.1, 0.1),
                    FigureUnit.TURNS_PER_MINUTE.toInside(220 * loft),
                    random.nextDouble(-0.3, 0.3));
        }
    }

    @Benchmark
    public double thousandFlights() {
        double carry = 0;
        for (Launch launch : launches) {
            carry += trajectory.fly(launch).carryM();
        }
        return carry;
    }

    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder()
                        .include(FlightBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
