package org.toeline.video;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FrameGrabber;
import org.toeline.assist.AddressFinder;

/** Times one clip against the {@code ffmpeg} program and a naive frame grabber, turn by turn in one run. */
final class ClipMeasurement {

    private static final int TURNS = 3;
    private static final int JUMPS = 30;
    private static final int SOAK = 10_000;
    private static final int PICTURES = 40;

    private final Path file;
    private final int threads = Math.min(8, Runtime.getRuntime().availableProcessors());
    private final SplittableRandom random = new SplittableRandom(4);

    private ClipMeasurement(Path file) {
        this.file = file;
    }

    static void of(Path file) throws Exception {
        ClipMeasurement measurement = new ClipMeasurement(file);
        say(
                "processes waiting to run: %s",
                Files.readString(Path.of("/proc/loadavg")).trim());
        measurement.index();
        measurement.keptIndex();
        measurement.picture();
        measurement.address();
        measurement.sequential();
        new StepMeasurement(file, measurement.random).all();
        measurement.grabber();
        measurement.soak();
    }

    static void say(String what, Object... values) {
        System.out.printf(Locale.ROOT, what + "%n", values);
    }

    /** Best of several turns, milliseconds. */
    private static double best(List<Double> millis) {
        return millis.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    interface Work {
        void run() throws Exception;
    }

    static double millis(Work work) throws Exception {
        long begun = System.nanoTime();
        work.run();
        return (System.nanoTime() - begun) / 1e6;
    }

    private void index() throws Exception {
        List<Double> reading = new ArrayList<>();
        List<Double> listing = new ArrayList<>();
        for (int i = 0; i < TURNS; i++) {
            reading.add(millis(() -> Files.readAllBytes(file)));
            listing.add(millis(() -> Clip.open(file).close()));
        }
        try (Clip clip = Clip.open(file)) {
            say("%s: %s", file.getFileName(), clip.info());
        }
        say("reading %d bytes %.1f ms; opening and listing %.1f ms", Files.size(file), best(reading), best(listing));
    }

    /** Opened once to be kept, then again. */
    private void keptIndex() throws Exception {
        Path folder = Files.createTempDirectory("lists");
        KeptIndexes kept = KeptIndexes.in(folder, 0);
        Clip.open(file, Progress.NONE, kept).orElseThrow().close();
        List<Double> opening = new ArrayList<>();
        for (int i = 0; i < TURNS; i++) {
            opening.add(millis(
                    () -> Clip.open(file, Progress.NONE, kept).orElseThrow().close()));
        }
        say("opening with a kept list %.1f ms", best(opening));
        try (var lists = Files.list(folder)) {
            lists.forEach(f -> f.toFile().delete());
        }
        Files.delete(folder);
    }

    /** A picture of a decoded frame that was not made ahead: converted, toned, copied. */
    private void picture() throws Exception {
        try (Clip clip = Clip.open(file)) {
            int[] pixels = new int[clip.info().width() * clip.info().height()];
            for (int i = 0; i < PICTURES; i++) {
                clip.show(0, pixels);
            }
            double cpu = cpuSeconds();
            double[] all = new double[PICTURES];
            for (int i = 0; i < PICTURES; i++) {
                all[i] = millis(() -> clip.show(0, pixels));
            }
            say(
                    "a picture made when it is asked for: %s; processor time %.1f ms",
                    StepMeasurement.summary(all), 1000 * (cpuSeconds() - cpu) / PICTURES);
        }
    }

    private void address() throws Exception {
        try (Clip clip = Clip.open(file)) {
            List<Double> looking = new ArrayList<>();
            double cpu = cpuSeconds();
            for (int i = 0; i < TURNS; i++) {
                looking.add(millis(() -> AddressFinder.moments(clip, Progress.NONE)));
            }
            double seconds = clip.info().durationSeconds();
            say(
                    "looking for address: %.2f s, %.1f times less than it lasts; processor time %.2f s a turn",
                    best(looking) / 1000, 1000 * seconds / best(looking), (cpuSeconds() - cpu) / TURNS);
        }
    }

    private void sequential() throws Exception {
        int[] frames = new int[1];
        Work[] work = {
            () -> program("-map", "0:v:0"),
            () -> frames[0] = decodeToNothing(),
            () -> program("-map", "0:v:0", "-vf", "format=bgra"),
            this::decodeToPictures
        };
        double[][] best = new double[work.length][2];
        for (double[] b : best) {
            Arrays.fill(b, Double.MAX_VALUE);
        }
        for (int turn = 0; turn < TURNS; turn++) {
            for (int i = 0; i < work.length; i++) {
                double cpu = cpuSeconds();
                best[i][0] = Math.min(best[i][0], millis(work[i]) / 1000);
                best[i][1] = Math.min(best[i][1], cpuSeconds() - cpu);
            }
        }
        String[] what = {"to nothing", "with pictures"};
        for (int i = 0; i < work.length; i += 2) {
            double theirs = frames[0] / best[i][0];
            double ours = frames[0] / best[i + 1][0];
            say(
                    "%s, %d threads, best of %d turns: ffmpeg %.0f frames a second, here %.0f (%.2f); processor time a"
                            + " frame, ffmpeg %.2f ms, here %.2f ms (%.2f)",
                    what[i / 2],
                    threads,
                    TURNS,
                    theirs,
                    ours,
                    ours / theirs,
                    1000 * best[i][1] / frames[0],
                    1000 * best[i + 1][1] / frames[0],
                    best[i + 1][1] / best[i][1]);
        }
    }

    /** What this process and its ended children have used: fields 14 to 17 of the process's line, in hundredths. */
    private static double cpuSeconds() throws IOException {
        String line = Files.readString(Path.of("/proc/self/stat"));
        String[] fields = line.substring(line.lastIndexOf(')') + 2).split(" ");
        return Arrays.stream(fields, 11, 15).mapToLong(Long::parseLong).sum() / 100.0;
    }

    private void program(String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "ffmpeg",
                "-loglevel",
                "error",
                "-nostdin",
                "-threads",
                Integer.toString(threads),
                "-i",
                file.toString()));
        command.addAll(List.of(options));
        command.addAll(List.of("-f", "null", "-"));
        if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
            throw new IOException(command + " failed");
        }
    }

    private int decodeToNothing() throws ClipException {
        try (Clip clip = Clip.open(file);
                ClipReader reader = clip.another()) {
            int frames = 0;
            while (reader.next(Long.MIN_VALUE) != null) {
                frames++;
            }
            return frames;
        }
    }

    private void decodeToPictures() throws ClipException {
        try (Clip clip = Clip.open(file)) {
            int[] pixels = new int[clip.info().width() * clip.info().height()];
            for (int i = 0; i < clip.frameCount(); i++) {
                clip.show(i, pixels);
            }
        }
    }

    /** Set to a time and grab: what the common grabber shows, by the time its frame carries. */
    private void grabber() throws Exception {
        try (Clip clip = Clip.open(file);
                FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(file.toString())) {
            grabber.start();
            int n = clip.frameCount();
            double[] ours = new double[JUMPS];
            double[] theirs = new double[JUMPS];
            double[] theirSteps = new double[JUMPS];
            int wrong = 0;
            for (int i = 0; i < JUMPS; i++) {
                int at = 1 + random.nextInt(n - 1);
                theirs[i] = grabbed(grabber, clip, at);
                wrong += theirs[i] < 0 ? 1 : 0;
                theirSteps[i] = grabbed(grabber, clip, at - 1);
                wrong += theirSteps[i] < 0 ? 1 : 0;
                clip.frame(at);
                ours[i] = StepMeasurement.timed(clip, at - 1);
            }
            double[] absolute = Arrays.stream(theirSteps).map(Math::abs).toArray();
            say(
                    "a step back, grabber set to a time: %s; here: %s",
                    StepMeasurement.summary(absolute), StepMeasurement.summary(ours));
            say("the grabber's frame was another than asked for in %d of %d", wrong, 2 * JUMPS);
            grabber.stop();
        } catch (FrameGrabber.Exception e) {
            say("the grabber does not read this clip: %s", e.getMessage());
        }
    }

    /** Milliseconds, below zero when another frame came. */
    private static double grabbed(FFmpegFrameGrabber grabber, Clip clip, int at) throws Exception {
        long wanted = Math.round(clip.seconds(at) * 1e6);
        long begun = System.nanoTime();
        grabber.setTimestamp(wanted);
        org.bytedeco.javacv.Frame frame = grabber.grabImage();
        double millis = (System.nanoTime() - begun) / 1e6;
        return frame != null && clip.indexAt(frame.timestamp / 1e6) == at ? millis : -millis;
    }

    private void soak() throws Exception {
        try (Clip clip = Clip.open(file)) {
            int at = clip.frameCount() / 2;
            StringBuilder memory = new StringBuilder();
            for (int i = 1; i <= SOAK; i++) {
                at = Math.max(
                        0,
                        Math.min(
                                clip.frameCount() - 1,
                                at
                                        + (random.nextInt(40) == 0
                                                ? random.nextInt(-200, 200)
                                                : random.nextBoolean() ? 1 : -1)));
                clip.frame(at);
                if (i % 2000 == 0) {
                    memory.append(String.format(Locale.ROOT, " %d MB, %d files;", residentKb() / 1024, openFiles()));
                }
            }
            say("%d steps and jumps, resident memory and open files after each 2000:%s", SOAK, memory);
        }
    }

    private static long residentKb() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(l -> l.startsWith("VmRSS"))
                .mapToLong(l -> Long.parseLong(l.replaceAll("\\D", "")))
                .findFirst()
                .orElse(0);
    }

    private static long openFiles() throws IOException {
        try (var files = Files.list(Path.of("/proc/self/fd"))) {
            return files.count();
        }
    }
}
