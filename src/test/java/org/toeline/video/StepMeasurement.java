package org.toeline.video;

import static org.toeline.video.ClipMeasurement.say;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.locks.LockSupport;

/** Times stepping and jumping in one clip: from asking for a frame to having its pixels. */
final class StepMeasurement {

    private static final int JUMPS = 30;
    /** How fast a person holding a key steps. */
    private static final long PACE_NANOS = 33_000_000;
    /** How long a person looks at what was jumped to before stepping on, milliseconds. */
    private static final long[] LOOKS = {0, 300, 600, 1000};

    private static final int CROSSINGS = 5;

    private final Path file;
    private final SplittableRandom random;

    StepMeasurement(Path file, SplittableRandom random) {
        this.file = file;
        this.random = random;
    }

    void all() throws Exception {
        try (Clip clip = Clip.open(file)) {
            say("step within what is kept, as fast as it goes: %s", summary(kept(clip, 0)));
            say("step within what is kept, 30 a second: %s", summary(kept(clip, PACE_NANOS)));
            double[] jumps = new double[JUMPS];
            for (int i = 0; i < JUMPS; i++) {
                jumps[i] = timed(clip, random.nextInt(clip.frameCount()));
            }
            say("jump: %s", summary(jumps));
            say("step back over the whole clip, as fast as it goes: %s", summary(back(clip, 0)));
            say("step back over the whole clip, 30 a second: %s", summary(back(clip, PACE_NANOS)));
        }
        for (long look : LOOKS) {
            across(look);
        }
    }

    /** To and fro over nine frames that are decoded. */
    private static double[] kept(Clip clip, long paceNanos) throws Exception {
        int middle = clip.frameCount() / 2;
        for (int i = middle - 10; i < middle + 10; i++) {
            clip.frame(i);
        }
        int[] path = new int[400];
        for (int i = 0; i < path.length; i++) {
            path[i] = middle - 4 + Math.abs(i % 16 - 8);
        }
        return walked(clip, path, paceNanos);
    }

    private static double[] back(Clip clip, long paceNanos) throws Exception {
        int n = Math.min(clip.frameCount(), 600);
        int[] path = new int[n];
        for (int i = 0; i < n; i++) {
            path[i] = n - 1 - i;
        }
        return walked(clip, path, paceNanos);
    }

    private static double[] walked(Clip clip, int[] path, long paceNanos) throws Exception {
        double[] all = new double[path.length];
        long next = System.nanoTime();
        for (int i = 0; i < path.length; i++) {
            all[i] = timed(clip, path[i]);
            next += paceNanos;
            waitUntil(next);
            next = Math.max(next, System.nanoTime());
        }
        return all;
    }

    private static void waitUntil(long nanos) {
        while (System.nanoTime() < nanos) {
            LockSupport.parkNanos(nanos - System.nanoTime());
        }
    }

    /** A jump to the last key frame, a look at it, a step back, in a clip just opened. */
    private void across(long lookMillis) throws Exception {
        double[] steps = new double[CROSSINGS];
        for (int i = 0; i < steps.length; i++) {
            try (Clip fresh = Clip.open(file)) {
                int key = fresh.keyFrame(fresh.frameCount() - 1);
                if (key == 0) {
                    return;
                }
                fresh.frame(key);
                waitUntil(System.nanoTime() + lookMillis * 1_000_000);
                steps[i] = timed(fresh, key - 1);
            }
        }
        say("jump to a key frame, look at it for %d ms, one step back: %s", lookMillis, summary(steps));
    }

    static double timed(Clip clip, int frame) throws Exception {
        return ClipMeasurement.millis(() -> clip.frame(frame));
    }

    static String summary(double[] millis) {
        double[] sorted = millis.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT,
                "least %.1f ms, median %.1f ms, 99 %% %.1f ms, longest %.1f ms",
                sorted[0],
                sorted[sorted.length / 2],
                sorted[sorted.length * 99 / 100],
                sorted[sorted.length - 1]);
    }
}
