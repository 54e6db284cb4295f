package org.toeline.desk.lesson;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** A lesson's clips: which one a view has, at what rate it was filmed, and the frame proposed to be marked. */
abstract class FilmedLesson extends UndoableLesson {

    FilmedLesson(Lesson lesson) {
        super(lesson);
    }

    /** Another clip for a view: marks on an earlier one are none of its business and go, undoably. */
    public void clip(View view, String clip, int width, int height) {
        release();
        if (lesson.recorded().isEmpty() && sheet().views().isEmpty()) {
            // the lesson begins
            lesson = lesson.withRecorded(OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS));
        }
        change(
                lesson.withClip(view, new ClipMoment(clip, OptionalDouble.empty()))
                        .withSheet(sheet().withView(ViewMarks.empty(view, width, height)))
                        .withUnfinished(lesson.unfinished().withoutAgain(view))
                        .withoutWords(view),
                selection());
        if (view == large) {
            selectNext();
        }
    }

    /** The film of a view under another name: marks, marked frame and rate stay. Undoable, as it may be another film after all. */
    public void sameFilm(View view, String clip) {
        release();
        change(lesson.withMoment(view, m -> m.moved(clip)), selection());
    }

    /** The clips of the face-on and the down-the-line view change places, where nothing is marked on either. */
    public void exchangeClips() {
        release();
        ClipMoment one = lesson.clips().get(View.FACE_ON);
        ClipMoment other = lesson.clips().get(View.DOWN_THE_LINE);
        Optional<ViewMarks> oneMarks = sheet().view(View.FACE_ON).filter(v -> !begun(v.view()));
        Optional<ViewMarks> otherMarks = sheet().view(View.DOWN_THE_LINE).filter(v -> !begun(v.view()));
        if (one == null || other == null || oneMarks.isEmpty() || otherMarks.isEmpty()) {
            throw new IllegalStateException("two clips without marks are needed");
        }
        change(
                lesson.withClip(View.FACE_ON, other)
                        .withClip(View.DOWN_THE_LINE, one)
                        .withSheet(sheet().withView(emptied(View.FACE_ON, otherMarks.get()))
                                .withView(emptied(View.DOWN_THE_LINE, oneMarks.get())))
                        .withoutWords(View.FACE_ON)
                        .withoutWords(View.DOWN_THE_LINE),
                selection());
    }

    private static ViewMarks emptied(View view, ViewMarks from) {
        return ViewMarks.empty(view, from.widthPx(), from.heightPx());
    }

    /**
     * Words are pinned to the large view's picture, or in the place of others, or those are taken away. They belong to the marked
     * frame: away from it, or while nothing is marked, it is refused.
     *
     * @param before what they take the place of; empty for new ones
     * @param after  empty to take away
     */
    public void pin(Optional<PinnedWords> before, Optional<PinnedWords> after) {
        release();
        if (refused() || !isPinnable()) {
            return;
        }
        List<PinnedWords> words = new ArrayList<>(lesson.words());
        int place = before.map(words::indexOf).filter(i -> i >= 0).orElse(words.size());
        before.ifPresent(words::remove);
        after.ifPresent(w -> words.add(Math.min(place, words.size()), w));
        change(lesson.withWords(words), selection());
    }

    /** Whether the large view has a frame that words can be pinned to. */
    public boolean isPinnable() {
        return !away(large) && begun(large);
    }

    /** The frame that a view will be marked on, while nothing is marked on it; what was suggested of another one goes. */
    public void propose(View view, double seconds) {
        if (begun(view) || markedAt(view).equals(OptionalDouble.of(seconds))) {
            return;
        }
        describe(l -> l.withMoment(view, m -> m.at(seconds))
                .withSheet(sheet().view(view)
                        .map(v -> sheet().withView(v.onlyAccepted()))
                        .orElse(sheet())));
    }

    /** What the program sees in a view's marked frame. */
    public interface Draft {

        /** The view's marks with what is seen and not there yet. */
        ViewMarks onto(MarkSheet sheet, Unfinished unfinished);
    }

    /**
     * Suggests of a view's marked frame what is not marked there. That is no step of its own: undoing takes back what the hand
     * did, and nothing that came meanwhile.
     */
    public void draft(View view, Draft draft) {
        ClipMoment now = lesson.clips().get(view);
        if (now == null) {
            return;
        }
        everywhere(l -> {
            boolean there = isOf(l, view, now.clip())
                    && (!begun(l, view) || now.equals(l.clips().get(view)));
            return there
                    ? l.withMoment(view, m -> now).withSheet(l.sheet().withView(draft.onto(l.sheet(), l.unfinished())))
                    : l;
        });
    }

    /** At what rate a view's clip was filmed, frames a second, as the coach says; empty for as the file says. */
    public void filmedAt(View view, OptionalDouble framesPerSecond) {
        known(view, m -> m.filmed(framesPerSecond));
    }
}
