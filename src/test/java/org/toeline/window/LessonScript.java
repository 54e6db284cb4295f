package org.toeline.window;

import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.until;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A lesson of three clips from nothing, in the real window from an empty home: clips dropped at once, the ground, ball,
 * body and upright of two views, the tee. Every gesture is counted (a click, a stroke, a key, clips dropped), and what was
 * marked and what came out are read from the lesson that the program kept.
 *
 * <p>{@code LessonScript FOLDER}
 */
public final class LessonScript {

    private static final Path SAMPLES = Path.of("sample-media", "before");
    private static final Map<String, int[][]> SQUARES = Map.of(
            "face-on", new int[][] {{760, 160}, {700, 400}},
            "down-the-line", new int[][] {{760, 160}, {700, 400}},
            "tee", new int[][] {{180, 60}, {100, 300}});

    private final RealWindow window;
    private final JsonNode placed;
    private int gestures;

    private LessonScript(RealWindow window) throws Exception {
        this.window = window;
        this.placed = new ObjectMapper()
                .readTree(SAMPLES.resolve("before.lesson.json").toFile());
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(folder);
        List<String> views = List.of("face-on", "down-the-line", "tee");
        Path[] clips = new Path[views.size()];
        for (int i = 0; i < clips.length; i++) {
            // named as a phone names them
            clips[i] = folder.resolve("IMG_000" + (i + 1) + ".mp4");
            int[][] squares = SQUARES.get(views.get(i));
            NumberedClip.draw(
                    SAMPLES.resolve(views.get(i) + ".mp4"),
                    clips[i],
                    Placed.square(squares[0]) + "," + Placed.square(squares[1]));
        }
        try (RealWindow window = new RealWindow(folder)) {
            new LessonScript(window).byHand(clips);
            System.in.read();
        }
    }

    private void byHand(Path... clips) throws Exception {
        window.drop(clips);
        gestures++;
        until(
                "a picture",
                () -> Placed.in(window.screen(), SQUARES.get("face-on")[0], SQUARES.get("face-on")[1])
                        .isPresent());
        window.stands();
        say("%d gestures", gestures);
    }
}
