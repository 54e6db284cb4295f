package org.toeline.desk.lesson;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;

/** What can be undone and redone: earlier sheets, each with what was selected then. */
final class History {

    private static final int MOST = 500;

    /** How it was before a change, or after one that was undone. */
    record Step(
            MarkSheet sheet,
            Unfinished unfinished,
            Map<View, ClipMoment> clips,
            List<PinnedWords> words,
            Selection selection) {

        static Step of(Lesson lesson, Selection selection) {
            return new Step(lesson.sheet(), lesson.unfinished(), lesson.clips(), lesson.words(), selection);
        }

        /** What was selected is no change. */
        boolean isOf(Lesson lesson) {
            return sheet.equals(lesson.sheet())
                    && unfinished.equals(lesson.unfinished())
                    && clips.equals(lesson.clips())
                    && words.equals(lesson.words());
        }

        /** Whether what is marked on a picture differs, or which picture it is: the club and the hand are of no picture. */
        boolean isOfAPicture(Lesson lesson) {
            return !sheet.views().equals(lesson.sheet().views())
                    || !unfinished.equals(lesson.unfinished())
                    || !clips.equals(lesson.clips())
                    || !words.equals(lesson.words());
        }

        /** The lesson as it was then. */
        Lesson in(Lesson lesson) {
            return lesson.withSheet(sheet)
                    .withUnfinished(unfinished)
                    .withClips(clips)
                    .withWords(words);
        }
    }

    private final Deque<Step> undo = new ArrayDeque<>();
    private final Deque<Step> redo = new ArrayDeque<>();

    void clear() {
        undo.clear();
        redo.clear();
    }

    void remember(Step before) {
        undo.push(before);
        redo.clear();
        while (undo.size() > MOST) {
            undo.removeLast();
        }
    }

    /** Changes all that can be brought back. */
    void each(UnaryOperator<Step> change) {
        for (Deque<Step> steps : List.of(undo, redo)) {
            List<Step> changed = steps.stream().map(change).toList();
            steps.clear();
            steps.addAll(changed);
        }
    }

    boolean canUndo() {
        return !undo.isEmpty();
    }

    boolean canRedo() {
        return !redo.isEmpty();
    }

    Optional<Step> undo(Step now) {
        return turn(undo, redo, now);
    }

    Optional<Step> redo(Step now) {
        return turn(redo, undo, now);
    }

    private static Optional<Step> turn(Deque<Step> from, Deque<Step> to, Step now) {
        if (from.isEmpty()) {
            return Optional.empty();
        }
        to.push(now);
        return Optional.of(from.pop());
    }
}
