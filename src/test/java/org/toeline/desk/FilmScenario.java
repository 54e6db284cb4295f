package org.toeline.desk;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import org.bytedeco.javacpp.Pointer;
import org.toeline.desk.film.Reel;
import org.toeline.desk.film.Span;
import org.toeline.desk.film.Tie;
import org.toeline.desk.sheet.Sheet;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.video.Clip;

/**
 * Measures playing two clips in step and dragging along one, on the real desk: {@code FilmScenario FACE-ON DOWN-THE-LINE SECONDS}.
 * Needs a screen, which may be a virtual one.
 */
public final class FilmScenario {

    private static final int DRAGS = 100;

    private static final int STEPS_BACK = 10;

    private final Sheet sheet;
    private int pulses;
    private int changes;
    private final List<Long> changedAt = new ArrayList<>();
    private int lastFrame = -1;
    private double mostDriftS;

    private FilmScenario(Sheet sheet) {
        this.sheet = sheet;
    }

    public static void main(String[] args) throws Exception {
        Platform.startup(() -> {});
        Path folder = Files.createTempDirectory("film");
        Sheet sheet = onScreen(() -> new OpenDesk(folder).sheet());
        new FilmScenario(sheet).run(Path.of(args[0]), Path.of(args[1]), Double.parseDouble(args[2]));
        System.exit(0);
    }

    private static <T> T onScreen(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }

    private static void until(Callable<Boolean> so) throws Exception {
        while (!onScreen(so)) {
            Thread.sleep(2);
        }
    }

    private Optional<Reel> reel(View view) {
        return sheet.clips().reel(view);
    }

    private void run(Path faceOn, Path downTheLine, double seconds) throws Exception {
        long begun = System.nanoTime();
        onScreen(() -> {
            sheet.model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
            sheet.welcomed();
            sheet.clips().choose(View.FACE_ON, faceOn.toAbsolutePath());
            sheet.clips().choose(View.DOWN_THE_LINE, downTheLine.toAbsolutePath());
            return true;
        });
        until(() -> reel(View.FACE_ON).filter(r -> r.film().ready() > 30).isPresent()
                && reel(View.DOWN_THE_LINE).filter(r -> r.film().ready() > 30).isPresent());
        say("opening both until they can be played: %.2f s", since(begun));
        until(() -> reel(View.FACE_ON).orElseThrow().film().ended()
                && reel(View.DOWN_THE_LINE).orElseThrow().film().ended());
        say(
                "until all small pictures are made: %.2f s, %.1f and %.1f MB",
                since(begun),
                reel(View.FACE_ON).orElseThrow().film().bytes() / 1e6,
                reel(View.DOWN_THE_LINE).orElseThrow().film().bytes() / 1e6);
        until(() -> sheet.clips().lines().getChildrenUnmodifiable().isEmpty()
                && sheet.clips().shown(View.FACE_ON).isPresent());
        say("the process holds %d MB", Pointer.physicalBytes() >> 20);
        play(seconds);
        drag();
        back();
    }

    private void play(double seconds) throws Exception {
        double rate = reel(View.FACE_ON).orElseThrow().clip().info().rate();
        AnimationTimer counting = onScreen(() -> new AnimationTimer() {
            @Override
            public void handle(long now) {
                pulse();
            }
        });
        onScreen(() -> {
            sheet.films().tie(Optional.of(new Tie(0.5, 0.6, 0.01, Tie.By.HAND)));
            sheet.films().toggleTogether();
            sheet.films()
                    .repeat(
                            View.FACE_ON,
                            Optional.of(new Span(
                                    0.5,
                                    reel(View.FACE_ON)
                                                    .orElseThrow()
                                                    .clip()
                                                    .info()
                                                    .durationSeconds()
                                            - 0.5)));
            sheet.films().seek(0.5);
            sheet.films().player().toggle();
            counting.start();
            return true;
        });
        long cpu = cpuNanos();
        long begun = System.nanoTime();
        Thread.sleep((long) (1000 * seconds));
        double lasted = since(begun);
        double cores = (cpuNanos() - cpu) / 1e9 / lasted;
        onScreen(() -> {
            counting.stop();
            sheet.films().player().stop();
            return true;
        });
        say(
                "two clips in step for %.0f s: %.1f pulses and %.1f new frames a second of %.0f, %.2f cores, farthest apart %.1f ms",
                lasted, pulses / lasted, changes / lasted, Math.min(60, rate), cores, 1000 * mostDriftS);
        say("in time: %.1f %% at 60 a second, %.1f %% at 30", 100 * inTime(lasted, 60), 100 * inTime(lasted, 30));
    }

    /** The share of the equal parts of time, so many a second, in which there was a frame not shown before. */
    private double inTime(double lasted, double perSecond) {
        long first = changedAt.get(0);
        long parts = changedAt.stream()
                .map(at -> (long) Math.floor((at - first) / 1e9 * perSecond))
                .distinct()
                .count();
        return Math.min(1, parts / (lasted * perSecond));
    }

    private void pulse() {
        Reel one = reel(View.FACE_ON).orElseThrow();
        Reel other = reel(View.DOWN_THE_LINE).orElseThrow();
        pulses++;
        if (one.at() != lastFrame) {
            lastFrame = one.at();
            changes++;
            changedAt.add(System.nanoTime());
        }
        double apart = (one.clip().seconds(one.at()) - 0.5) - (other.clip().seconds(other.at()) - 0.6);
        mostDriftS = Math.max(mostDriftS, Math.abs(apart));
    }

    private void drag() throws Exception {
        onScreen(() -> {
            if (sheet.films().together()) {
                sheet.films().toggleTogether();
            }
            return true;
        });
        Random lot = new Random(3);
        double length = reel(View.FACE_ON).orElseThrow().clip().info().durationSeconds();
        Waits waits = new Waits(DRAGS);
        for (int i = 0; i < DRAGS; i++) {
            double to = length * lot.nextDouble();
            waits.until(() -> sheet.films().scrub(View.FACE_ON, to));
        }
        waits.say("dragging");
    }

    /** How long it takes from a gesture to the pulse that has some picture, and to the exact frame. */
    private final class Waits {

        private final double[] some;
        private final double[] exact;
        private int done;

        Waits(int gestures) {
            some = new double[gestures];
            exact = new double[gestures];
        }

        void until(Runnable gesture) throws Exception {
            long begun = System.nanoTime();
            CountDownLatch laidOut = new CountDownLatch(1);
            onScreen(() -> {
                gesture.run();
                Scene scene = sheet.root().getScene();
                scene.addPostLayoutPulseListener(new Runnable() {
                    @Override
                    public void run() {
                        scene.removePostLayoutPulseListener(this);
                        laidOut.countDown();
                    }
                });
                Platform.requestNextPulse();
                return true;
            });
            laidOut.await();
            some[done] = since(begun);
            FilmScenario.until(() -> sheet.clips().shown(View.FACE_ON).isPresent());
            exact[done++] = since(begun);
        }

        void say(String what) {
            Arrays.sort(some);
            Arrays.sort(exact);
            FilmScenario.say(
                    what
                            + ": the pulse with some picture after %.0f ms at the median, %.0f at the 99th percentile, %.0f at"
                            + " most; the exact frame after %.0f, %.0f and %.0f",
                    1000 * some[done / 2],
                    1000 * some[ninetyNinth()],
                    1000 * some[done - 1],
                    1000 * exact[done / 2],
                    1000 * exact[ninetyNinth()],
                    1000 * exact[done - 1]);
        }

        private int ninetyNinth() {
            return (int) Math.ceil(0.99 * done) - 1;
        }
    }

    /** From a key frame to the frame before it, which needs a whole group: some picture, and the exact one. */
    private void back() throws Exception {
        Clip clip = onScreen(() -> reel(View.FACE_ON).orElseThrow().clip());
        Waits waits = new Waits(STEPS_BACK);
        for (int i = 0; i < STEPS_BACK; i++) {
            int at = clip.keyFrame(clip.indexAt(clip.info().durationSeconds() * (i + 2) / (STEPS_BACK + 2)));
            onScreen(() -> {
                sheet.clips().seek(View.FACE_ON, clip.seconds(at));
                return true;
            });
            until(() -> sheet.clips().shown(View.FACE_ON).isPresent());
            waits.until(() -> sheet.clips().step(View.FACE_ON, -1));
        }
        waits.say("back over a key frame");
    }

    private static long cpuNanos() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static double since(long begun) {
        return (System.nanoTime() - begun) / 1e9;
    }

    private static void say(String words, Object... values) {
        System.out.println(String.format(Locale.ROOT, words, values));
    }
}
