package org.toeline.desk.sheet;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.Records;
import org.toeline.desk.work.Background;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;

/**
 * Keeps every gesture as it happens, off the interface thread: in the ledger, and in the lesson's document where it has one.
 * While the ledger is not open or cannot be written, every lesson has a document.
 */
final class Keeper implements LessonListener {

    private final LessonModel model;
    private final Records records;
    private final Background.Lane lane;
    private final Path folder;

    /** @param folder where documents without a place of their own are kept */
    Keeper(LessonModel model, Records records, Background background, Path folder) {
        this.model = model;
        this.records = records;
        this.lane = background.lane();
        this.folder = folder;
        // the first document takes its time to be written: not while the coach's first mark waits for it
        Lesson empty = model.lesson();
        lane.run(() -> LessonDocument.bytes(empty), done -> {});
    }

    @Override
    public void changed() {
        // what is not settled is not kept yet
    }

    @Override
    public void settled() {
        Lesson lesson = model.lesson();
        if (lesson.sheet().views().isEmpty()) {
            return;
        }
        Optional<Path> file = model.file();
        records.keep(KeptClips.absolute(lesson, file));
        if (file.isPresent()) {
            lane.run(
                    () -> {
                        Files.createDirectories(file.get().toAbsolutePath().getParent());
                        LessonDocument.write(lesson, file.get());
                        return file;
                    },
                    done -> {});
        } else if (!records.keeps()) {
            model.keepIn(folder.resolve("lesson-"
                    + DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss").format(LocalDateTime.now()) + ".lesson.json"));
        }
    }
}
