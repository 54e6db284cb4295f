package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.place.FirstStart;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Saved;

/**
 * A program of its own that works on a ledger and may be killed. {@code save FOLDER LESSON TIMES}: saves a lesson again and
 * again, printing each version once it is kept. {@code migrate FOLDER N}: opens the ledger and dies before its Nth statement.
 * {@code claim FOLDER}: claims the folder and waits. {@code backup FOLDER TIMES}.
 */
final class LedgerChild {

    private LedgerChild() {}

    public static void main(String[] args) throws Exception {
        LedgerPlace.Folder place = new LedgerPlace.Folder(Path.of(args[1]));
        switch (args[0]) {
            case "save" -> save(place, Integer.parseInt(args[2]), Integer.parseInt(args[3]));
            case "migrate" -> migrate(place, Integer.parseInt(args[2]));
            case "claim" -> claim(place);
            case "backup" -> backUp(place, Integer.parseInt(args[2]));
            default -> throw new IllegalArgumentException(args[0]);
        }
    }

    private static void save(LedgerPlace.Folder place, int lessonId, int times) throws LedgerException {
        try (Ledger ledger = Ledger.open(place, "child")) {
            KeptLesson kept = ledger.lesson(lessonId).orElseThrow();
            int version = kept.version();
            for (int i = 0; i < times; i++) {
                Lesson next = kept.lesson().withNotes("version " + (version + 1));
                Saved saved = ledger.save(lessonId, version, next, TestLessons.findings(version + 1));
                version = ((Saved.Done) saved).version();
                System.out.println(version);
            }
        }
    }

    private static void migrate(LedgerPlace.Folder place, int dieAt) throws LedgerException {
        AtomicInteger statements = new AtomicInteger();
        Ledger.open(place, "child", java.time.Clock.systemUTC(), new StatementWatch(() -> {
                    if (statements.incrementAndGet() == dieAt) {
                        Runtime.getRuntime().halt(9);
                    }
                }))
                .close();
        System.out.println(statements.get());
    }

    private static void claim(LedgerPlace.Folder place) throws IOException {
        System.out.println(
                FirstStart.claim(
                                        place.folder(),
                                        Optional.empty(),
                                        file -> System.out.println(
                                                "shown" + file.map(f -> " " + f).orElse("")))
                                .isPresent()
                        ? "first"
                        : "second");
        System.in.read();
    }

    private static void backUp(LedgerPlace.Folder place, int times) throws LedgerException {
        try (Ledger ledger = Ledger.open(place, "child", java.time.Clock.systemUTC(), UnaryOperator.identity())) {
            System.out.println("open");
            for (int i = 0; i < times; i++) {
                System.out.println(ledger.backUp());
            }
        }
    }

    /** Starts it. */
    static Process start(Object... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx200m",
                "-cp",
                System.getProperty("java.class.path"),
                LedgerChild.class.getName()));
        for (Object arg : args) {
            command.add(arg.toString());
        }
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
