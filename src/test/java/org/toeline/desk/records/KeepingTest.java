package org.toeline.desk.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.TestLessons;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Search;

/** What waits to be written is neither forgotten nor overwritten by what is older. */
class KeepingTest {

    private static final Lesson OLDER = TestLessons.lesson("B. Trial", "older", 600);
    private static final Lesson NEWER = TestLessons.lesson("B. Trial", "newer", 601);

    @TempDir
    private Path folder;

    @Test
    void aWriteThatFailedDoesNotOverwriteWhatWasMarkedMeanwhile() {
        Keeping keeping = Keeping.fresh(OptionalInt.empty());
        keeping.next(OLDER);
        Lesson failed = keeping.take().orElseThrow();
        keeping.next(NEWER);
        keeping.again(failed);
        assertThat(keeping.take()).contains(NEWER);
        keeping.again(NEWER);
        assertThat(keeping.waits()).isTrue();
        assertThat(keeping.take()).contains(NEWER);
        assertThat(keeping.waits()).isFalse();
    }

    @Test
    void whatWaitsOnTheDiskIsTakenUpOnce() throws Exception {
        LedgerPlace.Folder place = new LedgerPlace.Folder(folder);
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            KeptLesson kept = ledger.begin(OLDER, Optional.empty());
            WaitingLessons waiting = new WaitingLessons(place);
            assertThat(waiting.keep(Keeping.of(kept), NEWER)).isTrue();
            assertThat(waiting.keep(Keeping.fresh(OptionalInt.empty()), OLDER.withNotes("another")))
                    .isTrue();

            assertThat(new WaitingLessons(place).takeUp(ledger)).isEqualTo(2);
            assertThat(ledger.lesson(kept.id()).orElseThrow().lesson().notes()).isEqualTo("newer");
            assertThat(ledger.find(Search.RECENT)).hasSize(2);
            assertThat(new WaitingLessons(place).takeUp(ledger)).isZero();
            assertThat(ledger.find(Search.RECENT)).hasSize(2);
        }
    }

    /** Another bay changed the lesson while this one waited: both stand. */
    @Test
    void whatAnotherBayMadeStandsBeside() throws Exception {
        LedgerPlace.Folder place = new LedgerPlace.Folder(folder);
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            KeptLesson kept = ledger.begin(OLDER, Optional.empty());
            new WaitingLessons(place).keep(Keeping.of(kept), NEWER);
            ledger.save(kept.id(), kept.version(), OLDER.withNotes("theirs"), List.of());
            assertThat(new WaitingLessons(place).takeUp(ledger)).isEqualTo(1);
            assertThat(ledger.lesson(kept.id()).orElseThrow().lesson().notes()).isEqualTo("theirs");
            assertThat(ledger.asides(kept.id())).hasSize(1);
        }
    }

    @Test
    void whatCannotBeReadStaysForAPerson() throws Exception {
        LedgerPlace.Folder place = new LedgerPlace.Folder(folder);
        Path file = Files.writeString(
                Files.createDirectories(folder.resolve("waiting")).resolve("x.waiting.json"), "{\"document\": \"");
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            assertThat(new WaitingLessons(place).takeUp(ledger)).isZero();
            assertThat(file).exists();
        }
    }
}
