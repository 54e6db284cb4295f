package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.exchange.LessonArchive;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** Nobody is shown another player's picture, and what is deleted is gone. */
class PrivacyTest {

    @TempDir
    private Path folder;

    private LedgerPlace.Folder place;

    @BeforeEach
    void place() {
        place = new LedgerPlace.Folder(folder.resolve("ledger"));
    }

    private Ledger open() throws LedgerException {
        return Ledger.open(place, "bay 1");
    }

    private static KeptLesson keep(Ledger ledger, String player) throws LedgerException {
        int id = ledger.addPlayer(PlayerDetails.of(Optional.of(player), Handedness.RIGHT))
                .id();
        return ledger.keep(id, TestLessons.lesson(player), TestLessons.findings(9));
    }

    private Path picture(KeptLesson kept, String of) throws IOException {
        Path still = Stills.folder(place, kept.identity()).resolve("still-1.png");
        Files.createDirectories(still.getParent());
        return Files.writeString(still, "picture of " + of);
    }

    @Test
    void aNumberThatComesAgainBringsNoPictureAlong() throws Exception {
        Path backup;
        try (Ledger ledger = open()) {
            keep(ledger, "A. Sample");
            backup = ledger.backUp();
            picture(keep(ledger, "B. Trial"), "B. Trial");
        }
        Ledger.restore(place, backup);
        try (Ledger ledger = open()) {
            KeptLesson second = keep(ledger, "C. Other");
            assertThat(second.id()).as("the number of B. Trial's").isEqualTo(2);
            assertThat(Stills.of(place, second.identity())).isEmpty();
        }
    }

    @Test
    void anArchiveKeepsTheIdentityAndGivesItToNobodyElse() throws Exception {
        Path archive = folder.resolve("a.zip");
        Path false_ = folder.resolve("b.zip");
        KeptLesson kept;
        try (Ledger ledger = open()) {
            kept = keep(ledger, "A. Sample");
            Path still = picture(kept, "A. Sample");
            LessonArchive.write(kept.lesson(), kept.identity(), kept.findings(), Map.of(), List.of(still), archive);
            Lesson other = TestLessons.lesson("B. Trial");
            LessonArchive.write(other, kept.identity(), kept.findings(), Map.of(), List.of(), false_);
            int id = new LessonImport(ledger, place, l -> List.of())
                    .take(false_, Optional.empty())
                    .lessonId();
            KeptLesson taken = ledger.lesson(id).orElseThrow();
            assertThat(taken.identity()).isNotEqualTo(kept.identity());
            assertThat(Stills.of(place, taken.identity())).isEmpty();
        }
        LedgerPlace.Folder elsewhere = new LedgerPlace.Folder(folder.resolve("elsewhere"));
        try (Ledger ledger = Ledger.open(elsewhere, "bay 2")) {
            keep(ledger, "C. Other");
            int id = new LessonImport(ledger, elsewhere, l -> List.of())
                    .take(archive, Optional.empty())
                    .lessonId();
            assertThat(ledger.lesson(id).orElseThrow().identity()).isEqualTo(kept.identity());
            assertThat(Stills.of(elsewhere, kept.identity())).hasSize(1);
        }
    }

    @Test
    void whatHindersADeletionHindersItNoLongerThanThat() throws Exception {
        Path clip = Files.writeString(folder.resolve("clip.mp4"), "moving picture");
        Fingerprint fingerprint = Fingerprint.of(clip);
        Path aside;
        try (Ledger ledger = open()) {
            KeptLesson kept = keep(ledger, "Uniquename");
            new Media(place.media()).copyIn(clip, fingerprint);
            ledger.noteClip(kept.id(), View.FACE_ON, fingerprint);
            picture(kept, "Uniquename");
            ledger.backUp();
        }
        aside = Ledger.restore(place, Ledger.backups(place).get(0)).orElseThrow();
        assertThat(holding("Uniquename")).contains(aside);
        try (Ledger ledger = open();
                var reader = Sources.writable(place.file()).getConnection()) {
            reader.createStatement().execute("begin deferred");
            reader.createStatement().executeQuery("select count(*) from lesson").next();
            Deleted deleted = ledger.deletePlayer(1, OldBackups.REPLACE, place);
            assertThat(deleted.unfinished()).as("somebody reads").isPresent();
        }
        open().close();
        assertThat(holding("niquename")).as("taken up at the next start").isEmpty();
        assertThat(holding("moving picture")).isEmpty();
        assertThat(aside).doesNotExist();
        try (Ledger ledger = open()) {
            assertThat(ledger.check()).isEmpty();
        }
    }

    private List<Path> holding(String text) throws IOException {
        try (Stream<Path> files = Files.walk(place.folder())) {
            return files.filter(Files::isRegularFile)
                    .filter(f -> {
                        try {
                            return new String(Files.readAllBytes(f), StandardCharsets.ISO_8859_1).contains(text);
                        } catch (IOException e) {
                            throw new java.io.UncheckedIOException(e);
                        }
                    })
                    .toList();
        }
    }

    @Test
    void aRestoreNeedsTheLedgerToItselfAndSaysWhatIsNoBackup() throws Exception {
        Path backup;
        try (Ledger ledger = open()) {
            keep(ledger, "A. Sample");
            backup = ledger.backUp();
            assertThatThrownBy(() -> Ledger.restore(place, backup))
                    .hasMessageContaining("process " + ProcessHandle.current().pid());
        }
        byte[] before = Files.readAllBytes(place.file());
        Path junk = Files.writeString(folder.resolve("junk.db"), "no ledger ".repeat(99));
        assertThatThrownBy(() -> Ledger.restore(place, junk)).hasMessageContaining("junk.db is no backup");
        assertThat(Files.readAllBytes(place.file())).isEqualTo(before);
    }

    @Test
    void aRestoreThatWasStoppedIsBroughtToItsEnd() throws Exception {
        Path backup;
        try (Ledger ledger = open()) {
            keep(ledger, "A. Sample");
            backup = ledger.backUp();
            keep(ledger, "B. Trial");
        }
        Files.copy(backup, place.folder().resolve(".ledger-restored-1.db"));
        try (Ledger ledger = open()) {
            assertThat(ledger.players()).as("without the journal: the old one").hasSize(2);
        }
        Files.copy(backup, place.folder().resolve(".ledger-restored-2.db"));
        Files.writeString(place.folder().resolve(".restoring"), ".ledger-restored-2.db");
        Files.writeString(place.folder().resolve("ledger.db-wal"), "what the old file's log held");
        try (Ledger ledger = open()) {
            assertThat(ledger.players()).as("with it: the new one").hasSize(1);
            assertThat(ledger.check()).isEmpty();
        }
        try (Stream<Path> files = Files.list(place.folder())) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .noneMatch(n -> n.startsWith(".ledger-restored") || n.equals(".restoring"));
        }
    }

    @Test
    void anAlteredRowIsFoundOut() throws Exception {
        for (String altered : List.of(
                "update finding set value = value + 100",
                "update finding set verdict = 'in-range'",
                "update lesson set notes = 'other'",
                "update take set path = 'other.mp4'",
                "update lesson set player_id = 2",
                "delete from finding where line = 1")) {
            place = new LedgerPlace.Folder(folder.resolve("ledger-" + altered.hashCode()));
            try (Ledger ledger = open()) {
                keep(ledger, "A. Sample");
                ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
                try (var connection = Sources.writable(place.file()).getConnection();
                        var statement = connection.createStatement()) {
                    statement.execute(altered);
                }
                assertThat(ledger.check()).as(altered).isPresent();
                assertThatThrownBy(() -> ledger.lesson(1)).as(altered).isInstanceOf(LedgerException.class);
            }
        }
    }

    @Test
    void lessonsBegunAtTheDeskAreNeverOneAnother() throws Exception {
        try (Ledger ledger = open()) {
            Lesson lesson = TestLessons.lesson("A. Sample");
            int first = ledger.begin(lesson, Optional.empty()).id();
            assertThat(ledger.begin(lesson, Optional.empty()).id()).isNotEqualTo(first);
            assertThat(ledger.players()).hasSize(1);
        }
    }
}
