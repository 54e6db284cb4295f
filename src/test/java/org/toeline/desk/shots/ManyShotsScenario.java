package org.toeline.desk.shots;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import org.toeline.desk.OpenDesk;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * A command, not a test: puts so many shots of all kinds (default 100,000, no two alike) into the sample lesson, scrolls the
 * table while their flights are computed, and prints the processor time to all flights and the longest time that the interface
 * was blocked: a task that would run at once waits for its turn on the interface thread, again and again.
 */
public final class ManyShotsScenario {

    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final int shots;
    private final CountDownLatch finished = new CountDownLatch(1);
    private ShotsScreen screen;
    private OpenDesk desk;
    private boolean given;
    private long cpu;
    private long begun;
    private volatile boolean watching;
    private volatile long longestNanos;
    private volatile long longestWorkNanos;
    private long workedNanos;
    private final Map<Long, Long> threads = new HashMap<>();
    private int row;

    private ManyShotsScenario(int shots) {
        this.shots = shots;
    }

    public static void main(String[] args) throws Exception {
        ManyShotsScenario scenario = new ManyShotsScenario(args.length > 0 ? Integer.parseInt(args[0]) : 100_000);
        Path folder = Files.createTempDirectory("many");
        List<TypedShot> more = ShotsModel.rowsOf(more(scenario.shots));
        Platform.startup(() -> scenario.open(folder, more));
        Thread watcher = new Thread(scenario::watch);
        watcher.setDaemon(true);
        watcher.start();
        System.out.println(scenario.finished.await(400, TimeUnit.SECONDS) ? "" : "not finished");
        System.exit(0);
    }

    private void watch() {
        while (true) {
            long asked = System.nanoTime();
            CountDownLatch turn = new CountDownLatch(1);
            Platform.runLater(() -> {
                worked();
                turn.countDown();
            });
            try {
                turn.await();
                if (watching) {
                    longestNanos = Math.max(longestNanos, System.nanoTime() - asked);
                }
                Thread.sleep(2);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    /** On the interface thread: what it worked itself since its last turn, whatever others do on the machine. */
    private void worked() {
        long now = THREADS.getCurrentThreadCpuTime();
        if (watching) {
            longestWorkNanos = Math.max(longestWorkNanos, now - workedNanos);
        }
        workedNanos = now;
    }

    private void threads(boolean print) {
        Map<String, Double> seconds = new TreeMap<>();
        for (long id : THREADS.getAllThreadIds()) {
            long cpuNanos = THREADS.getThreadCpuTime(id);
            ThreadInfo info = THREADS.getThreadInfo(id);
            if (print && info != null) {
                seconds.merge(
                        info.getThreadName().replaceAll("[0-9]+$", ""),
                        (cpuNanos - threads.getOrDefault(id, 0L)) / 1e9,
                        Double::sum);
            }
            threads.put(id, cpuNanos);
        }
        seconds.forEach((name, s) -> {
            if (s > 0.2) {
                System.out.printf(Locale.ROOT, "    %s: %.1f s%n", name, s);
            }
        });
    }

    private static List<Shot> more(int count) {
        SplittableRandom random = new SplittableRandom(4);
        List<Shot> more = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            more.add(new Shot(Map.of(
                    ShotFigure.BALL_SPEED, random.nextDouble(30, 78),
                    ShotFigure.LAUNCH_ANGLE, Math.toRadians(random.nextDouble(5, 32)),
                    ShotFigure.LAUNCH_DIRECTION, Math.toRadians(random.nextDouble(-6, 6)),
                    ShotFigure.SPIN_RATE, random.nextDouble(200, 1000),
                    ShotFigure.SPIN_AXIS, Math.toRadians(random.nextDouble(-20, 20)))));
        }
        return more;
    }

    private void open(Path folder, List<TypedShot> more) {
        desk = new OpenDesk(folder);
        screen = desk.shots();
        desk.sample();
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                pulse(more);
            }
        }.start();
    }

    private void pulse(List<TypedShot> more) {
        if (!given
                && screen.model().rows().size() == 10
                && screen.reckoned().compared().setups().size() == 2) {
            given = true;
            screen = desk.shots();
            cpu = PROCESS.getProcessCpuTime();
            begun = System.nanoTime();
            threads(false);
            workedNanos = THREADS.getCurrentThreadCpuTime();
            watching = true;
            long at = System.nanoTime();
            long own = THREADS.getCurrentThreadCpuTime();
            screen.model().add(more);
            own = THREADS.getCurrentThreadCpuTime() - own;
            System.out.printf(
                    Locale.ROOT,
                    "taking them in: %.0f ms on the interface thread, %.0f ms of them its own work%n",
                    (System.nanoTime() - at) / 1e6,
                    own / 1e6);
        } else if (given && screen.reckoned().shots().size() > shots) {
            System.out.printf(
                    Locale.ROOT,
                    "%d shots: processor time to all flights %.1f s, %.1f s on the clock; the interface was blocked for"
                            + " %.0f ms at most, %.0f ms by its own work%n",
                    shots,
                    (PROCESS.getProcessCpuTime() - cpu) / 1e9,
                    (System.nanoTime() - begun) / 1e9,
                    longestNanos / 1e6,
                    longestWorkNanos / 1e6);
            threads(true);
            finished.countDown();
        } else if (given) {
            row = (row + 137) % shots;
            ((ShotTable) screen.root().lookup("#shots-table")).scrollTo(row);
        }
    }
}
