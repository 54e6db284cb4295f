package org.toeline.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.toeline.cli.StatedFindings;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.KeptLesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.LedgerException;

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

    /** Both lessons in the ledger, each there once; the one before the change. */
    KeptLesson takeIn(Ledger ledger) throws DocumentException, LedgerException {
        Lesson before = before();
        int id = ledger.takeIn(before, StatedFindings.of(before), Optional.empty()).lessonId();
        Lesson after = lesson("after");
        ledger.takeIn(after, StatedFindings.of(after), Optional.empty());
        return ledger.lesson(id).orElseThrow();
    }
}
