package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;

/** A ledger's file that was cut, altered, taken away or written by a newer program; backups; deletion for good. */
class DamageTest {

    private static final int LESSONS = 12;

    @TempDir
    private Path folder;

    private LedgerPlace.Folder place;

    @BeforeEach
    void fill() throws Exception {
        place = new LedgerPlace.Folder(folder.resolve("ledger"));
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            for (String name : List.of("Ana Sample", "Bert Uniquename")) {
                Player player = ledger.addPlayer(PlayerDetails.of(Optional.of(name), Handedness.RIGHT));
                for (int i = 0; i < LESSONS / 2; i++) {
                    ledger.keep(
                            player.id(),
                            TestLessons.lesson(name, "notes of " + name + " " + i, 600 + i),
                            TestLessons.findings(5 + i));
                }
            }
        }
    }

    private Path backup() throws LedgerException {
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            return ledger.backUp();
        }
    }

    private void assertDamaged(Path backup, String how) {
        assertThatExceptionOfType(LedgerException.class)
                .as(how)
                .isThrownBy(() -> Ledger.open(place, "bay 1").close())
                .satisfies(e -> {
                    assertThat(e.fault()).isEqualTo(Fault.DAMAGED);
                    assertThat(e.backup()).contains(backup);
                    assertThat(e.getMessage())
                            .startsWith(place.file().toString())
                            .contains("nothing was changed")
                            .contains(backup.toString())
                            .doesNotContain("\n");
                });
    }

    @Test
    void aCutFileIsSaidToBeDamaged() throws Exception {
        Path backup = backup();
        byte[] whole = Files.readAllBytes(place.file());
        for (int length = 0; length < whole.length; length += length < 200 ? 50 : whole.length / 17) {
            byte[] cut = Arrays.copyOf(whole, length);
            Files.write(place.file(), cut);
            assertDamaged(backup, "cut to " + length);
            assertThat(place.file()).as("left for whoever can mend it").hasBinaryContent(cut);
        }
        Files.delete(place.file());
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> Ledger.open(place, "bay 1").close())
                .satisfies(e -> assertThat(e.fault()).isEqualTo(Fault.MISSING))
                .withMessageContaining(backup.toString());
        Ledger.restore(place, backup);
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            assertThat(ledger.find(Search.RECENT)).hasSize(LESSONS);
        }
    }

    /** Flipped bytes: refused on opening, or on reading, or by the check, or what is read is what was written. */
    @Test
    void flippedBytesAreNeverAnEmptyLedger() throws Exception {
        Path backup = backup();
        byte[] whole = Files.readAllBytes(place.file());
        List<LessonFindings> written;
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            written = ledger.acrossLessons(1, Club.DRIVER);
        }
        SplittableRandom random = new SplittableRandom(9);
        int refused = 0;
        for (int round = 0; round < 150; round++) {
            byte[] flipped = whole.clone();
            for (int k = 0; k < 1 << random.nextInt(6); k++) {
                flipped[random.nextInt(flipped.length)] ^= (byte) (1 + random.nextInt(255));
            }
            Files.write(place.file(), flipped);
            Files.deleteIfExists(LedgerFile.log(place.file()));
            Files.deleteIfExists(LedgerFile.index(place.file()));
            try (Ledger ledger = Ledger.open(place, "bay 1")) {
                assertThat(ledger.find(Search.RECENT)).hasSize(LESSONS);
                assertThat(ledger.acrossLessons(1, Club.DRIVER)).hasSameSizeAs(written);
                for (int id = 1; id <= LESSONS; id++) {
                    assertThat(ledger.lesson(id).orElseThrow().lesson().notes())
                            .isEqualTo("notes of " + (id <= LESSONS / 2 ? "Ana Sample " : "Bert Uniquename ")
                                    + (id - 1) % (LESSONS / 2));
                }
            } catch (LedgerException e) {
                refused++;
                assertThat(e.getMessage()).contains("damaged").doesNotContain("\n");
                assertThat(e.fault()).isEqualTo(Fault.DAMAGED);
            }
        }
        assertThat(refused).isGreaterThan(50);
        assertThat(backup).exists();
    }

    @Test
    void aNewerLedgerIsRefusedUntouched() throws Exception {
        try (var connection = Sources.writable(place.file()).getConnection();
                var statement = connection.createStatement()) {
            statement.execute("insert into flyway_schema_history select 99, '7', description, type, script, checksum,"
                    + " installed_by, installed_on, execution_time, success from flyway_schema_history where"
                    + " version = '1'");
        }
        byte[] before = Files.readAllBytes(place.file());
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> Ledger.open(place, "bay 1").close())
                .withMessageContaining("version 7")
                .withMessageContaining("up to " + Schema.LATEST)
                .satisfies(e -> assertThat(e.fault()).isEqualTo(Fault.NEWER));
        assertThat(place.file()).hasBinaryContent(before);
        assertThat(Backups.all(place)).isEmpty();
    }

    /** A backup counts once it was opened and checked; older ones go only after that. */
    @Test
    void backupsAreCheckedBeforeOlderOnesGo() throws Exception {
        for (int i = 0; i < Backups.KEPT + 2; i++) {
            backup();
        }
        List<Path> kept = Backups.all(place);
        assertThat(kept).hasSize(Backups.KEPT);
        assertThat(kept.get(0).getFileName().toString()).isEqualTo("ledger-000007.db");
        byte[] whole = Files.readAllBytes(place.file());
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            byte[] torn = whole.clone();
            Arrays.fill(torn, torn.length / 2, torn.length / 2 + 9000, (byte) 0x5a);
            Files.write(place.file(), torn);
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(ledger::backUp)
                    .satisfies(e -> assertThat(e.fault()).isEqualTo(Fault.DAMAGED));
        }
        assertThat(Backups.all(place)).as("none went, none came").isEqualTo(kept);
        assertOnlyBackupsIn(place.backups());
    }

    private static void assertOnlyBackupsIn(Path backups) throws Exception {
        try (Stream<Path> files = Files.list(backups)) {
            assertThat(files.map(f -> f.getFileName().toString())).allMatch(n -> n.matches("ledger-\\d{6}\\.db"));
        }
    }

    @Test
    void deletedIsGoneFromTheDisk() throws Exception {
        Path clip = Files.writeString(folder.resolve("clip.mp4"), "moving picture");
        Fingerprint fingerprint = Fingerprint.of(clip);
        new Media(place.media()).copyIn(clip, fingerprint);
        Path backup = backup();
        assertThat(holding("Uniquename")).isNotEmpty();
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            ledger.noteClip(LESSONS, org.toeline.mark.View.FACE_ON, fingerprint);
            Path still = Stills.folder(place, LESSONS).resolve("still.png");
            Files.createDirectories(still.getParent());
            Files.writeString(still, "picture of Uniquename");
            Deleted deleted = ledger.deletePlayer(2, OldBackups.KEEP);
            assertThat(deleted).isEqualTo(new Deleted(LESSONS / 2, 1, List.of(backup)));
            assertThat(holding("niquename")).containsExactly(backup);
            assertThat(new Media(place.media()).copyOf(fingerprint)).isEmpty();
            assertThat(ledger.find(Search.text("uni"))).isEmpty();
            assertThat(ledger.find(Search.text("ana"))).hasSize(LESSONS / 2);
            ledger.deleteLesson(1, OldBackups.REPLACE);
            assertThat(ledger.find(Search.text("ana"))).hasSize(LESSONS / 2 - 1);
        }
        assertThat(holding("niquename")).isEmpty();
        assertThat(Backups.all(place)).hasSize(1);
    }

    private List<Path> holding(String text) throws Exception {
        try (Stream<Path> files = Files.walk(place.folder())) {
            return files.filter(Files::isRegularFile)
                    .filter(f -> {
                        try {
                            return new String(Files.readAllBytes(f), StandardCharsets.ISO_8859_1)
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .contains(text.toLowerCase(java.util.Locale.ROOT));
                        } catch (java.io.IOException e) {
                            throw new java.io.UncheckedIOException(e);
                        }
                    })
                    .toList();
        }
    }
}
