package org.toeline.window;

import static org.toeline.window.RealWindow.key;
import static org.toeline.window.RealWindow.say;
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
 * The lesson that scripts teach: three clips of the sample, with squares that tell where each is shown; where everything in them is
 * aimed at; and what must come of it.
 */
final class ThreeClips {

    /** Before the upright, in the order in which it is asked for. */
    static final List<String> FIRST =
            List.of("lead-shoulder", "trail-shoulder", "lead-heel", "lead-toe", "trail-heel", "trail-toe");

    static final List<String> THEN_FACE_ON =
            List.of("lead-wrist", "trail-wrist", "head-centre", "lead-hip", "trail-hip", "club-head");
    static final List<String> THEN_DOWN_THE_LINE = List.of("trail-wrist", "head-centre", "trail-hip", "grip-end");
    static final List<String> AT_THE_TEE = List.of("crown", "ground");
    static final List<String> VIEWS = List.of("face-on", "down-the-line", "tee");

    private static final Path SAMPLES = Path.of("sample-media", "before");
    /** Where nothing is marked, written or magnified; in another direction from each other in every view. */
    private static final Map<String, int[][]> SQUARES = Map.of(
            "face-on", new int[][] {{1236, 560}, {30, 690}},
            "down-the-line", new int[][] {{1236, 480}, {30, 690}},
            "tee", new int[][] {{1236, 640}, {30, 690}});

    /** 13 landmarks face-on, 10 down the line, 2 at the tee, four ends of rods in two views, three balls. */
    private static final int MARKS = 12 + 10 + 2 + 8 + 3;
    /** A pixel of the screen is 1.6 of the clip; a rod's end snaps to what is seen there. */
    private static final double FARTHEST_PX = 4;

    private static final double LEAST_HELD = 0.85;

    private final RealWindow window;
    private final JsonNode aimed;

    ThreeClips(RealWindow window) throws Exception {
        this.window = window;
        this.aimed = new ObjectMapper()
                .readTree(SAMPLES.resolve("before.lesson.json").toFile());
    }

    /** The clips, named as a phone names them, in the order of the views. */
    static Path[] draw(Path folder) throws Exception {
        Path[] clips = new Path[VIEWS.size()];
        for (int i = 0; i < clips.length; i++) {
            clips[i] = folder.resolve("IMG_000" + (i + 1) + ".mp4");
            int[][] squares = SQUARES.get(VIEWS.get(i));
            NumberedClip.draw(
                    SAMPLES.resolve(VIEWS.get(i) + ".mp4"),
                    clips[i],
                    Placed.square(squares[0]) + "," + Placed.square(squares[1]));
        }
        return clips;
    }

    /** Where a view's picture is on the screen, once it stands. */
    Placed stands(String view) throws Exception {
        until("the picture " + view, () -> placed(view).isPresent());
        window.stands();
        return placed(view).orElseThrow();
    }

    Optional<Placed> placed(String view) throws Exception {
        return Placed.in(window.screen(), SQUARES.get(view)[0], SQUARES.get(view)[1]);
    }

    /** What is aimed at in a view. */
    JsonNode view(String view) {
        return named(aimed.path("views"), "view", view);
    }

    static JsonNode named(JsonNode all, String key, String name) {
        for (JsonNode one : all) {
            if (one.path(key).asText().equals(name)) {
                return one;
            }
        }
        throw new IllegalArgumentException("no " + name);
    }

    /** What the program kept: every mark where it was put, and readings that hold the truth of the clips. */
    void check() throws Exception {
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
                    if (isSuggested(mark)) {
                        continue;
                    }
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

    /** What the program suggests by itself and nobody has accepted was not put there by this hand. */
    private static boolean isSuggested(JsonNode mark) {
        return !mark.path("accepted").asBoolean(true);
    }

    private static double off(JsonNode mark, JsonNode aimed) {
        return Math.hypot(
                mark.path("x").asDouble() - aimed.path("x").asDouble(),
                mark.path("y").asDouble() - aimed.path("y").asDouble());
    }
}
