package org.toeline.window;

import static org.toeline.window.RealWindow.key;
import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.stroke;
import static org.toeline.window.RealWindow.until;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A lesson by mouse and keys in the real window, from an empty home, with nothing of the program's own to help: two clips are
 * dropped and told apart, the player is marked, the film is stepped through, played and dragged along, and the still is saved. Its
 * picture must be the frame that was marked, compared pixel by pixel with every frame of the clip.
 *
 * <p>{@code WindowScript FOLDER}: needs a display with a window manager, xdotool, FFmpeg and the program built.
 */
public final class WindowScript {

    /** A colour that differs by more than that is another one; the still is scaled, and the clip was compressed. */
    private static final double LEVELS = 16;

    private static final double LEAST_ALIKE = 0.85;
    /** In the clip, from one side to the other. */
    private static final int[] BALL = {708, 628, 722, 628};

    private final RealWindow window;

    private WindowScript(RealWindow window) {
        this.window = window;
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(folder);
        Path samples = Path.of("sample-media", "before");
        NumberedClip line = NumberedClip.make(samples.resolve("down-the-line.mp4"), folder.resolve("one.mp4"), false);
        NumberedClip face = NumberedClip.make(samples.resolve("face-on.mp4"), folder.resolve("two.mp4"), true);
        try (RealWindow window = new RealWindow(folder)) {
            try {
                new WindowScript(window).lesson(line, face);
            } catch (Exception e) {
                window.photograph(folder.resolve("seen.png"));
                throw e;
            }
        }
    }

    private void lesson(NumberedClip line, NumberedClip face) throws Exception {
        window.drop(line.file(), face.file());
        until("a picture", () -> looked().isPresent());
        window.stands();
        if (!looked().orElseThrow().faceOn()) {
            // what their names do not say the coach does
            key("x");
            until(
                    "the face-on clip",
                    () -> looked().filter(NumberedClip.Read::faceOn).isPresent());
        }
        window.stands();
        // a frame that the player stands still on, and not the one that comes by itself
        for (int i = 0; i < 12; i++) {
            key("period");
        }
        window.stands();
        int marked = looked().orElseThrow().frame();
        say("the frame to be marked is number %d", marked);
        mark();
        look(marked);
        Path still = save();
        compare(face, still, marked);
    }

    /** The ball by a stroke, and what is suggested for the body. */
    private void mark() throws Exception {
        Placed at = picture().orElseThrow();
        stroke(at.x(BALL[0]), at.y(BALL[1]), at.x(BALL[2]), at.y(BALL[3]));
        window.stands();
        key("g");
        window.stands();
        key("shift+Return");
        window.stands();
        // when all is agreed the desk goes on to the next view, and the hand back
        key("1");
        window.stands();
    }

    /** Steps by key, wheel and button, plays forwards and back, and ends on another frame than the marked one. */
    private void look(int marked) throws Exception {
        for (int i = 0; i < 9; i++) {
            key("period");
        }
        until(
                "another frame by key",
                () -> looked().filter(r -> r.frame() > marked).isPresent());
        Placed at = picture().orElseThrow();
        Shell.run(
                "xdotool", "mousemove", "" + at.x(400), "" + at.y(300), "click", "--repeat", "5", "--delay", "60", "5");
        key("space");
        until(
                "the film's end",
                () -> looked().filter(r -> r.frame() > marked + 40).isPresent());
        window.stands();
        key("r");
        key("space");
        Thread.sleep(300);
        key("space");
        window.stands();
        int there = looked().orElseThrow().frame();
        say("looked, and left at number %d", there);
        if (there == marked) {
            key("period");
            window.stands();
        }
    }

    private Path save() throws Exception {
        key("F6");
        window.stands();
        key("ctrl+shift+s");
        until("a dialog to save in", RealWindow::dialog);
        Path still = window.folder().resolve("still.png");
        Files.deleteIfExists(still);
        Thread.sleep(1000);
        Shell.run("xdotool", "key", "ctrl+a");
        Shell.run("xdotool", "type", "--delay", "30", still.toString());
        Shell.run("xdotool", "key", "Return");
        until("the still", () -> Files.isReadable(still) && Files.size(still) > 0);
        Thread.sleep(500);
        return still;
    }

    /** Every frame of the clip against the still: the marked one must be the one that it is like. */
    private void compare(NumberedClip clip, Path file, int marked) throws Exception {
        Picture still = Picture.of(file);
        Placed placed = NumberedClip.in(still)
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
    private static double alike(Picture still, Placed placed, Picture frame) {
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

    private Optional<Placed> picture() throws Exception {
        return NumberedClip.in(window.screen());
    }

    /** What the large picture shows. */
    private Optional<NumberedClip.Read> looked() throws Exception {
        Picture screen = window.screen();
        return NumberedClip.in(screen).map(p -> NumberedClip.read(screen, p));
    }
}
