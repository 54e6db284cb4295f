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
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import org.toeline.desk.Drawing;
import org.toeline.desk.OpenDesk;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * A command, not a test: puts so many shots of all kinds (default 100,000, no two alike) into the sample lesson, scrolls the
 * table while their flights are computed (not where {@code still} is said), and prints the processor time to all flights and the longest time that the interface
 * was blocked: a task that would run at once waits for its turn on the interface thread, again and again.
 */
public final class ManyShotsScenario {

    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** Shorter turns are counted only. */
    private static final double LEAST_MILLIS = 16;

    private static final int MOST_TURNS = 6;
    private static final int FRAMES = 7;
    /** What all flights bring onto the screen is drawn by then. */
    private static final int PULSES_AFTER = 60;

    private static final long QUIET_NANOS = 1_500_000_000;
    private static final double QUIET_SHARE = 0.25;

    private final int shots;
    private final boolean scrolled;
    private final CountDownLatch finished = new CountDownLatch(1);
    private ShotsScreen screen;
    private OpenDesk desk;
    private Consumer<List<TypedShot>> step = this::waitForTheLesson;
    private long looked;
    private long usedBefore;
    private long cpu;
    private long begun;
    private LongTurns turns;
    private Runnable pulseBegins = () -> {};
    private final Map<Long, Long> threads = new HashMap<>();
    private int row;
    private int after;

    private ManyShotsScenario(int shots, boolean scrolled) {
        this.shots = shots;
        this.scrolled = scrolled;
    }

    public static void main(String[] args) throws Exception {
        ManyShotsScenario scenario = new ManyShotsScenario(
                args.length > 0 ? Integer.parseInt(args[0]) : 100_000, args.length < 2 || !args[1].equals("still"));
        Path folder = Files.createTempDirectory("many");
        List<TypedShot> more = ShotsModel.rowsOf(more(scenario.shots));
        Drawing.choose();
        Platform.startup(() -> scenario.open(folder, more));
        System.out.println(scenario.finished.await(400, TimeUnit.SECONDS) ? "" : "not finished");
        System.exit(0);
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
                pulseBegins.run();
                step.accept(more);
            }
        }.start();
    }

    /** The sample lesson and the one to compare with are there; their clips are open and nothing moves any more. */
    private void waitForTheLesson(List<TypedShot> more) {
        if (screen.model().rows().size() == 10
                && screen.reckoned().compared().setups().size() == 2
                && quiet()) {
            turns = new LongTurns(LEAST_MILLIS);
            pulseBegins = turns::turned;
            screen = desk.shots();
            step = this::waitForTheScreen;
        }
    }

    private void waitForTheScreen(List<TypedShot> more) {
        if (quiet()) {
            turns.end();
            System.out.printf(Locale.ROOT, "the screen shown for the first time: %.0f ms%n", turns.longestMillis());
            turns.print(3, FRAMES);
            takeIn(more);
            step = this::scroll;
        }
    }

    /** Whether the whole program does next to nothing, as while somebody chooses a file. */
    private boolean quiet() {
        long now = System.nanoTime();
        if (now - looked < QUIET_NANOS) {
            return false;
        }
        long used = PROCESS.getProcessCpuTime();
        boolean quiet = used - usedBefore < QUIET_SHARE * (now - looked);
        looked = now;
        usedBefore = used;
        return quiet;
    }

    private void takeIn(List<TypedShot> more) {
        cpu = PROCESS.getProcessCpuTime();
        begun = System.nanoTime();
        threads(false);
        turns = new LongTurns(LEAST_MILLIS);
        pulseBegins = turns::turned;
        long own = THREADS.getCurrentThreadCpuTime();
        screen.model().add(more);
        own = THREADS.getCurrentThreadCpuTime() - own;
        System.out.printf(Locale.ROOT, "taking them in: %.0f ms of the interface thread's own work%n", own / 1e6);
    }

    private void scroll(List<TypedShot> more) {
        if (scrolled) {
            row = (row + 137) % shots;
            ((ShotTable) screen.root().lookup("#shots-table")).scrollTo(row);
        }
        if (screen.reckoned().shots().size() > shots && ++after == PULSES_AFTER) {
            turns.end();
            System.out.printf(
                    Locale.ROOT,
                    "%d shots: processor time to all flights %.1f s, %.1f s on the clock; the interface was blocked for"
                            + " %.0f ms at most by its own work, load %.1f%n",
                    shots,
                    (PROCESS.getProcessCpuTime() - cpu) / 1e9,
                    (System.nanoTime() - begun) / 1e9,
                    turns.longestMillis(),
                    PROCESS.getSystemLoadAverage());
            turns.print(MOST_TURNS, FRAMES);
            threads(true);
            finished.countDown();
        }
    }
}
