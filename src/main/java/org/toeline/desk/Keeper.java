package org.toeline.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.work.Background;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;

/** Keeps every gesture: the lesson is written as it happens, off the interface thread, whole or not at all. */
final class Keeper implements LessonModel.Listener {

    private final LessonModel model;
    private final Background.Lane lane;
    private final Path folder;

    /** @param folder where lessons without a place of their own are kept */
    Keeper(LessonModel model, Background background, Path folder) {
        this.model = model;
        this.lane = background.lane();
        this.folder = folder;
        // the first document takes its time to be written: not while the coach's first mark waits for it
        Lesson empty = model.lesson();
        lane.run(() -> LessonDocument.bytes(empty), done -> { });
    }

    @Override
    public void changed() {
        // what is not settled is not kept yet
    }

    @Override
    public void settled() {
        Lesson lesson = model.lesson();
        Optional<Path> file = model.file();
        if (file.isEmpty()) {
            if (!lesson.sheet().views().isEmpty()) {
                model.keepIn(folder.resolve("lesson-" + DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss")
                        .format(LocalDateTime.now()) + ".lesson.json"));
            }
            return;
        }
        lane.run(() -> {
            Files.createDirectories(file.get().toAbsolutePath().getParent());
            LessonDocument.write(lesson, file.get());
            return file;
        }, done -> { });
    }
}
