package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.place.FirstStart;
import org.toeline.ledger.store.place.LedgerFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.mark.Handedness;

/** Programs of their own on one ledger: several at once, and killed while they work. */
class ProcessesTest {

    @TempDir
    private Path folder;

    private LedgerPlace.Folder place;

    @BeforeEach
    void fill() throws Exception {
        place = new LedgerPlace.Folder(folder.resolve("ledger"));
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
            ledger.keep(player.id(), TestLessons.lesson("B. Trial"), TestLessons.findings(1));
            ledger.keep(player.id(), TestLessons.lesson("B. Trial", "second", 600), TestLessons.findings(1));
        }
    }

    /** Killed after so many saves: what was said to be kept is kept, or one more; never a mix. */
    @Test
    void aKilledProgramLosesAtMostTheLastGesture() throws Exception {
        SplittableRandom random = new SplittableRandom(2);
        for (int round = 0; round < 3; round++) {
            killedOnce(place, 5 + random.nextInt(20));
        }
    }

    /** @param afterSaves the kill comes right after this many were said to be kept */
    static void killedOnce(LedgerPlace.Folder place, int afterSaves) throws Exception {
        Process child = LedgerChild.start("save", place.folder(), 1, 100_000);
        int said = 0;
        try (BufferedReader out = child.inputReader()) {
            for (int i = 0; i < afterSaves; i++) {
                said = Integer.parseInt(out.readLine());
            }
            child.toHandle().destroyForcibly();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                said = Integer.parseInt(line);
            }
        }
        assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            assertThat(ledger.check()).isEmpty();
            KeptLesson kept = ledger.lesson(1).orElseThrow();
            assertThat(kept.version()).isBetween(said, said + 1);
            assertThat(kept.lesson().notes()).isEqualTo("version " + kept.version());
            assertThat(kept.findings()).isEqualTo(TestLessons.findings(kept.version()));
        }
    }

    @Test
    void twoProgramsWriteOneLedger() throws Exception {
        int times = 60;
        Process child = LedgerChild.start("save", place.folder(), 1, times);
        try (Ledger ledger = Ledger.open(place, "bay 1");
                BufferedReader out = child.inputReader()) {
            assertThat(out.readLine()).isEqualTo("2");
            for (int version = 1; version <= times; version++) {
                assertThat(ledger.save(2, version, TestLessons.lesson("B. Trial", "mine " + version, 600), List.of()))
                        .isEqualTo(new Saved.Done(version + 1));
            }
            assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(child.exitValue()).isZero();
            assertThat(ledger.lesson(1).orElseThrow().version()).isEqualTo(times + 1);
            assertThat(ledger.lesson(2).orElseThrow().version()).isEqualTo(times + 1);
            assertThat(ledger.check()).isEmpty();
        }
    }

    @Test
    void aBackupThatIsKilledLeavesTheOlderOne() throws Exception {
        Path older;
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            older = ledger.backUp();
        }
        Process child = LedgerChild.start("backup", place.folder(), 1000);
        try (BufferedReader out = child.inputReader()) {
            assertThat(out.readLine()).isEqualTo("open");
            child.toHandle().destroyForcibly();
        }
        assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(older).exists();
        for (Path backup : Backups.all(place)) {
            assertThat(LedgerFile.thoroughFault(Sources.unchanging(backup))).isEmpty();
        }
        try (Ledger ledger = Ledger.open(place, "bay 1");
                var files = Files.list(place.backups())) {
            ledger.backUp();
            assertThat(files.map(f -> f.getFileName().toString())).allMatch(n -> n.startsWith("ledger-"));
        }
    }

    @Test
    void killedDuringAChangeOfTables() throws Exception {
        OldTables.backToTheFirst(place);
        for (int dieAt : new int[] {3, 12}) {
            Process child = LedgerChild.start("migrate", place.folder(), dieAt);
            assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(child.exitValue()).as("killed").isEqualTo(9);
            assertThat(Schema.version(Sources.writable(place.file())).orElseThrow())
                    .isIn(1, 3);
        }
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            assertThat(ledger.check()).isEmpty();
            assertThat(ledger.lesson(1)).isPresent();
        }
        assertThat(Schema.version(Sources.writable(place.file()))).hasValue(Schema.LATEST);
        assertThat(Backups.all(place)).isNotEmpty();
    }

    /** A second start asks the first to show itself; a dead one's claim is taken over. */
    @Test
    void onlyTheFirstDeskStays() throws Exception {
        Path desk = folder.resolve("desk");
        Process first = LedgerChild.start("claim", desk);
        try (BufferedReader out = first.inputReader()) {
            assertThat(out.readLine()).isEqualTo("first");
            assertThat(FirstStart.claim(desk, Optional.empty(), f -> {}))
                    .as("taken")
                    .isEmpty();
            assertThat(out.readLine()).as("the first was asked").isEqualTo("shown");
            Path lesson = folder.resolve("Jörg.lesson.json");
            assertThat(FirstStart.claim(desk, Optional.of(lesson), f -> {})).isEmpty();
            assertThat(out.readLine()).as("the first was asked to open it").isEqualTo("shown " + lesson);
            first.toHandle().destroyForcibly();
            assertThat(first.waitFor(60, TimeUnit.SECONDS)).isTrue();
        }
        CountDownLatch shown = new CountDownLatch(1);
        try (FirstStart mine =
                FirstStart.claim(desk, Optional.empty(), f -> shown.countDown()).orElseThrow()) {
            knock(desk, "POST / HTTP/1.1\n/etc/hostname\n");
            assertThat(shown.getCount()).as("who does not know the word").isEqualTo(1);
            assertThat(FirstStart.claim(desk, Optional.empty(), f -> {})).isEmpty();
            assertThat(shown.await(10, TimeUnit.SECONDS)).isTrue();
            assertThat(mine).isNotNull();
        }
        FirstStart.claim(desk, Optional.empty(), f -> {}).orElseThrow().close();
    }

    /** As any program on the machine could, a page in a browser too; returns when it was answered. */
    private static void knock(Path desk, String words) throws IOException {
        int port =
                Integer.parseInt(Files.readAllLines(desk.resolve(".desk.port")).get(0));
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.getOutputStream().write(words.getBytes(StandardCharsets.UTF_8));
            socket.shutdownOutput();
            assertThat(socket.getInputStream().read()).isEqualTo(-1);
        }
    }
}
