package org.toeline.desk.lesson;

import java.util.Optional;
import org.toeline.mark.ViewMarks;

/** A mark moved a little at a time, as the arrow keys do: the selected one, else the one that was placed last. */
public final class MovedByKeys {

    private final LessonModel lesson;
    private Optional<Selection> placed = Optional.empty();

    MovedByKeys(LessonModel lesson) {
        this.lesson = lesson;
    }

    /** What was put somewhere last; nothing where another lesson is opened. */
    void placed(Optional<Selection> last) {
        placed = last;
    }

    /** @return what was moved; nothing is moved that the large view does not show */
    public Optional<Item> move(double dxPx, double dyPx) {
        lesson.release();
        if (lesson.refused()) {
            return Optional.empty();
        }
        Optional<Selection> moved =
                Optional.of(lesson.selection()).filter(this::isMarked).or(() -> placed.filter(this::isMarked));
        moved.ifPresent(s -> {
            ViewMarks view = lesson.marks(lesson.large()).orElseThrow();
            Item item = s.item().orElseThrow();
            double clickSigmaPx = lesson.sheet().clickSigmaPx();
            lesson.put(
                    Marking.put(
                            view,
                            item,
                            s.handle(),
                            Marking.handles(view, item).get(s.handle()).plus(dxPx, dyPx),
                            clickSigmaPx),
                    s);
        });
        return moved.flatMap(Selection::item);
    }

    private boolean isMarked(Selection s) {
        return s.view() == lesson.large()
                && s.item().isPresent()
                && lesson.marks(lesson.large())
                        .filter(v ->
                                s.handle() < Marking.handles(v, s.item().get()).size())
                        .isPresent();
    }
}
