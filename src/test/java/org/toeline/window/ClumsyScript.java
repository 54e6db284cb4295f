package org.toeline.window;

import static org.toeline.window.RealWindow.say;
import static org.toeline.window.RealWindow.until;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/**
 * Clumsy hands in the real window: the sample lesson is opened, then clicks, double clicks, drags, keys, typed words and the
 * wheel come at random, from screen to screen and into whatever dialog opens. Afterwards the program must still run and have
 * logged no fault, its memory be bounded, and its ledger be whole.
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
            "ctrl+n",
            "ctrl+f",
            "Home",
            "End",
            "Page_Down",
            "Page_Up",
            "shift+Return");
    private static final List<String> WORDS = List.of("12.5", "-4", "Ball zu weit vorn", "a", "0", "x y z", "1e9");
    private static final long MOST_KB = 3_000_000;

    private final RealWindow window;
    private final Random random;

    private ClumsyScript(RealWindow window, long seed) {
        this.window = window;
        this.random = new Random(seed);
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(folder);
        try (RealWindow window = new RealWindow(folder)) {
            new ClumsyScript(window, Long.parseLong(args[2])).run(Integer.parseInt(args[1]));
        }
    }

    private void run(int gestures) throws Exception {
        // the only large button of the first screen stands in the middle of its left half
        RealWindow.click(window.width() * 27 / 100, window.height() * 645 / 1000);
        Thread.sleep(8000);
        for (int i = 0; i < gestures; i++) {
            gesture();
            if (i % 25 == 24) {
                RealWindow.key("Escape");
                if (!window.runs()) {
                    throw new IllegalStateException("the program ended after gesture " + i);
                }
            }
        }
        Thread.sleep(3000);
        long kilobytes = window.residentKilobytes();
        String said = Files.readString(window.folder().resolve("program.txt"), StandardCharsets.UTF_8);
        window.close();
        until("the program's end", () -> !window.runs());
        List<String> faults = said.lines()
                .filter(l -> l.contains("Exception") || l.contains("SEVERE") || l.contains("\tat "))
                // the toolkit's own, of a list that opens before its colours are known; it is drawn right
                .filter(l -> !l.contains("while converting value for"))
                .limit(8)
                .toList();
        Process check = window.command("ledger", "check").start();
        String checked = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        say("%d MB at the end; the ledger: %s", kilobytes / 1000, checked);
        if (!faults.isEmpty() || kilobytes > MOST_KB || check.waitFor() != 0) {
            throw new IllegalStateException("faults: " + faults);
        }
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
