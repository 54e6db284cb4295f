package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.handout.Handout;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.WholeFile;
import org.toeline.video.ClipException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The annotated still of a lesson. */
@Command(name = "still", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class,
        description = "Writes the annotated still of a lesson as a PNG.")
final class StillCommand implements Callable<Integer> {

    @Parameters(paramLabel = "LESSON.json", description = "A lesson document.")
    private Path lesson;
    @Option(names = "--out", required = true, paramLabel = "FILE.png", description = "Where the still goes.")
    private Path out;

    @Override
    public Integer call() throws DocumentException, ClipException, IOException {
        WholeFile.write(out, handout(lesson).png());
        return Commands.DONE;
    }

    static Handout handout(Path document) throws DocumentException, ClipException {
        Lesson lesson = LessonDocument.read(document);
        return Handout.of(lesson, Assessment.of(lesson.sheet()), LessonPictures.of(lesson, document), Words.english());
    }
}
