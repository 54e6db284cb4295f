package org.toeline.window;

import static org.toeline.window.RealWindow.click;
import static org.toeline.window.RealWindow.key;
import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.stroke;
import static org.toeline.window.RealWindow.until;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A lesson of three clips from nothing, in the real window from an empty home: clips dropped at once, the ground, ball,
 * body and upright of two views, the tee. Every gesture is counted (a click, a stroke, a key, clips dropped), and what was
 * marked and what came out are read from the lesson that the program kept.
 *
 * <p>{@code LessonScript FOLDER}
 */
public final class LessonScript {

    private static final int MOST_GESTURES = 40;
    // where these stand in a window of 1500 × 1000
    private static final int[] GROUND_T = {951, 415};
    private static final int[] CROSS_BALL_T = {515, 587};
    private static final int[] CROSS_FEET_H = {669, 627};

    private final RealWindow window;
    private final ThreeClips lesson;
    private int gestures;

    private LessonScript(RealWindow window) throws Exception {
        this.window = window;
        this.lesson = new ThreeClips(window);
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(folder);
        Path[] clips = ThreeClips.draw(folder);
        try (RealWindow window = new RealWindow(folder)) {
            LessonScript script = new LessonScript(window);
            try {
                script.byHand(clips);
            } catch (Exception e) {
                window.photograph(folder.resolve("seen.png"));
                throw e;
            }
            say("%d gestures by hand", script.gestures);
            if (script.gestures > MOST_GESTURES) {
                throw new IllegalStateException("more than %d gestures".formatted(MOST_GESTURES));
            }
        }
    }

    private void byHand(Path... clips) throws Exception {
        window.drop(clips);
        gestures++;
        Placed face = lesson.stands("face-on");
        ground();
        rods(face, "face-on");
        ball(face, "face-on");
        marks(face, "face-on", ThreeClips.FIRST);
        upright(face, "face-on");
        marks(face, "face-on", ThreeClips.THEN_FACE_ON);
        press("2");
        Placed line = lesson.stands("down-the-line");
        rods(line, "down-the-line");
        ball(line, "down-the-line");
        marks(line, "down-the-line", ThreeClips.FIRST);
        upright(line, "down-the-line");
        marks(line, "down-the-line", ThreeClips.THEN_DOWN_THE_LINE);
        press("3");
        Placed tee = lesson.stands("tee");
        circle(tee);
        marks(tee, "tee", ThreeClips.AT_THE_TEE);
        window.stands();
        lesson.check();
    }

    /** The rods lie as a T whose cross rod is measured: 26 cm behind the other's middle, its feet end at 138 cm. */
    private void ground() throws Exception {
        click(GROUND_T[0], GROUND_T[1]);
        gestures++;
        until("the floor's dialog", RealWindow::dialog);
        window.stands();
        type(CROSS_BALL_T, "-26");
        type(CROSS_FEET_H, "138");
        key("Return");
        gestures++;
        until("the floor to be kept", () -> !RealWindow.dialog());
    }

    private void type(int[] field, String text) throws Exception {
        click(field[0], field[1]);
        key("ctrl+a");
        Shell.run("xdotool", "type", "--delay", "40", "--", text);
        gestures++;
    }

    private void press(String key) throws Exception {
        key(key);
        gestures++;
    }

    // what is looked for in the picture is waited for, as a hand does that sees nothing come yet
    private void rods(Placed at, String view) throws Exception {
        for (int i = 0; i < 4; i += 2) {
            JsonNode from = lesson.view(view).path("floorMarks").path(i);
            JsonNode to = lesson.view(view).path("floorMarks").path(i + 1);
            stroke(x(at, from), y(at, from), x(at, to), y(at, to));
            window.stands();
            settled(at, view);
        }
    }

    private void ball(Placed at, String view) throws Exception {
        JsonNode ball = lesson.view(view).path("ball");
        click(x(at, ball), y(at, ball));
        window.stands();
        settled(at, view);
    }

    /** At the tee a white shoe stands behind the ball: it is drawn from one side to the other. */
    private void circle(Placed at) throws Exception {
        JsonNode ball = lesson.view("tee").path("ball");
        double half = ball.path("diameter").asDouble() / 2;
        int y = y(at, ball);
        stroke(at.x(ball.path("x").asDouble() - half), y, at.x(ball.path("x").asDouble() + half), y);
        window.stands();
        settled(at, "tee");
    }

    private void upright(Placed at, String view) throws Exception {
        JsonNode post = lesson.view(view).path("verticals").path(0);
        stroke(
                at.x(post.path("x1").asDouble()),
                at.y(post.path("y1").asDouble()),
                at.x(post.path("x2").asDouble()),
                at.y(post.path("y2").asDouble()));
        window.stands();
        settled(at, view);
    }

    private void marks(Placed at, String view, List<String> landmarks) throws Exception {
        for (String landmark : landmarks) {
            JsonNode mark = ThreeClips.named(lesson.view(view).path("marks"), "landmark", landmark);
            click(x(at, mark), y(at, mark));
            settled(at, view);
        }
    }

    /** One more gesture is done; what the hand aims at must be where it was. */
    private void settled(Placed at, String view) throws Exception {
        gestures++;
        Placed[] now = {at};
        until("the picture", () -> {
            now[0] = lesson.placed(view).orElse(null);
            return now[0] != null;
        });
        if (Math.abs(now[0].x() - at.x()) > 1 || Math.abs(now[0].y() - at.y()) > 1) {
            throw new IllegalStateException("the picture moved under the hand after gesture " + gestures);
        }
    }

    private static int x(Placed at, JsonNode mark) {
        return at.x(mark.path("x").asDouble());
    }

    private static int y(Placed at, JsonNode mark) {
        return at.y(mark.path("y").asDouble());
    }
}
