package org.toeline.bench;

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
import org.toeline.advice.Assessment;
import org.toeline.mark.MarkSheet;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.study.Scenes;

/** One estimate, and everything that follows from a sheet: two views with 20 marks each, rods, ball, post. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class EstimatorBenchmark {

    private final MarkSheet[] sheets = new MarkSheet[40];
    private int next;

    /** Forty scenes in turn, so that no single easy one is measured. */
    public EstimatorBenchmark() {
        for (int i = 0; i < sheets.length; i++) {
            sheets[i] = Scenes.bothViews(500 + i);
        }
    }

    private MarkSheet sheet() {
        next = (next + 1) % sheets.length;
        return sheets[next];
    }

    @Benchmark
    public Posture estimate() {
        return PostureEstimator.estimate(sheet());
    }

    @Benchmark
    public Assessment assess() {
        return Assessment.of(sheet());
    }

    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder()
                        .include(EstimatorBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
