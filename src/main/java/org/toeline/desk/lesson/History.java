package org.toeline.desk.lesson;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.MarkSheet;

/** What can be undone and redone: earlier sheets, each with what was selected then. */
final class History {

    private static final int MOST = 500;

    /** How it was before a change, or after one that was undone. */
    record Step(MarkSheet sheet, Unfinished unfinished, Selection selection) {

        /** What was selected is no change. */
        boolean isOf(Lesson lesson) {
            return sheet.equals(lesson.sheet()) && unfinished.equals(lesson.unfinished());
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
