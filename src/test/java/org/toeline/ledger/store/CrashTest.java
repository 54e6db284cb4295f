package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Handedness;

/**
 * What is on the disk before every statement of a piece of work is what a program killed there would leave: each is copied, opened
 * as a ledger, and holds what was before or what was after, whole.
 */
class CrashTest {

    /** Of the many statements of a migration, every so many is gone on from. */
    private static final int EVERY = 8;

    @TempDir
    private Path folder;

    private final List<Path> copies = new ArrayList<>();
    private boolean watching;

    private LedgerPlace.Folder place() {
        return new LedgerPlace.Folder(folder.resolve("ledger"));
    }

    private void copy() {
        if (!watching) {
            return;
        }
        Path target = folder.resolve("copy-" + copies.size());
        try (Stream<Path> files = Files.walk(place().folder())) {
            for (Path file : files.sorted().toList()) {
                if (!file.toString().endsWith("-shm")) {
                    Files.copy(file, target.resolve(place().folder().relativize(file)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        copies.add(target);
    }

    private Ledger watched() throws LedgerException {
        return Ledger.open(place(), "bay 1", Clock.systemUTC(), new StatementWatch(this::copy));
    }

    /** Everything the ledger of a copy says, after it was found whole. */
    private static String content(Path copy) throws Exception {
        LedgerPlace.Folder place = new LedgerPlace.Folder(copy);
        StringBuilder content = new StringBuilder();
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            assertThat(ledger.check()).as(copy.toString()).isEmpty();
            ledger.players().forEach(p -> content.append(p).append('\n'));
            for (int id : ledger.lessonNumbers(Optional.empty())) {
                KeptLesson kept = ledger.lesson(id).orElseThrow();
                content.append(id)
                        .append(' ')
                        .append(kept.version())
                        .append(kept.lesson().notes())
                        .append(kept.findings())
                        .append(ledger.takes(id))
                        .append(ledger.find(Search.text("grip")).size())
                        .append('\n');
            }
        }
        try (Stream<Path> files = Files.list(copy)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .as("no stray files")
                    .isSubsetOf("ledger.db", ".ledger.lock", "backups", "media", "stills");
        }
        return content.toString();
    }

    private void assertBeforeOrAfter(String before) throws Exception {
        watching = true;
        copy();
        String after = content(copies.get(copies.size() - 1));
        assertThat(copies).as("statements").hasSizeGreaterThan(5);
        Set<String> seen = new HashSet<>();
        for (Path copy : copies.subList(0, copies.size() - 1)) {
            seen.add(content(copy));
        }
        assertThat(seen).isSubsetOf(before, after).contains(before);
        assertThat(after).isNotEqualTo(before);
    }

    private String start() throws Exception {
        try (Ledger ledger = Ledger.open(place(), "bay 1")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
            ledger.keep(player.id(), TestLessons.lesson("B. Trial"), TestLessons.findings(5));
        }
        watching = true;
        copy();
        watching = false;
        return content(copies.get(0));
    }

    @Test
    void killedWhileSaving() throws Exception {
        String before = start();
        try (Ledger ledger = watched()) {
            watching = true;
            ledger.save(1, 1, TestLessons.lesson("B. Trial", "Other notes", 600), TestLessons.findings(8));
            watching = false;
            assertBeforeOrAfter(before);
        }
    }

    @Test
    void killedWhileTakingIn() throws Exception {
        String before = start();
        try (Ledger ledger = watched()) {
            watching = true;
            ledger.takeIn(TestLessons.lesson("C. Trial"), TestLessons.findings(8), Optional.empty());
            watching = false;
            assertBeforeOrAfter(before);
        }
    }

    @Test
    void killedWhileDeleting() throws Exception {
        String before = start();
        try (Ledger ledger = watched()) {
            watching = true;
            ledger.deletePlayer(1, OldBackups.KEEP, place());
            watching = false;
            assertBeforeOrAfter(before);
        }
    }

    /** An older ledger is brought up to date: killed anywhere, its content is there, and from some point a copy from before. */
    @Test
    void killedWhileItsTablesAreChanged() throws Exception {
        start();
        downgrade();
        assertThat(Schema.version(Sources.writable(place().file()))).hasValue(1);
        int earlier = copies.size();
        watching = true;
        watched().close();
        watching = false;
        List<Path> during = copies.subList(earlier, copies.size());
        assertThat(during).hasSizeGreaterThan(20);
        for (int i = 0; i < during.size(); i++) {
            Path copy = during.get(i);
            int version =
                    Schema.version(Sources.writable(copy.resolve("ledger.db"))).orElseThrow();
            assertThat(version).isIn(1, 3);
            if (version == 2) {
                assertThat(Backups.all(new LedgerPlace.Folder(copy))).hasSize(1);
            }
            if (i % EVERY == 0 || i == during.size() - 1) {
                try (Ledger ledger = Ledger.open(new LedgerPlace.Folder(copy), "bay 1")) {
                    assertThat(ledger.check()).isEmpty();
                    assertThat(ledger.lesson(1).orElseThrow().lesson().notes()).startsWith("Grip");
                }
            }
        }
        Path kept = Backups.all(place()).get(0);
        assertThat(kept.getFileName().toString()).isEqualTo("ledger-000001-before-version-3.db");
        assertThat(Schema.version(Sources.unchanging(kept))).hasValue(1);
    }

    /** Makes the ledger of this test one of version 1. */
    private void downgrade() throws Exception {
        OldTables.backToTheFirst(place());
    }

    @Test
    void killedWhileANewLedgerIsMade() throws Exception {
        Files.createDirectories(place().folder());
        watching = true;
        watched().close();
        watching = false;
        assertThat(copies).hasSizeGreaterThan(20);
        for (Path copy : List.of(
                copies.get(3),
                copies.get(copies.size() / 4),
                copies.get(copies.size() / 2),
                copies.get(copies.size() - 1))) {
            if (Files.exists(copy.resolve("ledger.db"))) {
                assertThat(LedgerFile.thoroughFault(Sources.writable(copy.resolve("ledger.db"))))
                        .as("there only when it is whole")
                        .isEmpty();
            }
            assertThat(content(copy)).isEmpty();
        }
    }
}
