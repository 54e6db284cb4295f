package org.toeline.desk.sheet;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.toeline.ledger.BesideDocument;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;

/** Names of clips: a document may name them beside itself, the ledger needs to know where they are. */
public final class KeptClips {

    private KeptClips() {}

    /** Where a clip is that the lesson on the desk names: as the coach chose it, else beside its document. */
    public static Path resolved(ClipMoment moment, Optional<Path> document) {
        Path clip = Path.of(moment.clip());
        return clip.isAbsolute()
                ? clip
                : document.map(f -> BesideDocument.place(f, moment.clip())).orElse(clip);
    }

    public static Lesson absolute(Lesson lesson, Optional<Path> document) {
        Lesson absolute = lesson;
        for (var clip : Map.copyOf(lesson.clips()).entrySet()) {
            absolute = absolute.withClip(
                    clip.getKey(),
                    clip.getValue().moved(resolved(clip.getValue(), document).toString()));
        }
        return absolute;
    }
}
