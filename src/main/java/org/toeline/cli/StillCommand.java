package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Assessment;
import org.toeline.advice.Contradiction;
import org.toeline.advice.ContradictionWords;
import org.toeline.advice.Words;
import org.toeline.handout.BeforeAfter;
import org.toeline.handout.Handout;
import org.toeline.handout.PictureFormat;
import org.toeline.language.Sentences;
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
@Command(name = "still", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class StillCommand implements Callable<Integer> {

    @Mixin
    private HandoutChoices choices;

    @Parameters(paramLabel = "LESSON.json")
    private Path lesson;

    @Option(names = "--out", required = true, paramLabel = "FILE")
    private Path out;

    @Option(names = "--before", paramLabel = "EARLIER.json")
    private @Nullable Path before;

    @Override
    public Integer call() throws DocumentException, ClipException, IOException {
        PictureFormat format = PictureFormat.byName(out.toString()).orElse(PictureFormat.PNG);
        OutFiles.write(out, format.of(drawing()), choices.replaces());
        return Commands.DONE;
    }

    private Drawing drawing() throws DocumentException, ClipException {
        Handout handout = handout(lesson, choices);
        if (before == null) {
            return handout.still();
        }
        return both(before, lesson, handout, choices);
    }

    /** Both lessons in one picture, where they are before and after of one player, hand and kind of club. */
    static BeforeAfter both(Path earlier, Path later, Handout handout, HandoutChoices choices)
            throws DocumentException, ClipException {
        Handout first = handout(earlier, choices);
        Optional<String> hindrance = BeforeAfter.hindrance(first, handout);
        if (hindrance.isPresent()) {
            throw new DocumentException(
                    Sentences.of(StillCommand.class).of("still.both", earlier, later, hindrance.get()));
        }
        Optional<BeforeAfter> both = BeforeAfter.of(first, handout);
        if (both.isEmpty()) {
            throw new DocumentException(Sentences.of(StillCommand.class).of("still.none", earlier, later));
        }
        return both.get();
    }

    static Handout handout(Path document, HandoutChoices choices) throws DocumentException, ClipException {
        Lesson lesson = LessonDocument.read(document);
        Assessment assessment = Assessment.of(lesson.sheet());
        Optional<Contradiction> withheld = assessment.advice().withheld();
        if (withheld.isPresent()) {
            Words words = choices.words();
            throw new DocumentException(document + ": "
                    + words.text("withheld.refused", new ContradictionWords(words).sentence(withheld.get())));
        }
        Handout handout = new Handout(
                lesson,
                assessment,
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
