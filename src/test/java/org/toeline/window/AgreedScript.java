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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A driver lesson of three clips in the real window from an empty home, in which the coach looks and agrees: clips dropped at
 * once, what lies on the ground, and what the program suggests by itself accepted, some of it corrected before. Every gesture is
 * counted and told; what came out is read from the lesson that the program kept and held against the clips' truth.
 *
 * <p>{@code AgreedScript FOLDER SAMPLE CORRECTIONS}
 */
public final class AgreedScript {

    private static final Map<String, int[][]> SQUARES = Map.of(
            "face-on", new int[][] {{1236, 560}, {30, 690}},
            "down-the-line", new int[][] {{1236, 480}, {30, 690}},
            "tee", new int[][] {{1236, 640}, {30, 690}});
    private static final List<String> VIEWS = List.of("face-on", "down-the-line", "tee");

    // where these stand in a window of 1500 × 1000
    private static final int[] GROUND_T = {951, 415};
    private static final int[] CROSS_BALL_T = {515, 587};
    private static final int[] CROSS_FEET_H = {669, 627};

    private static final int MOST_WHEN_RIGHT = 8;
    private static final int MOST_EACH_CORRECTION = 2;
    /** Three views are looked at, one after the other, beside whatever else the machine does. */
    private static final int PATIENCE_S = 600;

    private static final double LEAST_HELD = 0.85;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final RealWindow window;
    private final Path sample;
    private final JsonNode byHand;
    private final JsonNode truth;
    private final List<String> gestures = new ArrayList<>();
    private int exports;

    private AgreedScript(RealWindow window, Path sample) throws Exception {
        this.window = window;
        this.sample = sample;
        this.byHand = JSON.readTree(
                sample.resolve(sample.getFileName() + ".lesson.json").toFile());
        this.truth = JSON.readTree(sample.resolve("face-on.truth.json").toFile());
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Path sample = Path.of("sample-media", args[1]);
        int corrections = Integer.parseInt(args[2]);
        Files.createDirectories(folder);
        Path[] clips = new Path[VIEWS.size()];
        for (int i = 0; i < clips.length; i++) {
            // named as a phone names them
            clips[i] = folder.resolve("IMG_000" + (i + 1) + ".mp4");
            int[][] squares = SQUARES.get(VIEWS.get(i));
            NumberedClip.draw(
                    sample.resolve(VIEWS.get(i) + ".mp4"),
                    clips[i],
                    Placed.square(squares[0]) + "," + Placed.square(squares[1]));
        }
        try (RealWindow window = new RealWindow(folder)) {
            AgreedScript script = new AgreedScript(window, sample);
            try {
                script.lesson(corrections, clips);
            } catch (Exception e) {
                window.photograph(folder.resolve("seen.png"));
                throw e;
            } finally {
                script.gestures.forEach(g -> say("  %s", g));
            }
            int most = MOST_WHEN_RIGHT + corrections * MOST_EACH_CORRECTION;
            say("%s: %d gestures, %d of them corrections", args[1], script.gestures.size(), corrections);
            if (script.gestures.size() > most) {
                throw new IllegalStateException("more than %d gestures".formatted(most));
            }
        }
    }

    private void lesson(int corrections, Path... clips) throws Exception {
        window.drop(clips);
        gestures.add("three clips dropped");
        until("suggestions of all views", PATIENCE_S, () -> {
            JsonNode lesson = kept();
            return VIEWS.stream().allMatch(v -> !suggested(lesson, v).isEmpty());
        });
        window.photograph(window.folder().resolve("drafted.png"));
        ground();
        until("rods that are suggested", PATIENCE_S, () -> {
            JsonNode lesson = kept();
            return !view(lesson, "face-on").path("floorMarks").isEmpty();
        });
        for (String view : VIEWS) {
            agree(view, corrections);
        }
        window.stands();
        window.photograph(window.folder().resolve("agreed.png"));
        check();
    }

    /** The rods lie as a T whose cross rod is measured. */
    private void ground() throws Exception {
        window.stands();
        click(GROUND_T[0], GROUND_T[1]);
        gestures.add("a T lies on the ground");
        until("the floor's dialog", RealWindow::dialog);
        window.stands();
        double middle = (floor("rod-near", "t") + floor("rod-far", "t")) / 2;
        type(CROSS_BALL_T, String.format(Locale.ROOT, "%.1f", 100 * (floor("cross-ball", "t") - middle)));
        type(
                CROSS_FEET_H,
                String.format(Locale.ROOT, "%.0f", 100 * (floor("cross-feet", "h") - floor("rod-near", "h")) + 15));
        key("Return");
        gestures.add("kept");
        until("the floor to be kept", () -> !RealWindow.dialog());
    }

    private double floor(String point, String axis) {
        return named(truth.path("floor"), "id", point).path(axis).asDouble();
    }

    private void type(int[] field, String text) throws Exception {
        click(field[0], field[1]);
        key("ctrl+a");
        Shell.run("xdotool", "type", "--delay", "40", "--", text);
        gestures.add("typed " + text);
    }

    /** Corrects what is furthest off, accepts what is likely, then looks at each that is doubtful. */
    private void agree(String view, int corrections) throws Exception {
        until("the picture " + view, () -> placed(view).isPresent());
        window.stands();
        if (view.equals("face-on")) {
            correct(view, corrections);
        }
        int left = suggested(kept(), view).size();
        press("shift+Return", "accepted all likely " + view);
        int before = left;
        until(
                "what was accepted to be kept",
                PATIENCE_S,
                () -> suggested(kept(), view).size() < before);
        for (left = suggested(kept(), view).size(); left > 0; left--) {
            int now = left;
            press("Return", "accepted one that is doubtful " + view);
            until("it to be kept", () -> suggested(kept(), view).size() < now);
        }
    }

    private void correct(String view, int corrections) throws Exception {
        JsonNode lesson = kept();
        Placed at = placed(view).orElseThrow();
        List<JsonNode> marks = new ArrayList<>();
        for (JsonNode mark : view(lesson, view).path("marks")) {
            if (isThere(view, mark)) {
                marks.add(mark);
            }
        }
        marks.sort(
                Comparator.comparingDouble((JsonNode m) -> off(m, aim(view, m))).reversed());
        for (JsonNode mark : marks.subList(0, Math.min(corrections, marks.size()))) {
            JsonNode aim = aim(view, mark);
            stroke(x(at, mark), y(at, mark), x(at, aim), y(at, aim));
            gestures.add("corrected " + mark.path("landmark").asText() + " by " + Math.round(off(mark, aim)) + " px");
            until("the correction to be kept", () -> {
                JsonNode now = named(
                        view(kept(), view).path("marks"),
                        "landmark",
                        mark.path("landmark").asText());
                return !isSuggested(now);
            });
        }
    }

    private boolean isThere(String view, JsonNode mark) {
        return isSuggested(mark) && byHandHas(view, mark.path("landmark").asText());
    }

    private boolean byHandHas(String view, String landmark) {
        for (JsonNode mark : named(byHand.path("views"), "view", view).path("marks")) {
            if (mark.path("landmark").asText().equals(landmark)) {
                return true;
            }
        }
        return false;
    }

    private JsonNode aim(String view, JsonNode mark) {
        return named(
                named(byHand.path("views"), "view", view).path("marks"),
                "landmark",
                mark.path("landmark").asText());
    }

    private void press(String key, String what) throws Exception {
        key(key);
        gestures.add(what);
    }

    private java.util.Optional<Placed> placed(String view) throws Exception {
        return Placed.in(window.screen(), SQUARES.get(view)[0], SQUARES.get(view)[1]);
    }

    /** What is suggested of a view in the lesson as it is kept. */
    private static List<JsonNode> suggested(JsonNode lesson, String view) {
        List<JsonNode> suggested = new ArrayList<>();
        for (JsonNode one : lesson.path("views")) {
            if (one.path("view").asText().equals(view)) {
                for (String list : List.of("marks", "floorMarks", "verticals")) {
                    one.path(list).forEach(suggested::add);
                }
                suggested.add(one.path("ball"));
            }
        }
        suggested.removeIf(m -> !isSuggested(m));
        return suggested;
    }

    private static boolean isSuggested(JsonNode mark) {
        return mark.path("origin").asText().equals("suggested");
    }

    private static JsonNode view(JsonNode lesson, String view) {
        return named(lesson.path("views"), "view", view);
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

    private static double off(JsonNode mark, JsonNode aimed) {
        return Math.hypot(
                mark.path("x").asDouble() - aimed.path("x").asDouble(),
                mark.path("y").asDouble() - aimed.path("y").asDouble());
    }

    /** The lesson as the program has kept it by now. */
    private JsonNode kept() throws Exception {
        return JSON.readTree(exported().toFile());
    }

    private Path exported() throws Exception {
        Path out = window.folder().resolve("out" + exports++);
        run("ledger", "export", "--out", out.toString());
        try (Stream<Path> files = Files.walk(out)) {
            return files.filter(f -> f.toString().endsWith(".json")).findFirst().orElse(emptyLesson(out));
        }
    }

    private static Path emptyLesson(Path out) throws Exception {
        Files.createDirectories(out);
        return Files.writeString(out.resolve("none.txt"), "{}");
    }

    /** Whatever is measured holds the truth as intervals of 95 % do, and the first thing to change is the ball. */
    private void check() throws Exception {
        key("ctrl+s");
        window.stands();
        window.close();
        JsonNode said = JSON.readTree(run("measure", "--json", exported().toString()));
        JsonNode hand = JSON.readTree(run(
                "measure",
                "--json",
                sample.resolve(sample.getFileName() + ".lesson.json").toString()));
        int held = 0;
        int all = 0;
        for (JsonNode reading : said.path("readings")) {
            double value = truth.path("readings")
                    .path(reading.path("reading").asText())
                    .path("value")
                    .asDouble();
            boolean holds = reading.path("low").asDouble() <= value
                    && value <= reading.path("high").asDouble();
            held += holds ? 1 : 0;
            all++;
            if (!holds) {
                say("not within its interval: %s, truly %.2f", reading, value);
            }
        }
        say(
                "%d of %d intervals of 95 %% hold the truth (by hand there are %d); first %s, by hand %s",
                held,
                all,
                hand.path("readings").size(),
                said.path("first").path("reading"),
                hand.path("first").path("reading"));
        if (all == 0 || held < LEAST_HELD * all) {
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
}
