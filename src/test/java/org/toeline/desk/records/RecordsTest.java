package org.toeline.desk.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.advice.RangeBook;
import org.toeline.desk.work.Report;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** The desk's lessons in a real ledger that another bay has open too. */
@ExtendWith(ApplicationExtension.class)
class RecordsTest {

    private static final Lesson FIRST =
            Lesson.of(MarkSheet.empty(Handedness.LEFT, Club.DRIVER).withView(ViewMarks.empty(View.FACE_ON, 1280, 720)));

    /** A hand rests sooner, and its findings are stated by then. */
    private static final long PAST_REST_MS = 900;

    @TempDir
    private Path folder;

    private final List<String> said = new CopyOnWriteArrayList<>();
    private final List<Saved.Conflict> conflicts = new CopyOnWriteArrayList<>();
    private final List<Records> open = new ArrayList<>();

    private Records records(Path where) throws Exception {
        Records records = new Records(Settings.usual(where).withBay("bay 1"), RangeBook::shipped, said::add);
        records.listen(new Records.Listener() {
            @Override
            public void changed() {
                // only conflicts are of interest
            }

            @Override
            public void conflict(Saved.Conflict conflict) {
                conflicts.add(conflict);
            }
        });
        open.add(records);
        until(() -> records.keeps() || records.failed());
        return records;
    }

    @AfterEach
    void close() {
        open.forEach(Records::close);
    }

    private static void until(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, condition);
    }

    private Ledger other() throws Exception {
        return Ledger.open(Settings.usual(folder).place(), "bay 2");
    }

    private Lesson kept(int id) throws Exception {
        try (Ledger ledger = other()) {
            return ledger.lesson(id).orElseThrow().lesson();
        }
    }

    private static int first(Records records, Lesson lesson) throws Exception {
        records.keep(lesson);
        until(() -> records.lessonId().isPresent());
        return records.lessonId().getAsInt();
    }

    @Test
    void aQuestionThatFailsInAWayNobodyThoughtOfIsSaid() throws Exception {
        Records records = records(folder);
        records.ask(
                ledger -> {
                    throw new AssertionError("a broken promise");
                },
                answer -> {});
        until(() -> said.stream().anyMatch(s -> s.contains("a broken promise")));
    }

    @Test
    void aPlaceThatFailsInAWayNobodyThoughtOfIsSaid() throws Exception {
        Path gone;
        try (FileSystem archive = FileSystems.newFileSystem(folder.resolve("a.zip"), Map.of("create", "true"))) {
            gone = archive.getPath("ledger");
        }
        Records records = records(gone);
        assertThat(records.failed()).isTrue();
        until(() -> !said.isEmpty());
        records.ask(ledger -> "", answer -> {});
        until(() -> said.size() == 2);
        assertThat(said).allMatch(s -> s.contains("Closed"));
    }

    @Test
    void aLessonGetsItsPlaceWithItsFirstMark() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        records.keep(FIRST.withNotes("ball back"));
        until(() -> kept(id).notes().equals("ball back"));
        try (Ledger ledger = other()) {
            Player nobody = ledger.player(records.playerId().orElseThrow()).orElseThrow();
            assertThat(nobody.details())
                    .as("nobody named yet")
                    .isEqualTo(PlayerDetails.of(Optional.empty(), Handedness.LEFT));
        }
    }

    /** Whoever opens it while its findings are still to be stated is no other bay. */
    @Test
    void aLessonOpenedAgainAtOnceIsNotChangedByAnotherBay() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        for (int i = 0; i < 3; i++) {
            String note = "note " + i;
            records.keep(FIRST.withNotes(note));
            List<KeptLesson> read = new CopyOnWriteArrayList<>();
            records.ask(l -> l.lesson(id).orElseThrow(), kept -> {
                records.opened(kept);
                read.add(kept);
            });
            until(() -> !read.isEmpty());
            TimeUnit.MILLISECONDS.sleep(PAST_REST_MS);
            records.keep(FIRST.withNotes(note + ", changed"));
            until(() -> !records.waits());
            TimeUnit.MILLISECONDS.sleep(PAST_REST_MS);
            assertThat(kept(id).notes()).isEqualTo(note + ", changed");
            try (Ledger ledger = other()) {
                assertThat(ledger.asides(id)).isEmpty();
            }
        }
        assertThat(conflicts).isEmpty();
    }

    @Test
    void theLastChangeOfALessonIsKeptThoughAnotherIsOpened() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        records.keep(FIRST.withNotes("last word"));
        records.fresh(OptionalInt.empty());
        records.keep(FIRST.withNotes("another lesson"));
        until(() -> records.lessonId().isPresent());
        assertThat(records.lessonId()).isNotEqualTo(OptionalInt.of(id));
        assertThat(kept(id).notes()).isEqualTo("last word");
    }

    @Test
    void givenToAPlayerItLeavesNobodyBehind() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        int nobody = records.playerId().orElseThrow();
        Player player;
        try (Ledger ledger = other()) {
            player = ledger.addPlayer(PlayerDetails.of(Optional.of("C. Trial"), Handedness.LEFT));
        }
        records.give(player, p -> {});
        until(() -> records.playerId().equals(OptionalInt.of(player.id())));
        records.keep(FIRST.withNotes("after"));
        until(() -> kept(id).notes().equals("after"));
        assertThat(kept(id).playerName()).contains("C. Trial");
        assertThat(conflicts).as("giving it away is no other bay's change").isEmpty();
        try (Ledger ledger = other()) {
            assertThat(ledger.player(nobody))
                    .as("a player without a name and without a lesson")
                    .isEmpty();
        }
    }

    @Test
    void whatAnotherBayChangedStandsUntilTheCoachHasChosen() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        try (Ledger ledger = other()) {
            until(() -> !ledger.lesson(id).orElseThrow().findings().isEmpty()
                    || ledger.lesson(id).orElseThrow().version() > 1);
            KeptLesson theirs = ledger.lesson(id).orElseThrow();
            assertThat(ledger.save(id, theirs.version(), theirs.lesson().withNotes("theirs"), theirs.findings()))
                    .isInstanceOf(Saved.Done.class);
            records.keep(FIRST.withNotes("mine, first"));
            records.keep(FIRST.withNotes("mine"));
            // the latest is written before the one before it is dropped
            until(() -> !conflicts.isEmpty()
                    && ledger.asides(id).stream()
                            .map(a -> a.lesson().notes())
                            .toList()
                            .equals(List.of("mine")));
            assertThat(kept(id).notes()).isEqualTo("theirs");
            assertThat(conflicts.get(0).sentence())
                    .startsWith("changed by bay 2 at ")
                    .endsWith("yours is kept beside it");

            records.keepOwn(conflicts.get(conflicts.size() - 1), FIRST.withNotes("mine"));
            until(() -> kept(id).notes().equals("mine") && ledger.asides(id).isEmpty());
        }
    }

    @Test
    void whatAnotherBayDeletedIsKeptAsANewLesson() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        try (Ledger ledger = other()) {
            ledger.deleteLesson(id, OldBackups.KEEP, new org.toeline.ledger.store.place.LedgerPlace.Folder(folder));
        }
        records.keep(FIRST.withNotes("still here"));
        until(() -> records.lessonId().isPresent() && !records.lessonId().equals(OptionalInt.of(id)));
        assertThat(kept(records.lessonId().getAsInt()).notes()).isEqualTo("still here");
        until(() -> said.stream().anyMatch(s -> s.contains("deleted meanwhile")));
    }

    @Test
    void aLedgerThatCannotBeOpenedIsSaid() throws Exception {
        Path file = Files.writeString(folder.resolve("a-file"), "not a folder");
        Records records = records(file.resolve("ledger"));
        assertThat(records.keeps()).isFalse();
        until(() -> said.stream()
                .anyMatch(s -> s.startsWith("The ledger could not be opened; lessons are kept as documents")));
        records.keep(FIRST);
        records.ask(Ledger::players, p -> said.add("answered"));
        until(() -> said.size() >= 2);
        assertThat(said).doesNotContain("answered");
    }

    @Test
    void whatWaitsIsWrittenBeforeItCloses() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        records.keep(FIRST.withNotes("on the way out"));
        records.close();
        open.clear();
        assertThat(kept(id).notes()).isEqualTo("on the way out");
        try (Ledger ledger = other()) {
            assertThat(ledger.lesson(id).orElseThrow().findings())
                    .as("stated on the way out")
                    .isEqualTo(org.toeline.across.StatedFindings.of(FIRST));
        }
    }

    /**
     * The lesson that was on the desk has the number and version of another one in the ledger that comes back: nothing of it may get
     * there.
     */
    @Test
    void aBackupTakesThePlaceOfTheLedgerAndNothingOfTheOldOneFollows() throws Exception {
        Records records = records(folder);
        Path backup;
        try (Ledger ledger = other()) {
            Player ana = ledger.addPlayer(PlayerDetails.of(Optional.of("Ana"), Handedness.LEFT));
            ledger.keep(ana.id(), FIRST.withNotes("of the backup"), List.of());
            backup = ledger.backUp();
            ledger.deleteLesson(1, OldBackups.KEEP, new org.toeline.ledger.store.place.LedgerPlace.Folder(folder));
        }
        int id = first(records, FIRST.withNotes("of the ledger that goes"));
        records.keep(FIRST.withNotes("its last word"));
        records.fresh(OptionalInt.empty());
        List<Optional<Path>> aside = new CopyOnWriteArrayList<>();
        records.restore(backup, aside::add);
        until(() -> !aside.isEmpty() && records.keeps());
        // longer than a hand rests before findings are stated
        Thread.sleep(1200);
        try (Ledger ledger = other()) {
            assertThat(ledger.lessonNumbers(Optional.empty())).containsExactly(1);
            assertThat(ledger.lesson(1).orElseThrow().lesson().notes()).isEqualTo("of the backup");
            assertThat(ledger.check()).isEmpty();
        }
        records.keep(FIRST.withNotes("begun afterwards"));
        until(() -> records.lessonId().isPresent());
        assertThat(kept(records.lessonId().getAsInt()).notes()).isEqualTo("begun afterwards");
        Path was = Files.createDirectories(folder.resolve("was")).resolve("ledger.db");
        Files.copy(aside.get(0).orElseThrow(), was);
        Path log = Path.of(aside.get(0).orElseThrow() + "-wal");
        if (Files.exists(log)) {
            Files.copy(log, Path.of(was + "-wal"));
        }
        try (Ledger old = Ledger.open(Settings.usual(was.getParent()).place(), "look")) {
            assertThat(old.lesson(id).orElseThrow().lesson().notes()).isEqualTo("its last word");
        }
    }

    /** A sentence that stands until it is over has to be over some time. */
    @Test
    void aLedgerThatIsOpenAgainIsNoLongerSaidNotToOpen() throws Exception {
        Path backup;
        try (Ledger ledger = other()) {
            Player ana = ledger.addPlayer(PlayerDetails.of(Optional.of("Ana"), Handedness.LEFT));
            ledger.keep(ana.id(), FIRST, List.of());
            backup = ledger.backUp();
        }
        Files.writeString(folder.resolve("ledger.db"), "this is no ledger any more");
        Map<Report.Trouble, String> troubles = new ConcurrentHashMap<>();
        Records records = new Records(Settings.usual(folder).withBay("bay 1"), RangeBook::shipped, new Report() {
            @Override
            public void accept(String sentence) {
                said.add(sentence);
            }

            @Override
            public void lasting(Trouble trouble, String sentence) {
                troubles.put(trouble, sentence);
            }
        });
        open.add(records);
        until(records::failed);
        until(() -> !troubles.getOrDefault(Report.Trouble.NO_LEDGER, "").isEmpty());
        assertThat(troubles.get(Report.Trouble.NO_LEDGER)).containsOnlyOnce("the newest backup is");
        List<Optional<Path>> aside = new CopyOnWriteArrayList<>();
        records.restore(backup, aside::add);
        until(() -> !aside.isEmpty() && records.keeps());
        assertThat(troubles).containsEntry(Report.Trouble.NO_LEDGER, "");
    }

    @Test
    void aBackupIsNotPutUnderAnotherProgram() throws Exception {
        Records records = records(folder);
        first(records, FIRST.withNotes("stays"));
        try (Ledger ledger = other()) {
            Path backup = ledger.backUp();
            records.restore(backup, aside -> said.add("restored"));
            until(() -> said.stream().anyMatch(s -> s.contains("another program has the ledger open")));
            until(records::keeps);
            assertThat(said).doesNotContain("restored");
            assertThat(ledger.lesson(1).orElseThrow().lesson().notes()).isEqualTo("stays");
        }
    }

    @Test
    void aLessonOnTheDeskGoesWithItsPlayer() throws Exception {
        Records records = records(folder);
        int id = first(records, FIRST);
        int goes = records.playerId().orElseThrow();
        Player stays;
        try (Ledger ledger = other()) {
            stays = ledger.addPlayer(PlayerDetails.of(Optional.of("C. Trial"), Handedness.LEFT));
        }
        records.merge(stays.id(), goes, merged -> said.add("merged"));
        until(() -> said.contains("merged"));
        assertThat(records.playerId()).isEqualTo(OptionalInt.of(stays.id()));
        records.keep(FIRST.withNotes("after"));
        until(() -> kept(id).notes().equals("after"));
        assertThat(conflicts).as("that is no other bay's change").isEmpty();
        assertThat(kept(id).playerName()).contains("C. Trial");
    }
}
