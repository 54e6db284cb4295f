package org.toeline.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import org.toeline.video.Clip;

/**
 * A command: times opening, stepping and jumping in a clip, pictures included, and walks it 10 000 steps watching the
 * process's memory. Argument: a clip, best of 10 s or more.
 */
public final class ClipBenchmark {

    private ClipBenchmark() {
    }

    public static void main(String[] args) throws Exception {
        Path file = Path.of(args[0]);
        Clip.open(file).close();
        long begun = System.nanoTime();
        byte[] bytes = Files.readAllBytes(file);
        double reading = (System.nanoTime() - begun) / 1e6;
        begun = System.nanoTime();
        try (Clip clip = Clip.open(file)) {
            System.out.printf(Locale.ROOT, "%d bytes, read in %.1f ms; listed in %.1f ms; %s%n", bytes.length, reading,
                    (System.nanoTime() - begun) / 1e6, clip.info());
            int n = Math.min(clip.frameCount(), 400);
            begun = System.nanoTime();
            double[] forwards = new double[n];
            for (int i = 0; i < n; i++) {
                forwards[i] = timed(clip, i);
            }
            System.out.printf(Locale.ROOT, "sequential, with pictures: %.0f frames a second%n",
                    n / ((System.nanoTime() - begun) / 1e9));
            print("step forwards", forwards);
            double[] kept = new double[60];
            for (int i = 0; i < kept.length; i++) {
                kept[i] = timed(clip, n - 2 - i / 2 - i % 2);
            }
            print("step within what is kept", kept);
            double[] backwards = new double[n];
            for (int i = 0; i < n; i++) {
                backwards[i] = timed(clip, n - 1 - i);
            }
            print("step backwards, all the way", backwards);
            soak(clip);
        }
    }

    private static void soak(Clip clip) throws Exception {
        SplittableRandom random = new SplittableRandom(4);
        int at = clip.frameCount() / 2;
        long settled = 0;
        for (int i = 0; i < 10_000; i++) {
            at = Math.max(0, Math.min(clip.frameCount() - 1, at + (random.nextInt(40) == 0
                    ? random.nextInt(-200, 200) : random.nextBoolean() ? 1 : -1)));
            clip.frame(at);
            if (i == 2000) {
                settled = residentKb();
            }
        }
        System.out.printf(Locale.ROOT, "10 000 steps: resident memory %d MB after 2000, %d MB at the end; %d open files%n",
                settled / 1024, residentKb() / 1024, openFiles());
    }

    private static long residentKb() throws Exception {
        Path status = Path.of("/proc/self/status");
        return Files.exists(status) ? Files.readAllLines(status).stream().filter(l -> l.startsWith("VmRSS"))
                .mapToLong(l -> Long.parseLong(l.replaceAll("\\D", ""))).findFirst().orElse(0) : 0;
    }

    private static long openFiles() throws Exception {
        try (var files = Files.list(Path.of("/proc/self/fd"))) {
            return files.count();
        }
    }

    private static double timed(Clip clip, int frame) throws Exception {
        long begun = System.nanoTime();
        clip.frame(frame);
        return (System.nanoTime() - begun) / 1e6;
    }

    private static void print(String what, double[] millis) {
        double[] sorted = millis.clone();
        Arrays.sort(sorted);
        System.out.printf(Locale.ROOT, "%s: median %.1f ms, 99 %% %.1f ms, longest %.1f ms%n", what,
                sorted[sorted.length / 2], sorted[sorted.length * 99 / 100], sorted[sorted.length - 1]);
    }
}
