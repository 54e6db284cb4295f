package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.apache.commons.io.file.PathUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Saved;

/**
 * Bays that take in and save on one server, all processes of which are killed again and again while they do. Whoever is told
 * that it failed asks again, as a program does with what waits; at the end everything is there, and nothing twice.
 */
class KilledServerTest {

    /** So many bays take in the same documents, and each saves after it. */
    private static final int SAME = 2;

    /** A server that is not up by then will not come up. */
    private static final int MOST_S = 120;

    @Test
    void nothingIsLostAndNothingTwice(@TempDir Path folder) throws Exception {
        Outcome outcome = run(folder, 6, 6, 3, 5);
        assertThat(outcome.wrong()).isEmpty();
        assertThat(outcome.kills()).as("the server was killed").isPositive();
    }

    /** @param cut calls that were under way when the server was killed, as they were told */
    private record Outcome(int documents, int saves, int kills, int cut, List<String> wrong) {}

    private static final class Server {

        private final EmbeddedPostgres first;
        private final Path data;
        private final List<String> command;
        private ProcessHandle running;

        Server(Path data) throws IOException {
            this.data = data;
            this.first = EmbeddedPostgres.builder()
                    .setPGStartupWait(Duration.ofSeconds(90))
                    .setDataDirectory(data)
                    // processes are killed, not the machine
                    .setServerConfig("fsync", "off")
                    .start();
            this.running = ProcessHandle.of(Long.parseLong(
                            Files.readAllLines(data.resolve("postmaster.pid")).get(0)))
                    .orElseThrow();
            // the server does not run as root, and the library that starts it first gets round that so
            this.command = new ArrayList<>(
                    System.getProperty("user.name").equals("root") ? List.of("unshare", "-U") : List.of());
            command.add(running.info().command().orElseThrow());
            command.addAll(List.of(running.info().arguments().orElseThrow()));
        }

        LedgerPlace.Server place() {
            return new LedgerPlace.Server(first.getJdbcUrl("postgres", "postgres"), "postgres", "");
        }

        /** All of its processes at once, and up again, as a machine's keeper of services does. */
        void killAndStart() throws Exception {
            kill();
            long most = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_S);
            while (!answers()) {
                assertThat(System.nanoTime()).as("the server answers again").isLessThan(most);
                if (!running.isAlive()) {
                    running = new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(data.resolveSibling("server.log").toFile())
                            .start()
                            .toHandle();
                }
                Thread.sleep(100);
            }
        }

        private boolean answers() {
            try {
                DataSource source = first.getPostgresDatabase();
                source.setLoginTimeout(5);
                try (Connection connection = source.getConnection()) {
                    return connection.isValid(2);
                }
            } catch (SQLException e) {
                return false;
            }
        }

        private void kill() throws Exception {
            List<ProcessHandle> all = new ArrayList<>(running.descendants().toList());
            all.add(0, running);
            all.forEach(ProcessHandle::destroyForcibly);
            for (ProcessHandle one : all) {
                one.onExit().get(MOST_S, TimeUnit.SECONDS);
            }
            Files.deleteIfExists(data.resolve("postmaster.pid"));
        }

        void close() throws Exception {
            kill();
            first.close();
        }
    }

    private static Outcome run(Path folder, int bays, int documentsEach, int kills, long seed) throws Exception {
        Server server = new Server(folder.resolve("data"));
        AtomicInteger cut = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        ExecutorService threads = Executors.newFixedThreadPool(bays);
        try {
            Ledger.open(server.place(), "first").close();
            List<Future<Void>> work = new ArrayList<>();
            for (int bay = 0; bay < bays; bay++) {
                int number = bay;
                work.add(threads.submit(new Bay(server, number, documentsEach, cut, done)));
            }
            Random random = new Random(seed);
            int killed = 0;
            while (killed < kills && done.get() < bays) {
                Thread.sleep(200 + random.nextInt(900));
                server.killAndStart();
                killed++;
            }
            for (Future<Void> one : work) {
                one.get();
            }
            return new Outcome(
                    bays / SAME * documentsEach,
                    bays * documentsEach,
                    killed,
                    cut.get(),
                    wrong(server.place(), bays, documentsEach));
        } finally {
            threads.shutdownNow();
            server.close();
        }
    }

    private static String name(int bay, int document) {
        return "P" + bay / SAME + "D" + document;
    }

    private static String letter(int bay) {
        return "[" + bay + "]";
    }

    /** Takes in its documents, which another bay takes in as well, and notes a letter of its own in each. */
    private record Bay(Server server, int number, int documents, AtomicInteger cut, AtomicInteger done)
            implements Callable<Void> {

        private interface Work<T> {
            T on(Ledger ledger) throws LedgerException;
        }

        @Override
        public Void call() throws Exception {
            for (int i = 0; i < documents; i++) {
                String name = name(number, i);
                int id = insistent(l -> l.takeIn(TestLessons.lesson(name), List.of(), Optional.empty())
                        .lessonId());
                while (!insistent(l -> noted(l, id))) {
                    Thread.onSpinWait();
                }
            }
            done.incrementAndGet();
            return null;
        }

        /** @return whether the letter stands there, be it that an earlier call had put it there and was cut before it could say so */
        private boolean noted(Ledger ledger, int id) throws LedgerException {
            KeptLesson now = ledger.lesson(id).orElseThrow();
            String notes = now.lesson().notes();
            return notes.contains(letter(number))
                    || ledger.save(id, now.version(), now.lesson().withNotes(notes + letter(number)), List.of())
                            instanceof Saved.Done;
        }

        private <T> T insistent(Work<T> work) throws Exception {
            LedgerException last = null;
            for (int i = 0; i < 400; i++) {
                try (Ledger ledger = Ledger.open(server.place(), "bay " + number)) {
                    return work.on(ledger);
                } catch (LedgerException e) {
                    last = e;
                    cut.incrementAndGet();
                    Thread.sleep(100);
                }
            }
            throw new IllegalStateException("the server did not come back", last);
        }
    }

    private static List<String> wrong(LedgerPlace place, int bays, int documents) throws LedgerException {
        List<String> wrong = new ArrayList<>();
        try (Ledger ledger = Ledger.open(place, "last")) {
            List<Integer> numbers = ledger.lessonNumbers(Optional.empty());
            int expected = bays / SAME * documents;
            if (numbers.size() != expected) {
                wrong.add(numbers.size() + " lessons for " + expected);
            }
            if (ledger.players().size() != expected) {
                wrong.add(ledger.players().size() + " players for " + expected);
            }
            for (int id : numbers) {
                KeptLesson kept = ledger.lesson(id).orElseThrow();
                String notes = kept.lesson().notes();
                if (notes.chars().filter(c -> c == '[').count() != SAME || kept.version() != 1 + SAME) {
                    wrong.add("lesson " + id + " of version " + kept.version() + " has “" + notes + "”");
                }
            }
            ledger.check().ifPresent(wrong::add);
        }
        return wrong;
    }

    /** Arguments: bays, documents of each, kills. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("killed-server");
        Outcome outcome = run(
                new File(folder.toFile(), "run").toPath(),
                Integer.parseInt(args[0]),
                Integer.parseInt(args[1]),
                Integer.parseInt(args[2]),
                17);
        outcome.wrong.forEach(System.out::println);
        System.out.printf(
                "%d documents taken in by %d bays each, %d saves, %d kills of the server, %d calls cut, %d wrong%n",
                outcome.documents, SAME, outcome.saves, outcome.kills, outcome.cut, outcome.wrong.size());
        PathUtils.deleteDirectory(folder);
        System.exit(outcome.wrong.isEmpty() ? 0 : 1);
    }
}
