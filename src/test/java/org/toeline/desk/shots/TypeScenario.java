package org.toeline.desk.shots;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import org.toeline.desk.OpenDesk;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;

/**
 * A command, not a test: types into one cell of the sample lesson's shots, a figure that was never there before at every key,
 * and measures from the key to the pulse in which the flight, the picture and the comparison with the other lesson that follow
 * from it have been drawn. One key a time. Argument: how many shots the lesson has (10 of the sample, the rest drawn).
 */
public final class TypeScenario {

    private static final int WARM = 60;
    private static final int COUNT = 200;
    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private final int shots;
    private final double[] millis = new double[WARM + COUNT];
    private final CountDownLatch finished = new CountDownLatch(1);
    private OpenDesk desk;
    private ShotsScreen screen;
    private int done = -1;
    private long begun;
    private volatile long cpuNanos;
    private Reckoned before;

    private TypeScenario(int shots) {
        this.shots = shots;
    }

    public static void main(String[] args) throws Exception {
        TypeScenario scenario = new TypeScenario(args.length > 0 ? Integer.parseInt(args[0]) : 10);
        Path folder = Files.createTempDirectory("typing");
        Platform.startup(() -> scenario.open(folder));
        if (!scenario.finished.await(240, TimeUnit.SECONDS)) {
            System.out.println("not finished after four minutes; " + scenario.done + " keys");
        }
        double[] measured = Arrays.copyOfRange(scenario.millis, WARM, WARM + COUNT);
        Arrays.sort(measured);
        System.out.printf(
                Locale.ROOT, "processor time of all threads: %.1f ms a key%n", scenario.cpuNanos / 1e6 / COUNT);
        System.out.printf(
                Locale.ROOT,
                "%d shots, %d keys: median %.1f ms, 90 %% %.1f ms, 99 %% %.1f ms, longest %.1f ms%n",
                scenario.shots,
                COUNT,
                measured[COUNT / 2],
                measured[COUNT * 9 / 10],
                measured[COUNT * 99 / 100],
                measured[COUNT - 1]);
        System.exit(0);
    }

    private void open(Path folder) {
        desk = new OpenDesk(folder);
        screen = desk.shots();
        desk.sample();
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                pulse();
            }
        }.start();
    }

    /** Once a pulse: what was asked for before the last one is drawn by now. */
    private void pulse() {
        if (done < 0) {
            if (screen.model().rows().size() == 10
                    && screen.reckoned().compared().setups().size() == 2) {
                done = 0;
                screen = desk.shots();
                screen.model().add(ShotsModel.rowsOf(more()));
                type();
            }
        } else if (done < millis.length && screen.reckoned() != before) {
            millis[done] = (System.nanoTime() - begun) / 1e6;
            done++;
            if (done == WARM) {
                cpuNanos = -PROCESS.getProcessCpuTime();
            }
            if (done == millis.length) {
                cpuNanos += PROCESS.getProcessCpuTime();
                finished.countDown();
            } else {
                type();
            }
        }
    }

    private List<Shot> more() {
        SplittableRandom random = new SplittableRandom(3);
        Shot first = screen.model().shots().get(0);
        List<Shot> more = new ArrayList<>();
        for (int i = 10; i < shots; i++) {
            more.add(first.with(ShotFigure.BALL_SPEED, random.nextDouble(62, 68)));
        }
        return more;
    }

    private void type() {
        before = screen.reckoned();
        begun = System.nanoTime();
        screen.model().typing(2, Meaning.BALL_SPEED, String.format(Locale.ROOT, "%.2f", 60 + 0.02 * done));
    }
}
