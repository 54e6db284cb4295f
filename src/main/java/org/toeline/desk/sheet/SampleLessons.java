package org.toeline.desk.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.toeline.across.StatedFindings;
import org.toeline.flight.table.Proposal;
import org.toeline.flight.table.ShotImport;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.TakenIn;

/** The lessons that come with the program: one player before and after a change. */
record SampleLessons(Path media) {

    private Path document(String id) {
        return media.resolve(id).resolve(id + ".lesson.json");
    }

    boolean areThere() {
        return Files.isRegularFile(document("before"));
    }

    Lesson before() throws DocumentException {
        return lesson("before");
    }

    private Lesson lesson(String id) throws DocumentException {
        return KeptClips.absolute(LessonDocument.read(document(id)), Optional.of(document(id)));
    }

    /** Both lessons in the ledger with their shots, each there once; the one before the change. */
    KeptLesson takeIn(Ledger ledger) throws DocumentException, LedgerException, IOException {
        int id = takeIn(ledger, "before");
        takeIn(ledger, "after");
        return ledger.lesson(id).orElseThrow();
    }

    /** Shots that the coach typed or took away since stay as they are. */
    private int takeIn(Ledger ledger, String id) throws DocumentException, LedgerException, IOException {
        Lesson lesson = lesson(id);
        TakenIn taken = ledger.takeIn(lesson, StatedFindings.of(lesson), Optional.empty());
        Path shots = media.resolve("shots").resolve(id + ".csv");
        if (taken instanceof TakenIn.New && Files.isRegularFile(shots)) {
            byte[] table = Files.readAllBytes(shots);
            ledger.keepShots(
                    taken.lessonId(),
                    ShotImport.read(table, Proposal.of(table, id).template()).shots());
        }
        return taken.lessonId();
    }
}
