package org.toeline.window;

import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.until;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Clumsy hands in the real window: the sample lesson is opened, then clicks, double clicks, drags, keys, typed words and the
 * wheel come at random, from screen to screen and into whatever dialog opens; the program is closed, stopped and killed, and
 * started again. What stood on the desk, and every word typed and left in whatever way, must be in the ledger afterwards, which
 * must be whole; no fault may be logged, and memory be bounded.
 *
 * <p>{@code ClumsyScript FOLDER GESTURES SEED}
 */
public final class ClumsyScript {

    private static final List<String> KEYS = List.of(
            "Tab",
            "shift+Tab",
            "Return",
            "Escape",
            "space",
            "Left",
            "Right",
            "Up",
            "Down",
            "Delete",
            "BackSpace",
            "1",
            "2",
            "3",
            "s",
            "g",
            "w",
            "t",
            "m",
            "x",
            "r",
            "l",
            "b",
            "c",
            "period",
            "comma",
            "F1",
            "F2",
            "F3",
            "F4",
            "F5",
            "F6",
            "F7",
            "ctrl+z",
            "ctrl+y",
            "ctrl+s",
            "ctrl+f",
            "Home",
            "End",
            "Page_Down",
            "Page_Up",
            "shift+Return");
    private static final List<String> WORDS = List.of("12.5", "-4", "Ball zu weit vorn", "a", "0", "x y z", "1e9");
    /** None of them takes a mark away, wherever the focus is. */
    private static final List<String> GENTLE = List.of(
            "Tab",
            "shift+Tab",
            "Escape",
            "Left",
            "Right",
            "shift+Up",
            "Down",
            "1",
            "2",
            "3",
            "l",
            "b",
            "c",
            "period",
            "comma",
            "F2",
            "F3",
            "F4",
            "F5",
            "F6",
            "F7",
            "ctrl+s",
            "ctrl+f",
            "Home",
            "End",
            "Page_Down",
            "Page_Up");

    private static final int ROUNDS = 2;
    private static final int GENTLE_GESTURES = 20;
    private static final int ANSWERS = 10;
    /** Of the system's dialog; typed beside it, a name is looked for among the files. */
    private static final String NAME_FIELD = "alt+n";

    private static final int KEEP_IN_MENU = 6;
    /** From the field that finds lessons to the place of the lesson that is chosen. */
    private static final int TO_PLACE = 11;

    private static final long SHOWN_MS = 4000;
    private static final long MOST_KB = 3_000_000;

    private static final String PAINTER_GONE =
            "rejected from com.sun.javafx.tk.quantum.QuantumRenderer\\S*Shutting down";

    private final Path folder;
    private final Random random;
    private RealWindow window;
    private int words;
    private int keptWords;
    private int keptLessons;
    private int marks;
    private long mostKilobytes;

    private ClumsyScript(Path folder, long seed) throws Exception {
        this.folder = folder;
        this.window = new RealWindow(folder);
        this.random = new Random(seed);
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(folder);
        ClumsyScript script = new ClumsyScript(folder, Long.parseLong(args[2]));
        try {
            script.run(Integer.parseInt(args[1]));
        } catch (Exception e) {
            script.window.photograph(folder.resolve("seen.png"));
            throw e;
        } finally {
            script.window.close();
        }
    }

    private void run(int gestures) throws Exception {
        // the only large button of the first screen stands in the middle of its left half
        RealWindow.click(window.width() * 27 / 100, window.height() * 645 / 1000);
        until("the sample", () -> exported().size() >= 2);
        for (int round = 0; round < ROUNDS; round++) {
            word();
            players();
            RealWindow.key("Return");
            Thread.sleep(SHOWN_MS);
            for (int i = 0; i < gestures / ROUNDS; i++) {
                gesture();
                if (i % 25 == 24) {
                    RealWindow.bringBack();
                    RealWindow.key("Escape");
                    runs("gesture " + i + " of round " + round);
                }
            }
            account(round);
        }
        window.close();
        until("the program's end", () -> !window.runs());
        ends();
    }

    private void ends() throws Exception {
        String said = Files.readString(folder.resolve("program.txt"), StandardCharsets.UTF_8);
        // the toolkit's own, when the system ends the program: it takes its painting away from under the pointer, and
        // its painter
        // from under the next picture
        List<String> faults = said.replaceAll(
                        "(?m)^.*(GraphicsPipeline.getPipeline|" + PAINTER_GONE + ").*\\n(\\tat .*\\n)*", "")
                .lines()
                .filter(l -> !l.endsWith("PlatformImpl startup"))
                .filter(l -> l.contains("Exception") || l.contains("SEVERE") || l.contains("\tat "))
                // the toolkit's own, of a list that opens before its colours are known; it is drawn right
                .filter(l -> !l.contains("while converting value for"))
                .limit(8)
                .toList();
        Process check = window.command("ledger", "check").start();
        String checked = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        say(
                "at most %d MB; %d of %d words and %d lessons with %d marks are kept; the ledger: %s",
                mostKilobytes / 1000, keptWords, words, keptLessons, marks, checked);
        if (!faults.isEmpty() || mostKilobytes > MOST_KB || check.waitFor() != 0) {
            throw new IllegalStateException("faults: " + faults);
        }
    }

    private void runs(String after) throws Exception {
        mostKilobytes = Math.max(mostKilobytes, window.residentKilobytes());
        if (!window.runs()) {
            throw new IllegalStateException("the program ended after " + after);
        }
    }

    /** A word is typed into the place of the first lesson, and the field left in one of the ways hands leave fields. */
    private void word() throws Exception {
        Optional<JsonNode> first = exported().stream()
                .max(Comparator.comparing((JsonNode l) -> l.path("recorded").asText()));
        if (first.isEmpty()) {
            return;
        }
        players();
        // a lesson of a setup has a button more before its place
        int tabs = TO_PLACE + (first.get().has("setup") ? 1 : 0);
        for (int i = 0; i < tabs; i++) {
            RealWindow.key("Tab");
        }
        String word = "kept" + random.nextInt(1_000_000);
        Shell.run("xdotool", "type", "--delay", "5", "--", word);
        words++;
        int way = random.nextInt(6);
        say("%s is typed and left in way %d", word, way);
        window.photograph(folder.resolve("typed.png"));
        switch (way) {
            case 0 -> RealWindow.key("Tab");
            case 1 -> RealWindow.key("Escape");
            case 2 -> RealWindow.key("F2");
            case 3 -> RealWindow.key("ctrl+n");
            case 4 -> RealWindow.click(window.width() / 7, window.height() * 34 / 100);
            default -> again(1);
        }
        until(
                "the word " + word,
                () -> exported().stream().anyMatch(l -> l.path("place").asText().contains(word)));
        keptWords++;
    }

    /**
     * What stands on the desk is kept as a document by hand before and after gestures that take nothing away, and the program is
     * ended: the ledger must have the same lesson then.
     */
    private void account(int round) throws Exception {
        Optional<JsonNode> before = document("before-" + round);
        for (int i = 0; i < GENTLE_GESTURES; i++) {
            Shell.run("xdotool", "key", GENTLE.get(random.nextInt(GENTLE.size())));
            Thread.sleep(random.nextInt(60));
        }
        Optional<JsonNode> after = document("after-" + round);
        again(random.nextInt(3));
        if (before.isEmpty() || after.isEmpty()) {
            say("nothing on the desk after round %d", round);
            return;
        }
        Set<String> lost = named(before.get());
        marks += lost.size();
        lost.removeAll(named(after.get()));
        if (!lost.isEmpty()) {
            throw new IllegalStateException("lost by gestures that take nothing away: " + lost);
        }
        if (exported().stream().noneMatch(l -> isSame(l, after.get()))) {
            throw new IllegalStateException("what stood on the desk is not in the ledger, see after-" + round);
        }
        keptLessons++;
    }

    /** Ends the program, at once or as a power cut does once the disk had its time, and starts it again. */
    private void again(int way) throws Exception {
        if (way == 0) {
            RealWindow.key("alt+F4");
        } else if (way == 1) {
            window.close();
        } else {
            Thread.sleep(3000);
            window.kill();
        }
        until("the program's end", () -> !window.runs());
        window = new RealWindow(folder);
    }

    /** The field that finds lessons is never still: its caret blinks. */
    private static void players() throws Exception {
        RealWindow.key("F3");
        Thread.sleep(SHOWN_MS);
    }

    private Optional<JsonNode> document(String name) throws Exception {
        RealWindow.bringBack();
        for (int i = 0; i < 4; i++) {
            RealWindow.key("Escape");
        }
        until("the window itself", () -> {
            if (RealWindow.dialog()) {
                RealWindow.key("Escape");
            }
            if (RealWindow.dialog()) {
                // it asks whether what was typed may go, and stands on the button that keeps it
                RealWindow.key("shift+Tab");
                RealWindow.key("space");
            }
            return !RealWindow.dialog();
        });
        for (int i = 0; i < 3 && !RealWindow.dialog(); i++) {
            // a list that is still open takes the first click, and a field of a table the first keys
            RealWindow.key("F2");
            Thread.sleep(SHOWN_MS);
            RealWindow.click(65, 47);
            Thread.sleep(SHOWN_MS);
            for (int down = 0; down < KEEP_IN_MENU; down++) {
                RealWindow.key("Down");
            }
            RealWindow.key("Return");
            Thread.sleep(SHOWN_MS);
        }
        until("a dialog to keep the lesson in", RealWindow::dialog);
        Path file = folder.resolve(name + ".lesson.json");
        Thread.sleep(1000);
        // a dialog that still looks at the folder takes no answer, and may have completed half a name by itself
        until("the dialog's end", () -> {
            RealWindow.key(NAME_FIELD);
            RealWindow.key("ctrl+a");
            Shell.run("xdotool", "type", "--delay", "30", file.toString());
            for (int i = 0; i < ANSWERS && RealWindow.dialog(); i++) {
                RealWindow.key("Return");
                Thread.sleep(1000);
            }
            return !RealWindow.dialog();
        });
        // a lesson without a clip is not kept, and nothing tells that it comes no more
        for (int i = 0; i < 30 && !Files.exists(file); i++) {
            Thread.sleep(500);
        }
        return Files.exists(file) ? Optional.of(new ObjectMapper().readTree(file.toFile())) : Optional.empty();
    }

    private static Set<String> named(JsonNode lesson) {
        Set<String> names = new TreeSet<>();
        for (JsonNode view : lesson.path("views")) {
            String of = view.path("view").asText() + " ";
            view.path("marks").forEach(m -> names.add(of + m.path("landmark").asText()));
            view.path("floorMarks").forEach(m -> names.add(of + m.path("point").asText()));
            for (int i = 0; i < view.path("verticals").size(); i++) {
                names.add(of + "upright " + i);
            }
            if (view.has("ball")) {
                names.add(of + "ball");
            }
        }
        lesson.path("words").forEach(w -> names.add("words " + w.path("text").asText()));
        return names;
    }

    private static boolean isSame(JsonNode one, JsonNode other) {
        return plain(one).equals(plain(other));
    }

    /** Without what the ledger knows better: the player, and where the clips are now. */
    private static JsonNode plain(JsonNode lesson) {
        ObjectNode plain = lesson.deepCopy();
        plain.remove("player");
        plain.path("views").forEach(v -> ((ObjectNode) v).remove("clip"));
        return plain;
    }

    /** All lessons as the ledger gives them out while or after the program runs. */
    private List<JsonNode> exported() throws Exception {
        Path out = Files.createTempDirectory(folder, "out");
        Process export =
                window.command("ledger", "export", "--out", out.toString()).start();
        export.getInputStream().readAllBytes();
        export.waitFor();
        List<JsonNode> lessons = new ArrayList<>();
        try (Stream<Path> files = Files.list(out)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
                lessons.add(new ObjectMapper().readTree(file.toFile()));
            }
        }
        return lessons;
    }

    private void gesture() throws Exception {
        int x = random.nextInt(window.width());
        // above it stands the frame of the window, whose cross closes it
        int y = 30 + random.nextInt(window.height() - 30);
        switch (random.nextInt(8)) {
            case 0, 1, 2 -> RealWindow.click(x, y);
            case 3 ->
                RealWindow.stroke(x, y, random.nextInt(window.width()), 30 + random.nextInt(window.height() - 30));
            case 4 -> {
                RealWindow.move(x, y);
                Shell.run("xdotool", "click", "--repeat", "2", "--delay", "40", "" + (1 + random.nextInt(5)));
            }
            case 5 -> Shell.run("xdotool", "type", "--delay", "5", "--", WORDS.get(random.nextInt(WORDS.size())));
            default -> Shell.run("xdotool", "key", KEYS.get(random.nextInt(KEYS.size())));
        }
        Thread.sleep(random.nextInt(60));
    }
}
