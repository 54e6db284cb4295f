package org.toeline.cli;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;

/** The frames a lesson was marked on, out of the clips it names. */
final class LessonPictures {

    private LessonPictures() {
    }

    /** @param document where the lesson was read from; clips are named relative to it */
    static Map<View, BufferedImage> of(Lesson lesson, Path document) throws ClipException, DocumentException {
        Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
        for (Map.Entry<View, ClipMoment> e : lesson.clips().entrySet()) {
            ViewMarks marks = lesson.sheet().view(e.getKey()).orElseThrow();
            Path file = document.toAbsolutePath().resolveSibling(e.getValue().clip());
            try (Clip clip = Clip.open(file)) {
                if (clip.info().width() != marks.widthPx() || clip.info().height() != marks.heightPx()) {
                    throw new DocumentException(document + ": the " + e.getKey().id() + " view was marked on a picture of "
                            + marks.widthPx() + " × " + marks.heightPx() + " px, but " + e.getValue().clip() + " shows "
                            + clip.info().width() + " × " + clip.info().height());
                }
                pictures.put(e.getKey(), clip.frameAt(e.getValue().seconds().orElse(clip.info().startSeconds()))
                        .toImage());
            }
        }
        return pictures;
    }
}
