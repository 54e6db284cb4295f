package org.toeline.window;

import static org.toeline.window.RealWindow.click;
import static org.toeline.window.RealWindow.key;
import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.stroke;
import static org.toeline.window.RealWindow.until;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A lesson of three clips from nothing, in the real window from an empty home: clips dropped at once, the ground, ball,
 * body and upright of two views, the tee. Every gesture is counted (a click, a stroke, a key, clips dropped), and what was
 * marked and what came out are read from the lesson that the program kept.
 *
 * <p>{@code LessonScript FOLDER}
 */
public final class LessonScript {

    private static final Path SAMPLES = Path.of("sample-media", "before");
    /** Where nothing is marked, written or magnified; in another direction from each other in every view. */
    private static final Map<String, int[][]> SQUARES = Map.of(
            "face-on", new int[][] {{1236, 560}, {30, 690}},
            "down-the-line", new int[][] {{1236, 480}, {30, 690}},
            "tee", new int[][] {{1236, 640}, {30, 690}});

    private static final int MOST_GESTURES = 40;
    /** 13 landmarks face-on, 10 down the line, 2 at the tee, four ends of rods in two views, three balls. */
    private static final int MARKS = 12 + 10 + 2 + 8 + 3;
    /** A pixel of the screen is 1.6 of the clip; a rod's end snaps to what is seen there. */
    private static final double FARTHEST_PX = 4;

    private static final double LEAST_HELD = 0.85;

    // where these stand in a window of 1500 × 1000
    private static final int[] GROUND_T = {951, 415};
    private static final int[] CROSS_BALL_T = {515, 587};
    private static final int[] CROSS_FEET_H = {669, 627};

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
        Placed face = stands("face-on");
        ground();
        rods(face, "face-on");
        ball(face, "face-on");
        marks(
                face,
                "face-on",
                List.of("lead-shoulder", "trail-shoulder", "lead-heel", "lead-toe", "trail-heel", "trail-toe"));
        upright(face, "face-on");
        marks(
                face,
                "face-on",
                List.of("lead-wrist", "trail-wrist", "head-centre", "lead-hip", "trail-hip", "club-head"));
        press("2");
        Placed line = stands("down-the-line");
        rods(line, "down-the-line");
        ball(line, "down-the-line");
        marks(
                line,
                "down-the-line",
                List.of("lead-shoulder", "trail-shoulder", "lead-heel", "lead-toe", "trail-heel", "trail-toe"));
        upright(line, "down-the-line");
        marks(line, "down-the-line", List.of("trail-wrist", "head-centre", "trail-hip", "grip-end"));
        press("3");
        Placed tee = stands("tee");
        circle(tee);
        marks(tee, "tee", List.of("crown", "ground"));
        window.stands();
        check();
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
            JsonNode from = view(view).path("floorMarks").path(i);
            JsonNode to = view(view).path("floorMarks").path(i + 1);
            stroke(x(at, from), y(at, from), x(at, to), y(at, to));
            window.stands();
            settled(at, view);
        }
    }

    private void ball(Placed at, String view) throws Exception {
        JsonNode ball = view(view).path("ball");
        click(x(at, ball), y(at, ball));
        window.stands();
        settled(at, view);
    }

    /** At the tee a white shoe stands behind the ball: it is drawn from one side to the other. */
    private void circle(Placed at) throws Exception {
        JsonNode ball = view("tee").path("ball");
        double half = ball.path("diameter").asDouble() / 2;
        int y = y(at, ball);
        stroke(at.x(ball.path("x").asDouble() - half), y, at.x(ball.path("x").asDouble() + half), y);
        window.stands();
        settled(at, "tee");
    }

    private void upright(Placed at, String view) throws Exception {
        JsonNode post = view(view).path("verticals").path(0);
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
            JsonNode mark = named(view(view).path("marks"), "landmark", landmark);
            click(x(at, mark), y(at, mark));
            settled(at, view);
        }
    }

    /** One more gesture is done; what the hand aims at must be where it was. */
    private void settled(Placed at, String view) throws Exception {
        gestures++;
        Placed[] now = {at};
        until("the picture", () -> {
            now[0] = placed(view).orElse(null);
            return now[0] != null;
        });
        if (Math.abs(now[0].x() - at.x()) > 1 || Math.abs(now[0].y() - at.y()) > 1) {
            throw new IllegalStateException("the picture moved under the hand after gesture " + gestures);
        }
    }

    private Placed stands(String view) throws Exception {
        until("the picture " + view, () -> placed(view).isPresent());
        window.stands();
        return placed(view).orElseThrow();
    }

    private Optional<Placed> placed(String view) throws Exception {
        return Placed.in(window.screen(), SQUARES.get(view)[0], SQUARES.get(view)[1]);
    }

    private JsonNode view(String view) {
        return named(placed.path("views"), "view", view);
    }

    private static JsonNode named(JsonNode all, String key, String name) {
        for (JsonNode one : all) {
            if (one.path(key).asText().equals(name)) {
                return one;
            }
        }
        throw new IllegalArgumentException("no " + name);
    }

    private static int x(Placed at, JsonNode mark) {
        return at.x(mark.path("x").asDouble());
    }

    private static int y(Placed at, JsonNode mark) {
        return at.y(mark.path("y").asDouble());
    }

    /** What the program kept: every mark where it was put, and readings that hold the truth of the clips. */
    private void check() throws Exception {
        key("ctrl+s");
        window.stands();
        window.close();
        Path out = window.folder().resolve("out");
        run("ledger", "export", "--out", out.toString());
        Path document;
        try (Stream<Path> files = Files.walk(out)) {
            document = files.filter(f -> f.toString().endsWith(".json"))
                    .findFirst()
                    .orElseThrow();
        }
        JsonNode kept = new ObjectMapper().readTree(document.toFile());
        int marks = 0;
        double worst = 0;
        for (JsonNode view : kept.path("views")) {
            JsonNode aimed = view(view.path("view").asText());
            for (String[] list : new String[][] {{"marks", "landmark"}, {"floorMarks", "point"}}) {
                for (JsonNode mark : view.path(list[0])) {
                    worst = Math.max(
                            worst,
                            off(
                                    mark,
                                    named(
                                            aimed.path(list[0]),
                                            list[1],
                                            mark.path(list[1]).asText())));
                    marks++;
                }
            }
            worst = Math.max(worst, off(view.path("ball"), aimed.path("ball")));
            marks++;
        }
        say("%d marks kept, the farthest %.1f px from where it was aimed", marks, worst);
        if (marks != MARKS || worst > FARTHEST_PX) {
            throw new IllegalStateException("marks are not where they were put");
        }
        readings(document);
    }

    private void readings(Path document) throws Exception {
        JsonNode truth = new ObjectMapper()
                .readTree(SAMPLES.resolve("face-on.truth.json").toFile())
                .path("readings");
        JsonNode said = new ObjectMapper().readTree(run("measure", "--json", document.toString()));
        int held = 0;
        int all = 0;
        for (JsonNode reading : said.path("readings")) {
            JsonNode known = truth.path(reading.path("reading").asText());
            double value = known.path("value").asDouble();
            boolean holds = reading.path("low").asDouble() <= value
                    && value <= reading.path("high").asDouble();
            held += holds ? 1 : 0;
            all++;
            if (!holds) {
                say("not within its interval: %s, truly %.2f", reading, value);
            }
        }
        say(
                "%d of %d intervals of 95 %% hold the truth; first %s",
                held, all, said.path("first").path("reading"));
        if (held < LEAST_HELD * all
                || !said.path("first").path("reading").asText().equals("ball-to-lead-shoulder")) {
            throw new IllegalStateException("not what the clips' truth says");
        }
    }

    private String run(String... arguments) throws Exception {
        Process process = window.command(arguments).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException(String.join(" ", arguments) + ": " + said);
        }
        return said;
    }

    private static double off(JsonNode mark, JsonNode aimed) {
        return Math.hypot(
                mark.path("x").asDouble() - aimed.path("x").asDouble(),
                mark.path("y").asDouble() - aimed.path("y").asDouble());
    }
}
