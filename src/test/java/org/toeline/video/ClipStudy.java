package org.toeline.video;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/**
 * A command. For a folder of clips: what each is, and whether stepping forwards, backwards and jumping about show the
 * same pixels at the same time, every frame. For a clip: how long it all takes, beside the {@code ffmpeg} program and a
 * naive grabber. Arguments: folders and clips.
 */
public final class ClipStudy {

    private ClipStudy() {}

    public static void main(String[] args) throws Exception {
        for (String arg : args) {
            if (Files.isDirectory(Path.of(arg))) {
                checkAll(Path.of(arg));
            } else {
                ClipMeasurement.of(Path.of(arg));
            }
        }
    }

    private static void checkAll(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                if (Files.isRegularFile(file)) {
                    System.out.println(file.getFileName() + ": " + describe(file));
                }
            }
        }
    }

    private static String describe(Path file) {
        long begun = System.nanoTime();
        try (Clip clip = Clip.open(file)) {
            String info = clip.info().toString();
            return info + " opened in " + (System.nanoTime() - begun) / 1_000_000 + " ms, " + check(clip);
        } catch (ClipException e) {
            return "refused: " + e.getMessage();
        }
    }

    private static String check(Clip clip) {
        int n = Math.min(clip.frameCount(), 300);
        int[] seen = new int[n];
        int lost = 0;
        int wrong = 0;
        for (int i = 0; i < n; i++) {
            seen[i] = hash(clip, i);
            lost += seen[i] == 0 ? 1 : 0;
        }
        SplittableRandom random = new SplittableRandom(1);
        for (int i = n - 1; i >= 0; i--) {
            wrong += hash(clip, i) == seen[i] ? 0 : 1;
        }
        for (int k = 0; k < 60; k++) {
            int i = random.nextInt(n);
            wrong += hash(clip, i) == seen[i] ? 0 : 1;
        }
        return n + " frames, " + lost + " cannot be decoded, " + wrong + " wrong, "
                + List.of(Arrays.stream(seen).distinct().count()) + " different";
    }

    private static int hash(Clip clip, int i) {
        try {
            return Arrays.hashCode(clip.frame(i).argb()) | 1;
        } catch (ClipException e) {
            return 0;
        }
    }
}
