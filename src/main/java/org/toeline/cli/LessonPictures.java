package org.toeline.cli;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.toeline.language.Sentences;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;

/** The frames a lesson was marked on, out of the clips it names. */
final class LessonPictures {

    private LessonPictures() {}

    /** @param document where the lesson was read from; clips are named relative to it */
    static Map<View, BufferedImage> of(Lesson lesson, Path document) throws ClipException, DocumentException {
        Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
        for (Map.Entry<View, ClipMoment> e : lesson.clips().entrySet()) {
            Path file = document.toAbsolutePath().resolveSibling(e.getValue().clip());
            pictures.put(e.getKey(), frame(lesson, e.getKey(), file, document.toString()));
        }
        return pictures;
    }

    /** @param lessonName what the lesson is called, for the message when its clip is another one */
    static BufferedImage frame(Lesson lesson, View view, Path file, String lessonName)
            throws ClipException, DocumentException {
        ViewMarks marks = lesson.sheet().view(view).orElseThrow();
        ClipMoment moment = Objects.requireNonNull(lesson.clips().get(view));
        try (Clip clip = Clip.open(file)) {
            if (clip.info().width() != marks.widthPx() || clip.info().height() != marks.heightPx()) {
                throw new DocumentException(Sentences.of(LessonPictures.class)
                        .of(
                                "picture.size",
                                lessonName,
                                view.id(),
                                marks.widthPx(),
                                marks.heightPx(),
                                moment.clip(),
                                clip.info().width(),
                                clip.info().height()));
            }
            return clip.frameAt(moment.seconds().orElse(clip.info().startSeconds()))
                    .toImage();
        }
    }
}
