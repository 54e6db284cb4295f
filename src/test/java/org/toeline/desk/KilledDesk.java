package org.toeline.desk;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * The desk in a process of its own that is killed, not asked to stop, at a random moment of being marked on; then the
 * document is opened again. {@code KilledDesk 20} kills it twenty times and prints what was missing; the test kills it
 * three times.
 */
final class KilledDesk {

    private static final List<Landmark> ITEMS = MarkOrder.landmarks(View.FACE_ON);
    /** Quicker than a hand, slower than a disk. */
    private static final long BETWEEN_MS = 120;

    /** However busy the machine is. */
    private static final int BEGUN_S = 180;

    private KilledDesk() {}

    /** What one killing left: gestures that were done, and the last of them that the document and the ledger have. */
    record Left(int done, int kept, int inLedger) {}

    public static void main(String[] args) throws Exception {
        if (args.length == 2 && args[0].equals("child")) {
            child(Path.of(args[1]));
            return;
        }
        int times = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        SplittableRandom random = new SplittableRandom(times);
        for (int i = 0; i < times; i++) {
            Path folder = Files.createTempDirectory("killed");
            Left left = kill(folder, 200 + random.nextInt(2500));
            System.out.printf(
                    "killed after gesture %d: the document has %d, the ledger %d%n",
                    left.done, left.kept, left.inLedger);
        }
    }

    /** Starts the desk, lets it be marked on, and kills it so long after the first gesture. */
    static Left kill(Path folder, long afterMs) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dglass.platform=Monocle",
                        "-Dmonocle.platform=Headless",
                        "-Dprism.order=sw",
                        "-Djava.awt.headless=true",
                        "-Dtestfx.headless=true",
                        "-Djava.util.prefs.userRoot=" + folder,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledDesk.class.getName(),
                        "child",
                        folder.toString())
                .redirectError(folder.resolve("desk.txt").toFile())
                .start();
        int done = 0;
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            String line = out.readLine();
            if (line == null) {
                throw new IOException("the desk did not start: " + Files.readString(folder.resolve("desk.txt")));
            }
            done = Integer.parseInt(line);
            Thread killer = new Thread(() -> {
                try {
                    child.waitFor(afterMs, TimeUnit.MILLISECONDS);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                // by its handle: Process.destroyForcibly closes the stream too, in the middle of what is read from it
                child.toHandle().destroyForcibly();
            });
            killer.start();
            for (line = out.readLine(); line != null; line = out.readLine()) {
                done = line.isBlank() ? done : Integer.parseInt(line);
            }
            killer.join();
        }
        child.waitFor();
        return new Left(done, kept(folder), inLedger(folder));
    }

    /** The last gesture that the document tells of: gesture n puts a mark at x = n. */
    private static int kept(Path folder) throws IOException {
        Path file = folder.resolve("lesson.lesson.json");
        if (!Files.exists(file)) {
            return 0;
        }
        try {
            return last(LessonDocument.read(file));
        } catch (org.toeline.ledger.DocumentException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private static int last(Lesson lesson) {
        return lesson.sheet().view(View.FACE_ON).stream()
                .flatMap(v -> v.marks().stream())
                .mapToInt(m -> (int) Math.round(m.at().xPx()))
                .max()
                .orElse(0);
    }

    private static int inLedger(Path folder) throws IOException {
        try (Ledger ledger = Ledger.open(new LedgerPlace.Folder(folder.resolve("ledger")), "afterwards")) {
            int last = 0;
            for (int lesson : ledger.lessonNumbers(Optional.empty())) {
                last = Math.max(last, last(ledger.lesson(lesson).orElseThrow().lesson()));
            }
            return last;
        } catch (LedgerException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    /** Whoever waits for a desk that stands still is told where its threads stand. */
    private static void endIfNot(CountDownLatch begun) throws InterruptedException {
        if (!begun.await(BEGUN_S, TimeUnit.SECONDS)) {
            Thread.getAllStackTraces().forEach((thread, stack) -> {
                System.err.println(thread);
                for (StackTraceElement at : stack) {
                    System.err.println("    at " + at);
                }
            });
            Runtime.getRuntime().halt(3);
        }
    }

    private static void child(Path folder) throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        Sheet[] sheet = new Sheet[1];
        Screens[] screens = new Screens[1];
        Platform.startup(() -> {
            screens[0] = new Screens(folder, Settings.usual(folder.resolve("ledger")));
            sheet[0] = screens[0].sheet();
            new Scene(screens[0].root(), 1200, 800);
            MarkSheet marks =
                    MarkSheet.empty(Handedness.RIGHT, Club.DRIVER).withView(ViewMarks.empty(View.FACE_ON, 1920, 1080));
            sheet[0].model().open(Lesson.of(marks), Optional.of(folder.resolve("lesson.lesson.json")));
            started.countDown();
        });
        endIfNot(started);
        CountDownLatch open = new CountDownLatch(1);
        // answered when the ledger is open, and again when it has rehearsed
        Platform.runLater(() -> screens[0]
                .records()
                .ask(
                        Ledger::isReadOnly,
                        first -> screens[0].records().ask(Ledger::isReadOnly, second -> open.countDown())));
        endIfNot(open);
        // nobody marks in the first second
        Thread.sleep(1500);
        for (int n = 1; n < 1900; n++) {
            int gesture = n;
            CountDownLatch placed = new CountDownLatch(1);
            Platform.runLater(() -> {
                sheet[0].model().select(new Item.OfLandmark(ITEMS.get(gesture % ITEMS.size())));
                sheet[0].model().place(new ImagePoint(gesture, 300 + gesture % 7));
                placed.countDown();
            });
            endIfNot(placed);
            System.out.println(n);
            Thread.sleep(BETWEEN_MS);
        }
    }
}
