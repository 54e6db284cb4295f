package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Assessment;
import org.toeline.document.WholeFile;
import org.toeline.handout.BeforeAfter;
import org.toeline.handout.Handout;
import org.toeline.handout.PictureFormat;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.paint.Drawing;
import org.toeline.video.ClipException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The annotated still of a lesson. */
@Command(
        name = "still",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        description =
                "Writes the annotated still of a lesson: as SVG or JPEG when the file's name ends so, else as PNG.")
final class StillCommand implements Callable<Integer> {

    @Mixin
    private HandoutChoices choices;

    @Parameters(paramLabel = "LESSON.json", description = "A lesson document.")
    private Path lesson;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "Where the still goes: FILE.png, .jpg or .svg.")
    private Path out;

    @Option(
            names = "--before",
            paramLabel = "EARLIER.json",
            description = "An earlier lesson of the player: both in one " + "picture at the same scale.")
    private @Nullable Path before;

    @Override
    public Integer call() throws DocumentException, ClipException, IOException {
        PictureFormat format =
                PictureFormat.byName(out.getFileName().toString()).orElse(PictureFormat.PNG);
        WholeFile.write(out, format.of(drawing()));
        return Commands.DONE;
    }

    private Drawing drawing() throws DocumentException, ClipException {
        Handout handout = handout(lesson, choices);
        if (before == null) {
            return handout.still();
        }
        return BeforeAfter.of(handout(before, choices), handout)
                .orElseThrow(() -> new DocumentException(before + " and " + lesson
                        + ": no view has a picture and a camera that can be estimated in both; mark the rods in both"));
    }

    static Handout handout(Path document, HandoutChoices choices) throws DocumentException, ClipException {
        Lesson lesson = LessonDocument.read(document);
        Handout handout = new Handout(
                lesson,
                Assessment.of(lesson.sheet()),
                LessonPictures.of(lesson, document),
                choices.words(),
                choices.options(),
                choices.coachsWords());
        if (handout.lacks().isPresent()) {
            throw new DocumentException(document + ": " + handout.lacks().get());
        }
        return handout;
    }
}
