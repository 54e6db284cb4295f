package org.toeline.desk.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.animation.PauseTransition;
import javafx.util.Duration;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.Records;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.desk.work.Report;
import org.toeline.document.OwnDocument;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;

/**
 * Keeps every gesture as it happens, off the interface thread: in the ledger, and in the lesson's document where it has one.
 * While the ledger is not open or cannot be written, every lesson has a document. A document that cannot be written is tried
 * again, and said to be so until it is.
 */
final class Keeper implements LessonListener {

    private static final Logger LOG = Logger.getLogger(Keeper.class.getName());
    private static final Duration TRIED_AGAIN = Duration.seconds(15);

    private final LessonModel model;
    private final Records records;
    private final Background.Lane lane;
    private final Path folder;
    private final Report report;
    private final PauseTransition again = new PauseTransition(TRIED_AGAIN);
    private final Map<Path, Lesson> unwritten = new LinkedHashMap<>();

    /** @param folder where documents without a place of their own are kept */
    Keeper(LessonModel model, Records records, Background background, Path folder, Report report) {
        this.model = model;
        this.records = records;
        this.lane = background.lane();
        this.folder = folder;
        this.report = report;
        again.setOnFinished(e -> writeAll());
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
            write(lesson, file.get());
        } else if (!records.keeps()) {
            model.keepIn(folder.resolve("lesson-"
                    + DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss").format(LocalDateTime.now()) + ".lesson.json"));
        }
    }

    /** Says that all is kept, and where, once what is being written is. */
    void kept() {
        Optional<Path> file = model.file();
        if (model.lesson().sheet().views().isEmpty()) {
            report.accept(Texts.of("kept.nothing"));
        } else if (records.keeps()) {
            records.ask(
                    ledger -> true,
                    answered -> report.accept(
                            records.waits() || !unwritten.isEmpty()
                                    ? Texts.of("kept.waits")
                                    : Texts.of("kept.in-ledger", records.place())));
        } else if (file.isPresent() && unwritten.isEmpty()) {
            report.accept(Texts.of("kept.in-document", file.get()));
        } else {
            report.accept(Texts.of("kept.waits"));
        }
    }

    private void write(Lesson lesson, Path file) {
        unwritten.put(file, lesson);
        writeAll();
    }

    /** Everything that waits, since the lane does only the latest work it is given, and another lesson may be on the desk by then. */
    private void writeAll() {
        again.stop();
        Map<Path, Lesson> now = new LinkedHashMap<>(unwritten);
        lane.run(() -> faults(now), faults -> {
            now.forEach((file, lesson) -> {
                if (!faults.containsKey(file)) {
                    unwritten.remove(file, lesson);
                }
            });
            report.lasting(
                    Report.Trouble.NO_DOCUMENT,
                    faults.values().stream().findFirst().orElse(""));
            if (!faults.isEmpty()) {
                again.playFromStart();
            }
        });
    }

    /** Of the documents that could not be written, why. */
    private static Map<Path, String> faults(Map<Path, Lesson> lessons) {
        Map<Path, String> faults = new LinkedHashMap<>();
        lessons.forEach((file, lesson) -> {
            String fault = written(lesson, file);
            if (!fault.isEmpty()) {
                faults.put(file, fault);
            }
        });
        return faults;
    }

    /** Why it could not be; empty when it was. */
    private static String written(Lesson lesson, Path file) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            LessonDocument.write(lesson, file);
            return "";
        } catch (DocumentException | IOException e) {
            LOG.log(Level.WARNING, "the document could not be written", e);
            String why = e instanceof DocumentException ? String.valueOf(e.getMessage()) : OwnDocument.reason(e);
            return Texts.of("document.waits", why);
        }
    }
}
