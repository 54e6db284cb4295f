package org.toeline.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * The program in its real window, from an empty home, moved by mouse and keys only and looked at by its pixels. Needs a
 * display with a window manager, xdotool, FFmpeg and the program built.
 */
final class RealWindow implements AutoCloseable {

    private static final String TITLE = "Toeline";
    private static final int PATIENCE_S = 120;
    // a program asked to end keeps what is typed first; until it has gone, its window would be taken for the next one's
    private static final int ENDING_S = 60;

    private final Path folder;
    private final String options;
    private final Process program;
    private final int screenWidth;
    private final int screenHeight;

    /** Starts the program with the folder's own home, in which nothing is set, and waits until its window stands, as large as the screen. */
    RealWindow(Path folder) throws Exception {
        this.folder = folder.toAbsolutePath();
        String[] size = Shell.said("xdotool", "getdisplaygeometry").split(" ");
        screenWidth = Integer.parseInt(size[0]);
        screenHeight = Integer.parseInt(size[1]);
        Path home = this.folder.resolve("home");
        Files.createDirectories(home);
        options =
                "-Duser.home=%1$s -Djava.util.prefs.userRoot=%1$s -Duser.language=en -Dprism.order=sw".formatted(home);
        program = command()
                .redirectOutput(ProcessBuilder.Redirect.appendTo(
                        this.folder.resolve("program.txt").toFile()))
                .start();
        try {
            until("the window", () -> !visible("^" + TITLE + "$").isEmpty());
            String window = visible("^" + TITLE + "$").get(0);
            // a program that is still setting its window up takes it back
            until("the whole screen", () -> {
                fill(window);
                stands();
                return fills(Shell.said("xdotool", "getwindowgeometry", "--shell", window));
            });
        } catch (Exception e) {
            close();
            throw e;
        }
    }

    /** As large as the screen, wherever a hand has put it. */
    static void fill(String window) throws Exception {
        Shell.run("xdotool", "windowsize", window, "100%", "100%", "windowmove", window, "0", "0");
    }

    private boolean fills(String geometry) {
        return geometry.contains("WIDTH=" + screenWidth) && geometry.contains("HEIGHT=" + screenHeight);
    }

    /** The program with the same home, which prints what it says. */
    ProcessBuilder command(String... arguments) {
        List<String> words =
                new ArrayList<>(List.of(Path.of("toeline").toAbsolutePath().toString()));
        words.addAll(Arrays.asList(arguments));
        ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
        builder.environment().put("TOELINE_JAVA_OPTIONS", options);
        return builder;
    }

    Path folder() {
        return folder;
    }

    int width() {
        return screenWidth;
    }

    int height() {
        return screenHeight;
    }

    /** What the program holds in memory, its children included. */
    long residentKilobytes() throws Exception {
        long sum = 0;
        for (ProcessHandle one : Stream.concat(Stream.of(program.toHandle()), program.descendants())
                .toList()) {
            String said = Shell.said("ps", "-o", "rss=", "-p", "" + one.pid());
            sum += said.isEmpty() ? 0 : Long.parseLong(said);
        }
        return sum;
    }

    boolean runs() {
        return program.isAlive();
    }

    /** Ends it as a power cut does. */
    void kill() {
        program.descendants().forEach(ProcessHandle::destroyForcibly);
        program.destroyForcibly();
    }

    /** Files from a window beside, into the middle of this one, wherever its parts are: all of it takes clips. */
    void drop(Path... dropped) throws Exception {
        int x = screenWidth - 140;
        int y = screenHeight / 2;
        List<String> words = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dprism.order=sw",
                "-cp",
                System.getProperty("java.class.path"),
                FilesToDrag.class.getName(),
                "" + x,
                "" + y));
        Arrays.stream(dropped).forEach(f -> words.add(f.toString()));
        Process files = new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("files.txt").toFile())
                .start();
        try {
            until("the files to drag", () -> !visible("files to drag").isEmpty());
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

    static void move(int x, int y) throws Exception {
        Shell.run("xdotool", "mousemove", "" + x, "" + y);
    }

    static void key(String key) throws Exception {
        Shell.run("xdotool", "key", key);
        Thread.sleep(120);
    }

    Picture screen() throws IOException, InterruptedException {
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

    /** Until nothing on the screen has changed for a second and a half. */
    void stands() throws Exception {
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

    static void until(String what, Callable<Boolean> so) throws Exception {
        until(what, PATIENCE_S, so);
    }

    static void until(String what, int patienceS, Callable<Boolean> so) throws Exception {
        long end = System.nanoTime() + patienceS * 1_000_000_000L;
        while (!so.call()) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("waited in vain for " + what);
            }
            Thread.sleep(200);
        }
    }

    /** Whether a window of its own, a dialog, takes the keys. */
    static boolean dialog() throws Exception {
        return !Shell.said("xdotool", "getactivewindow", "getwindowname").equals(TITLE);
    }

    /** From the bar of tasks, where the button in a dialog's corner has put the window, or from where its bar was dragged. */
    static void bringBack() throws Exception {
        if (Shell.said("xdotool", "getactivewindow").isEmpty()) {
            for (String window : Shell.said("xdotool", "search", "--name", "^" + TITLE + "$")
                    .lines()
                    .toList()) {
                Shell.said("xdotool", "windowmap", "--sync", window, "windowactivate", window);
            }
        }
        for (String window : visible("^" + TITLE + "$")) {
            fill(window);
        }
    }

    private static List<String> visible(String name) throws Exception {
        return Shell.said("xdotool", "search", "--onlyvisible", "--name", name)
                .lines()
                .toList();
    }

    static void click(int x, int y) throws Exception {
        move(x, y);
        Thread.sleep(60);
        Shell.run("xdotool", "click", "1");
        Thread.sleep(120);
    }

    /** From one point to another with the button down. */
    static void stroke(int fromX, int fromY, int toX, int toY) throws Exception {
        move(fromX, fromY);
        Shell.run("xdotool", "mousedown", "1");
        for (int i = 1; i <= 5; i++) {
            move(fromX + (toX - fromX) * i / 5, fromY + (toY - fromY) * i / 5);
            Thread.sleep(60);
        }
        Shell.run("xdotool", "mouseup", "1");
        Thread.sleep(120);
    }

    /** What the screen shows, as a file to be looked at when something went wrong. */
    void photograph(Path file) throws Exception {
        Picture seen = screen();
        BufferedImage image = new BufferedImage(seen.width(), seen.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, seen.width(), seen.height(), seen.rgb(), 0, seen.width());
        ImageIO.write(image, "png", file.toFile());
    }

    static void say(String words, Object... values) {
        System.out.println(String.format(Locale.ROOT, words, values));
    }

    @Override
    public void close() throws InterruptedException {
        program.descendants().forEach(ProcessHandle::destroy);
        program.destroy();
        if (!program.waitFor(ENDING_S, TimeUnit.SECONDS)) {
            program.destroyForcibly().waitFor();
        }
    }
}
