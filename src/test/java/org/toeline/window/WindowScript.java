package org.toeline.window;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * A lesson by mouse and keys in the real window, from an empty home, with nothing of the program's own to help: two clips are
 * dropped and told apart, the player is marked, the film is stepped through, played and dragged along, and the still is saved. Its
 * picture must be the frame that was marked, compared pixel by pixel with every frame of the clip.
 *
 * <p>{@code WindowScript FOLDER}: needs a display with a window manager, xdotool, FFmpeg and the program built.
 */
public final class WindowScript {

    private static final String TITLE = "Toeline";
    private static final int PATIENCE_S = 120;
    /** A colour that differs by more than that is another one; the still is scaled, and the clip was compressed. */
    private static final double LEVELS = 16;

    private static final double LEAST_ALIKE = 0.85;
    /** In the clip, from one side to the other. */
    private static final int[] BALL = {708, 628, 722, 628};

    private final Path folder;
    private final int screenWidth;
    private final int screenHeight;

    private WindowScript(Path folder) throws Exception {
        this.folder = folder;
        String[] size = Shell.said("xdotool", "getdisplaygeometry").split(" ");
        screenWidth = Integer.parseInt(size[0]);
        screenHeight = Integer.parseInt(size[1]);
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(folder.resolve("home"));
        Path samples = Path.of("sample-media", "before");
        ProcessBuilder program =
                new ProcessBuilder(Path.of("toeline").toAbsolutePath().toString());
        program.environment()
                .put(
                        "TOELINE_JAVA_OPTIONS",
                        "-Duser.home=%1$s -Djava.util.prefs.userRoot=%1$s -Duser.language=en -Dprism.order=sw"
                                .formatted(folder.resolve("home")));
        Process running = program.redirectErrorStream(true)
                .redirectOutput(folder.resolve("program.txt").toFile())
                .start();
        try {
            NumberedClip line =
                    NumberedClip.make(samples.resolve("down-the-line.mp4"), folder.resolve("one.mp4"), false);
            NumberedClip face = NumberedClip.make(samples.resolve("face-on.mp4"), folder.resolve("two.mp4"), true);
            new WindowScript(folder).lesson(line, face);
        } finally {
            running.descendants().forEach(ProcessHandle::destroy);
            running.destroy();
        }
    }

    private void lesson(NumberedClip line, NumberedClip face) throws Exception {
        until(
                "the window",
                () -> !Shell.said("xdotool", "search", "--onlyvisible", "--name", "^" + TITLE + "$")
                        .isEmpty());
        String window = Shell.said("xdotool", "search", "--onlyvisible", "--name", "^" + TITLE + "$")
                .lines()
                .findFirst()
                .orElseThrow();
        Shell.run("xdotool", "windowsize", window, "100%", "100%", "windowmove", window, "0", "0");
        stands();
        drop(line, face);
        until("a picture", () -> looked().isPresent());
        stands();
        if (!looked().orElseThrow().faceOn()) {
            // what their names do not say the coach does
            key("x");
            until(
                    "the face-on clip",
                    () -> looked().filter(NumberedClip.Read::faceOn).isPresent());
        }
        stands();
        // a frame that the player stands still on, and not the one that comes by itself
        for (int i = 0; i < 12; i++) {
            key("period");
        }
        stands();
        int marked = looked().orElseThrow().frame();
        say("the frame to be marked is number %d", marked);
        mark();
        look(marked);
        Path still = save();
        compare(face, still, marked);
    }

    /** The ball by a stroke, and what is suggested for the body. */
    private void mark() throws Exception {
        NumberedClip.Placed at = picture().orElseThrow();
        move(at.x(BALL[0]), at.y(BALL[1]));
        Shell.run("xdotool", "mousedown", "1");
        for (int i = 0; i <= 4; i++) {
            move(at.x(BALL[0] + i * (BALL[2] - BALL[0]) / 4.0), at.y(BALL[3]));
            Thread.sleep(60);
        }
        Shell.run("xdotool", "mouseup", "1");
        stands();
        key("g");
        stands();
        key("shift+Return");
        stands();
    }

    /** Steps by key, wheel and button, plays forwards and back, and ends on another frame than the marked one. */
    private void look(int marked) throws Exception {
        for (int i = 0; i < 9; i++) {
            key("period");
        }
        until(
                "another frame by key",
                () -> looked().filter(r -> r.frame() > marked).isPresent());
        NumberedClip.Placed at = picture().orElseThrow();
        Shell.run(
                "xdotool", "mousemove", "" + at.x(400), "" + at.y(300), "click", "--repeat", "5", "--delay", "60", "5");
        key("space");
        until(
                "the film's end",
                () -> looked().filter(r -> r.frame() > marked + 40).isPresent());
        stands();
        key("r");
        key("space");
        Thread.sleep(300);
        key("space");
        stands();
        int there = looked().orElseThrow().frame();
        say("looked, and left at number %d", there);
        if (there == marked) {
            key("period");
            stands();
        }
    }

    private Path save() throws Exception {
        key("F6");
        stands();
        key("ctrl+shift+s");
        until("a dialog to save in", WindowScript::dialog);
        Path still = folder.resolve("still.png");
        Files.deleteIfExists(still);
        Thread.sleep(1000);
        Shell.run("xdotool", "key", "ctrl+a");
        Shell.run("xdotool", "type", "--delay", "30", still.toString());
        Shell.run("xdotool", "key", "Return");
        until("the still", () -> Files.isReadable(still) && Files.size(still) > 0);
        Thread.sleep(500);
        return still;
    }

    private static boolean dialog() throws Exception {
        return !Shell.said("xdotool", "getactivewindow", "getwindowname").equals(TITLE);
    }

    /** Every frame of the clip against the still: the marked one must be the one that it is like. */
    private void compare(NumberedClip clip, Path file, int marked) throws Exception {
        Picture still = Picture.of(file);
        NumberedClip.Placed placed = NumberedClip.in(still).stream()
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the still does not show the clip's picture"));
        NumberedClip.Read read = NumberedClip.read(still, placed);
        int best = -1;
        double bestAlike = 0;
        double next = 0;
        Process decoding = new ProcessBuilder(
                        "ffmpeg",
                        "-v",
                        "error",
                        "-i",
                        clip.file().toString(),
                        "-f",
                        "rawvideo",
                        "-pix_fmt",
                        "rgb24",
                        "-")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (InputStream frames = decoding.getInputStream()) {
            for (int i = 0; ; i++) {
                byte[] bytes = frames.readNBytes(3 * NumberedClip.WIDTH * NumberedClip.HEIGHT);
                if (bytes.length < 3 * NumberedClip.WIDTH * NumberedClip.HEIGHT) {
                    break;
                }
                double alike = alike(still, placed, Picture.of(NumberedClip.WIDTH, NumberedClip.HEIGHT, bytes));
                if (alike > bestAlike) {
                    next = bestAlike;
                    bestAlike = alike;
                    best = i;
                } else {
                    next = Math.max(next, alike);
                }
            }
        }
        say(
                "the still reads number %d; of all frames it is most like number %d: %.2f %% of its pixels, the next %.2f %%",
                read.frame(), best, 100 * bestAlike, 100 * next);
        if (!read.faceOn() || read.frame() != marked || best != marked || bestAlike < LEAST_ALIKE) {
            throw new IllegalStateException("the still's picture is not the marked frame, number " + marked);
        }
        say("passed: the still's picture is the marked frame");
    }

    /** The share of the still's pixels that are the frame's at their place; words and lines over it are not. */
    private static double alike(Picture still, NumberedClip.Placed placed, Picture frame) {
        int bottom = Math.min(still.height(), placed.y(NumberedClip.HEIGHT - 1));
        int right = Math.min(still.width(), placed.x(NumberedClip.WIDTH - 1));
        int alike = 0;
        int all = 0;
        for (int y = Math.max(0, placed.y(0)); y < bottom; y++) {
            for (int x = Math.max(0, placed.x(0)); x < right; x++) {
                double fx = (x - placed.x()) / placed.scale();
                double fy = (y - placed.y()) / placed.scale();
                int rgb = still.rgb()[y * still.width() + x];
                boolean same = true;
                for (int shift = 0; shift <= 16 && same; shift += 8) {
                    same = Math.abs((rgb >> shift & 0xff) - frame.at(fx, fy, shift)) <= LEVELS;
                }
                alike += same ? 1 : 0;
                all++;
            }
        }
        return (double) alike / all;
    }

    /** Into the middle of the window, wherever its parts are: all of it takes clips. */
    private void drop(NumberedClip line, NumberedClip face) throws Exception {
        int x = screenWidth - 140;
        int y = screenHeight / 2;
        Process files = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dprism.order=sw",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FilesToDrag.class.getName(),
                        "" + x,
                        "" + y,
                        line.file().toString(),
                        face.file().toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("files.txt").toFile())
                .start();
        try {
            until(
                    "the files to drag",
                    () -> !Shell.said("xdotool", "search", "--onlyvisible", "--name", "files to drag")
                            .isEmpty());
            Thread.sleep(1000);
            move(x + 30, y + 20);
            Shell.run("xdotool", "mousedown", "1");
            for (int i = 1; i <= 12; i++) {
                move(x + 30 + (screenWidth / 2 - x) * i / 12, y + 20);
                Thread.sleep(120);
            }
            Thread.sleep(600);
            Shell.run("xdotool", "mouseup", "1");
            until("the drop", () -> !files.isAlive());
        } finally {
            files.destroy();
        }
    }

    private static void move(int x, int y) throws Exception {
        Shell.run("xdotool", "mousemove", "" + x, "" + y);
    }

    private static void key(String key) throws Exception {
        Shell.run("xdotool", "key", key);
        Thread.sleep(120);
    }

    private Picture screen() throws IOException, InterruptedException {
        String size = screenWidth + "x" + screenHeight;
        return Picture.of(
                screenWidth,
                screenHeight,
                Shell.run(
                        "ffmpeg",
                        "-v",
                        "error",
                        "-f",
                        "x11grab",
                        "-draw_mouse",
                        "0",
                        "-video_size",
                        size,
                        "-i",
                        System.getenv("DISPLAY"),
                        "-frames:v",
                        "1",
                        "-f",
                        "rawvideo",
                        "-pix_fmt",
                        "rgb24",
                        "-"));
    }

    private Optional<NumberedClip.Placed> picture() throws Exception {
        List<NumberedClip.Placed> placed = NumberedClip.in(screen());
        return placed.stream().findFirst();
    }

    /** What the large picture shows. */
    private Optional<NumberedClip.Read> looked() throws Exception {
        Picture screen = screen();
        return NumberedClip.in(screen).stream().findFirst().map(p -> NumberedClip.read(screen, p));
    }

    /** Until nothing on the screen has changed for a second and a half. */
    private void stands() throws Exception {
        Picture[] last = {screen()};
        int[] same = {0};
        until("the screen to stand", () -> {
            Thread.sleep(500);
            Picture now = screen();
            same[0] = Arrays.equals(now.rgb(), last[0].rgb()) ? same[0] + 1 : 0;
            last[0] = now;
            return same[0] >= 3;
        });
    }

    private static void until(String what, Callable<Boolean> so) throws Exception {
        long end = System.nanoTime() + PATIENCE_S * 1_000_000_000L;
        while (!so.call()) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("waited in vain for " + what);
            }
            Thread.sleep(200);
        }
    }

    private static void say(String words, Object... values) {
        System.out.println(String.format(Locale.ROOT, words, values));
    }
}
