package org.toeline.desk.lesson;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
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

        private Step with(View view, String clip, UnaryOperator<ClipMoment> change) {
            ClipMoment moment = clips.get(view);
            if (moment == null || !moment.clip().equals(clip)) {
                return this;
            }
            Map<View, ClipMoment> changed = new EnumMap<>(clips);
            changed.put(view, change.apply(moment));
            return new Step(sheet, unfinished, Collections.unmodifiableMap(changed), words, selection);
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

    /** Something is known of a view's clip, where it lies or how it was filmed, also for what is brought back. */
    void everywhere(View view, String clip, UnaryOperator<ClipMoment> change) {
        for (Deque<Step> steps : List.of(undo, redo)) {
            List<Step> changed =
                    steps.stream().map(s -> s.with(view, clip, change)).toList();
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
