package org.toeline.window;

import static org.toeline.window.RealWindow.click;
import static org.toeline.window.RealWindow.key;
import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.stroke;
import static org.toeline.window.RealWindow.until;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.toeline.cli.Commands;

/**
 * A driver lesson of three clips in the real window from an empty home, in which the coach looks and agrees: clips dropped at
 * once, what lies on the ground, and what the program suggests by itself accepted; then three things corrected, those of the face-on
 * picture that are furthest from where a hand put them. Every gesture is counted and told; what came out, before and after the
 * corrections, is read from the lesson that the program kept and held against the clips' truth and against the marks by hand.
 *
 * <p>{@code AgreedScript FOLDER LESSON}, the lesson a folder of three clips with their truth and a lesson marked by hand,
 * as {@code sample-media} has them and {@code org.toeline.scene.RandomMedia} films them.
 */
public final class AgreedScript {

    /** The upper square's height in each view, so that it lies in another direction from the lower one. */
    private static final Map<String, Integer> UPPER = Map.of("face-on", 560, "down-the-line", 480, "tee", 640);

    private static final int[] LOWER = {30, 690};
    /** Where the upper square may lie: no upright stands near it, whose ring would hide it. */
    private static final int[] ACROSS = {1236, 1180, 1120, 1060};

    private static final int CLEAR_PX = 45;
    private static final List<String> LARGE = List.of("face-on", "down-the-line");
    /** More than ball, club and uprights. */
    private static final int SOME = 10;

    private static final List<String> VIEWS = List.of("face-on", "down-the-line", "tee");

    // where these stand in a window of 1500 × 1000
    private static final int[] GROUND_T = {951, 415};
    private static final int[] CROSS_BALL_T = {515, 587};
    private static final int[] CROSS_FEET_H = {669, 627};

    private static final int[] HAND_CHANGE = {69, 292};
    private static final int[] CLUB = {370, 97};
    private static final int CLUB_STEP = 24;
    private static final List<String> CLUBS =
            List.of("driver", "fairway-wood", "hybrid", "long-iron", "mid-iron", "short-iron", "wedge");

    private static final int MOST_WHEN_RIGHT = 8;
    private static final int MOST_WHEN_CORRECTED = 15;
    private static final int CORRECTIONS = 3;
    /** A pixel of the screen is up to two of the picture, and the button goes down and up on whole ones. */
    private static final double HIT_PX = 4;

    private static final double SHORTEST_DRAG = 5;

    /** Three views are looked at, one after the other, beside whatever else the machine does. */
    private static final int PATIENCE_S = 600;

    private static final int ASKS_EVERY_MS = 500;

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
        this.byHand = JSON.readTree(document(sample).toFile());
        this.truth = JSON.readTree(sample.resolve("face-on.truth.json").toFile());
    }

    private static Path document(Path sample) {
        return sample.resolve(sample.getFileName() + ".lesson.json");
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Path sample = Path.of(args[1]);
        Files.createDirectories(folder);
        JsonNode byHand = JSON.readTree(document(sample).toFile());
        Path[] clips = new Path[VIEWS.size()];
        for (int i = 0; i < clips.length; i++) {
            // named as a phone names them
            clips[i] = folder.resolve("IMG_000" + (i + 1) + ".mp4");
            int[][] squares = squares(VIEWS.get(i), view(byHand, VIEWS.get(i)));
            NumberedClip.draw(
                    sample.resolve(VIEWS.get(i) + ".mp4"),
                    clips[i],
                    Placed.square(squares[0]) + "," + Placed.square(squares[1]));
        }
        try (RealWindow window = new RealWindow(folder)) {
            AgreedScript script = new AgreedScript(window, sample);
            try {
                script.lesson(clips);
            } catch (Exception e) {
                window.photograph(folder.resolve("seen.png"));
                throw e;
            } finally {
                script.gestures.forEach(g -> say("  %s", g));
            }
        }
    }

    private void lesson(Path... clips) throws Exception {
        window.drop(clips);
        gestures.add("three clips dropped");
        until("suggestions of both large views", PATIENCE_S, () -> {
            JsonNode lesson = kept();
            return LARGE.stream().allMatch(v -> !suggested(lesson, v).isEmpty());
        });
        window.stands();
        window.photograph(window.folder().resolve("drafted.png"));
        hand();
        club();
        ground();
        window.stands();
        if (view(kept(), "face-on").path("floorMarks").isEmpty()) {
            drawn("face-on");
        }
        for (String view : VIEWS) {
            if (!suggested(kept(), view).isEmpty()) {
                agree(view);
            }
        }
        tee();
        window.stands();
        window.photograph(window.folder().resolve("agreed.png"));
        boolean right = measured("all right", MOST_WHEN_RIGHT);
        correct("face-on");
        window.stands();
        window.photograph(window.folder().resolve("corrected.png"));
        if (!measured("three corrected", MOST_WHEN_CORRECTED) || !right) {
            throw new IllegalStateException("not what it should take, or not what the clips' truth says");
        }
    }

    /** A left-handed player, whom the program did not expect. */
    private void hand() throws Exception {
        if (truth.path("handedness").asText().equals("right")) {
            return;
        }
        click(HAND_CHANGE[0], HAND_CHANGE[1]);
        gestures.add("the hand changed, as the pictures show it");
        until("sides of both large views", PATIENCE_S, () -> {
            JsonNode lesson = kept();
            return LARGE.stream().allMatch(v -> suggested(lesson, v).size() > SOME);
        });
        window.stands();
        window.photograph(window.folder().resolve("changed.png"));
    }

    private void club() throws Exception {
        int club = CLUBS.indexOf(truth.path("club").asText());
        if (club > 0) {
            click(CLUB[0], CLUB[1]);
            gestures.add("the clubs opened");
            window.stands();
            click(CLUB[0], CLUB[1] + CLUB_STEP * club);
            gestures.add("the club chosen");
            window.stands();
        }
    }

    /** Before a white shoe the ball is drawn from one side to the other, and the rest is suggested beside it. */
    private void tee() throws Exception {
        if (!view(kept(), "tee").path("ball").isMissingNode()) {
            return;
        }
        if (placed("tee").isEmpty()) {
            press("3", "to the tee");
        }
        until("the picture tee", () -> placed("tee").isPresent());
        window.stands();
        Placed at = placed("tee").orElseThrow();
        JsonNode ball = view(byHand, "tee").path("ball");
        double half = ball.path("diameter").asDouble() / 2;
        int y = y(at, ball);
        stroke(at.x(ball.path("x").asDouble() - half), y, at.x(ball.path("x").asDouble() + half), y);
        gestures.add("the ball's circle drawn");
        window.stands();
        if (!suggested(kept(), "tee").isEmpty()) {
            agree("tee");
        }
    }

    /** Rods that the program does not see, as in a dark bay, are drawn along, and the ball is clicked where it is asked for next. */
    private void drawn(String view) throws Exception {
        Placed at = placed(view).orElseThrow();
        JsonNode hand = named(byHand.path("views"), "view", view);
        for (int i = 0; i < 4; i += 2) {
            JsonNode from = hand.path("floorMarks").path(i);
            JsonNode to = hand.path("floorMarks").path(i + 1);
            stroke(x(at, from), y(at, from), x(at, to), y(at, to));
            gestures.add("drawn along " + from.path("point").asText() + " " + view);
            window.stands();
        }
        if (view(kept(), view).path("ball").isMissingNode()) {
            click(x(at, hand.path("ball")), y(at, hand.path("ball")));
            gestures.add("the ball clicked " + view);
            window.stands();
        }
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

    /** Accepts what is likely, then looks at each that is doubtful. */
    private void agree(String view) throws Exception {
        until("the picture " + view, () -> placed(view).isPresent());
        window.stands();
        int left = suggested(kept(), view).size();
        press("shift+Return", "accepted all likely " + view);
        int before = left;
        until(
                "what was accepted to be kept",
                PATIENCE_S,
                () -> suggested(kept(), view).size() < before);
        for (left = suggested(kept(), view).size();
                left > 0;
                left = suggested(kept(), view).size()) {
            int now = left;
            press("Return", "answered what is doubtful " + view);
            until("it to be kept", () -> suggested(kept(), view).size() < now);
        }
    }

    private void correct(String view) throws Exception {
        if (placed(view).isEmpty()) {
            press("1", "back to face-on");
        }
        until("the picture " + view, () -> placed(view).isPresent());
        window.stands();
        Placed at = placed(view).orElseThrow();
        List<JsonNode> marks = new ArrayList<>();
        for (JsonNode mark : view(kept(), view).path("marks")) {
            if (byHandHas(view, mark.path("landmark").asText())) {
                marks.add(mark);
            }
        }
        marks.sort(
                Comparator.comparingDouble((JsonNode m) -> off(m, aim(view, m))).reversed());
        // nearer than the hand's shortest drag nobody corrects by the mouse
        marks.removeIf(m -> Math.hypot(x(at, m) - x(at, aim(view, m)), y(at, m) - y(at, aim(view, m))) < SHORTEST_DRAG);
        for (JsonNode mark : marks.subList(0, Math.min(CORRECTIONS, marks.size()))) {
            JsonNode aim = aim(view, mark);
            stroke(x(at, mark), y(at, mark), x(at, aim), y(at, aim));
            String landmark = mark.path("landmark").asText();
            gestures.add("corrected " + landmark + " by " + Math.round(off(mark, aim)) + " px");
            until("the correction to be kept", () -> {
                JsonNode now = named(view(kept(), view).path("marks"), "landmark", landmark);
                return off(now, aim) < Math.min(HIT_PX, off(mark, aim));
            });
        }
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
        int[][] squares = squares(view, view(byHand, view));
        return Placed.in(window.screen(), squares[0], squares[1]);
    }

    private static int[][] squares(String view, JsonNode marked) {
        int y = UPPER.get(view);
        int x = Arrays.stream(ACROSS)
                .filter(at -> isClear(at + Placed.SQUARE / 2.0, y, marked))
                .findFirst()
                .orElse(ACROSS[0]);
        return new int[][] {{x, y}, LOWER};
    }

    private static boolean isClear(double x, double y, JsonNode marked) {
        for (JsonNode upright : marked.path("verticals")) {
            double along = (y - upright.path("y1").asDouble())
                    / (upright.path("y2").asDouble() - upright.path("y1").asDouble());
            double there = upright.path("x1").asDouble()
                    + along
                            * (upright.path("x2").asDouble()
                                    - upright.path("x1").asDouble());
            if (Math.abs(there - x) < CLEAR_PX) {
                return false;
            }
        }
        return true;
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
        return mark.path("origin").asText().equals("suggested")
                || !mark.path("accepted").asBoolean(true);
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
        Thread.sleep(ASKS_EVERY_MS);
        return JSON.readTree(exported().toFile());
    }

    private Path exported() throws Exception {
        Path out = window.folder().resolve("out" + exports++);
        Path ledger = window.folder().resolve("home/.local/share/toeline");
        if (Files.exists(ledger.resolve("ledger.db"))) {
            run("ledger", "export", "--ledger", ledger.toString(), "--out", out.toString());
        }
        Files.createDirectories(out);
        try (Stream<Path> files = Files.walk(out)) {
            return files.filter(f -> f.toString().endsWith(".json")).findFirst().orElse(emptyLesson(out));
        }
    }

    private static Path emptyLesson(Path out) throws Exception {
        Files.createDirectories(out);
        return Files.writeString(out.resolve("none.txt"), "{}");
    }

    /**
     * Whether it took no more than it should, and whatever is measured holds the truth as intervals of 95 % do; told with how it
     * agrees with what the marks by hand measure.
     */
    private boolean measured(String when, int most) throws Exception {
        JsonNode said = JSON.readTree(run("measure", "--json", exported().toString()));
        JsonNode hand = JSON.readTree(run("measure", "--json", document(sample).toString()));
        int held = 0;
        int all = 0;
        int agree = 0;
        int both = 0;
        for (JsonNode reading : said.path("readings")) {
            String id = reading.path("reading").asText();
            double value = truth.path("readings").path(id).path("value").asDouble();
            boolean holds = reading.path("low").asDouble() <= value
                    && value <= reading.path("high").asDouble();
            held += holds ? 1 : 0;
            all++;
            if (!holds) {
                say("not within its interval: %s, truly %.2f", reading, value);
            }
            for (JsonNode other : hand.path("readings")) {
                if (other.path("reading").asText().equals(id)) {
                    both++;
                    agree += agree(reading, other) ? 1 : 0;
                }
            }
        }
        say(
                "| %s | %s | %d | %d of %d | %d of %d | %s | %s |",
                sample.getFileName(),
                when,
                gestures.size(),
                held,
                all,
                agree,
                both,
                said.path("first").path("reading").asText("none"),
                hand.path("first").path("reading").asText("none"));
        return gestures.size() <= most && all > 0 && held >= LEAST_HELD * all;
    }

    /** Two independent measurements of one thing lie so near to each other 95 times in 100. */
    private static boolean agree(JsonNode one, JsonNode other) {
        double apart = Math.abs(middle(one) - middle(other));
        return apart <= Math.hypot(half(one), half(other));
    }

    private static double middle(JsonNode reading) {
        return (reading.path("low").asDouble() + reading.path("high").asDouble()) / 2;
    }

    private static double half(JsonNode reading) {
        return (reading.path("high").asDouble() - reading.path("low").asDouble()) / 2;
    }

    /** A command, with what the program in the window has kept. */
    private static String run(String... arguments) {
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said, true);
        if (Commands.run(arguments, out, out) != 0) {
            throw new IllegalStateException(String.join(" ", arguments) + ": " + said);
        }
        return said.toString();
    }
}
