package org.toeline.window;

import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.until;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The lesson of three clips by keys alone, in the real window from an empty home: no mouse, nothing dropped. Every key is counted,
 * and what was marked and what came out are read from the lesson that the program kept.
 *
 * <p>{@code KeysScript FOLDER}
 */
public final class KeysScript {

    // the keys' steps in a clip of 720 lines
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 720;
    private static final int FAR = 100;
    private static final int NEAR = 10;

    // of the floor's dialog, which begins with the list of layouts
    private static final int TO_CROSS_BALL_T = 5;
    private static final int ON_TO_CROSS_FEET_H = 3;

    private final RealWindow window;
    private final ThreeClips lesson;
    private int keys;
    private int crossX = WIDTH / 2;
    private int crossY = HEIGHT / 2;

    private KeysScript(RealWindow window) throws Exception {
        this.window = window;
        this.lesson = new ThreeClips(window);
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(folder);
        Path[] clips = ThreeClips.draw(folder);
        try (RealWindow window = new RealWindow(folder)) {
            KeysScript script = new KeysScript(window);
            // a pointer over the picture is magnified
            RealWindow.move(window.width() - 1, window.height() - 1);
            try {
                script.byKeys(clips);
            } catch (Exception e) {
                window.photograph(folder.resolve("seen.png"));
                throw e;
            }
            say("%d keys", script.keys);
        }
    }

    private void byKeys(Path... clips) throws Exception {
        for (int i = 0; i < clips.length; i++) {
            press("" + (i + 1));
            open(clips[i]);
            lesson.stands(ThreeClips.VIEWS.get(i));
        }
        press("1");
        lesson.stands("face-on");
        ground();
        press("Return");
        rods("face-on");
        place(lesson.view("face-on").path("ball"));
        window.stands();
        marks("face-on", ThreeClips.FIRST);
        upright("face-on");
        marks("face-on", ThreeClips.THEN_FACE_ON);
        press("2");
        lesson.stands("down-the-line");
        rods("down-the-line");
        place(lesson.view("down-the-line").path("ball"));
        window.stands();
        marks("down-the-line", ThreeClips.FIRST);
        upright("down-the-line");
        marks("down-the-line", ThreeClips.THEN_DOWN_THE_LINE);
        press("3");
        lesson.stands("tee");
        circle();
        marks("tee", ThreeClips.AT_THE_TEE);
        window.stands();
        lesson.check();
    }

    private void open(Path clip) throws Exception {
        press("ctrl+shift+o");
        until("a dialog to open in", RealWindow::dialog);
        Thread.sleep(2000);
        type(clip.toString());
        press("Return");
        until("the dialog to go", () -> !RealWindow.dialog());
    }

    /** The rods lie as a T whose cross rod is measured: 26 cm behind the other's middle, its feet end at 138 cm. */
    private void ground() throws Exception {
        press("Return");
        press("Return");
        until("the floor's dialog", RealWindow::dialog);
        Thread.sleep(2000);
        press("Tab", TO_CROSS_BALL_T);
        press("ctrl+a");
        type("-26");
        press("Tab", ON_TO_CROSS_FEET_H);
        press("ctrl+a");
        type("138");
        press("Return");
        until("the floor to be kept", () -> !RealWindow.dialog());
        window.stands();
    }

    private void rods(String view) throws Exception {
        for (int i = 0; i < 4; i++) {
            place(lesson.view(view).path("floorMarks").path(i));
            window.stands();
        }
    }

    private void upright(String view) throws Exception {
        JsonNode post = lesson.view(view).path("verticals").path(0);
        place(post.path("x1").asDouble(), post.path("y1").asDouble(), "Return");
        place(post.path("x2").asDouble(), post.path("y2").asDouble(), "Return");
        window.stands();
    }

    /** At the tee a white shoe stands behind the ball: it is drawn from one side to the other. */
    private void circle() throws Exception {
        JsonNode ball = lesson.view("tee").path("ball");
        double half = ball.path("diameter").asDouble() / 2;
        double y = ball.path("y").asDouble();
        place(ball.path("x").asDouble() - half, y, "ctrl+Return");
        place(ball.path("x").asDouble() + half, y, "ctrl+Return");
        window.stands();
    }

    private void marks(String view, List<String> landmarks) throws Exception {
        for (String landmark : landmarks) {
            place(ThreeClips.named(lesson.view(view).path("marks"), "landmark", landmark));
        }
    }

    private void place(JsonNode mark) throws Exception {
        place(mark.path("x").asDouble(), mark.path("y").asDouble(), "Return");
    }

    private void place(double x, double y, String mark) throws Exception {
        List<String> all = new ArrayList<>();
        crossX = steps(all, crossX, (int) Math.round(x), WIDTH, "Right", "Left");
        crossY = steps(all, crossY, (int) Math.round(y), HEIGHT, "Down", "Up");
        all.add(mark);
        press(all);
    }

    /** By the fewest keys that stay in the picture, at whose edge the cross stops. */
    private static int steps(List<String> all, int from, int to, int end, String on, String back) {
        int by = to - from;
        int far = (int) Math.rint((double) by / FAR);
        if (from + far * FAR < 0 || from + far * FAR > end) {
            far = by / FAR;
        }
        int near = (int) Math.rint((double) (by - far * FAR) / NEAR);
        int single = by - far * FAR - near * NEAR;
        repeated(all, far, "shift+" + on, "shift+" + back);
        repeated(all, near, on, back);
        repeated(all, single, "ctrl+" + on, "ctrl+" + back);
        return to;
    }

    private static void repeated(List<String> all, int times, String on, String back) {
        all.addAll(Collections.nCopies(Math.abs(times), times > 0 ? on : back));
    }

    private void press(String key) throws Exception {
        press(List.of(key));
    }

    private void press(String key, int times) throws Exception {
        press(Collections.nCopies(times, key));
    }

    private void press(List<String> some) throws Exception {
        List<String> words = new ArrayList<>(List.of("xdotool", "key", "--delay", "40"));
        words.addAll(some);
        Shell.run(words.toArray(new String[0]));
        keys += some.size();
        Thread.sleep(150);
    }

    private void type(String text) throws Exception {
        Shell.run("xdotool", "type", "--delay", "40", "--", text);
        keys += text.length();
    }
}
