package org.toeline.desk.lesson;

import java.util.Optional;
import org.toeline.mark.Mark;
import org.toeline.mark.ViewMarks;

/** What is only suggested of the large view: taken as right, or taken away. */
public final class Suggestions {

    private final LessonModel lesson;

    Suggestions(LessonModel lesson) {
        this.lesson = lesson;
    }

    /** Takes the selected suggestion as right, as it stands, and goes on to the next one. */
    public void accept() {
        lesson.release();
        if (lesson.refused()) {
            return;
        }
        suggestion().ifPresent(m -> {
            lesson.put(Marking.accepted(
                    lesson.marks(lesson.large()).orElseThrow(),
                    m,
                    lesson.sheet().clickSigmaPx()));
            lesson.selectNext();
        });
    }

    /** Takes the selected suggestion away; it is still selected, to be marked by hand or skipped. */
    public void refuse() {
        if (suggestion().isPresent()) {
            lesson.delete();
        }
    }

    /** What is selected, when it is only suggested. */
    public Optional<Mark> suggestion() {
        return lesson.selected()
                .filter(i -> i instanceof Item.OfLandmark)
                .map(i -> ((Item.OfLandmark) i).landmark())
                .flatMap(l -> lesson.marks(lesson.large()).flatMap(v -> v.mark(l)))
                .filter(m -> m.origin() == Mark.Origin.SUGGESTED);
    }

    /** Takes all suggestions of the large view as right. */
    public void acceptAll() {
        lesson.release();
        if (lesson.refused()) {
            return;
        }
        lesson.marks(lesson.large()).ifPresent(v -> {
            ViewMarks all = v;
            for (Mark m : v.marks()) {
                all = m.origin() == Mark.Origin.SUGGESTED
                        ? Marking.accepted(all, m, lesson.sheet().clickSigmaPx())
                        : all;
            }
            lesson.put(all);
            lesson.selectNext();
        });
    }
}
