package org.toeline.desk.lesson;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.toeline.ledger.Lesson;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** A lesson of which a view can be marked a second time, to learn how steadily the coach clicks. */
abstract class TwiceMarkedLesson extends FilmedLesson {

    private final Set<View> repeating = EnumSet.noneOf(View.class);

    TwiceMarkedLesson(Lesson lesson) {
        super(lesson);
    }

    /** What was marked first is shown again, of all views. */
    void firstMarksShown() {
        repeating.clear();
    }

    /** What was marked first is shown again. */
    void firstMarksShown(View view) {
        repeating.remove(view);
    }

    /**
     * What is marked on a view; while it is being marked again, what has been marked again so far. What is only suggested of
     * another frame than is shown is nothing to the hand.
     */
    public Optional<ViewMarks> marks(View view) {
        if (repeating(view)) {
            return lesson.unfinished().again(view);
        }
        boolean elsewhere = !begun(view) && film().has(view) && !film().shows(view, markedAt(view));
        return elsewhere ? sheet().view(view).map(ViewMarks::onlyAccepted) : sheet().view(view);
    }

    /** Whether the large view is being marked a second time, to learn how steadily the coach clicks. */
    public boolean repeating() {
        return repeating(large);
    }

    public boolean repeating(View view) {
        return repeating.contains(view) && lesson.unfinished().again(view).isPresent();
    }

    /** Whether marking the large view again was begun and left. */
    public boolean canGoOnRepeating() {
        return !repeating() && lesson.unfinished().again(large).isPresent();
    }

    /** Hides what is marked on the large view, to be marked afresh or on from where that was left; nothing of it is changed. */
    public void repeat() {
        release();
        if (refused()) {
            return;
        }
        sheet().view(large).ifPresent(v -> {
            if (lesson.unfinished().again(large).isEmpty()) {
                change(
                        sheet(),
                        lesson.unfinished().withAgain(ViewMarks.empty(large, v.widthPx(), v.heightPx())),
                        selection());
            }
            repeating.add(large);
            selectNext();
        });
    }

    /** Leaves marking again: what was marked first is shown again, and what was marked since is kept to go on with. */
    public void leaveRepeat() {
        release();
        repeating.remove(large);
        selectNext();
    }

    /**
     * Ends marking again: what was marked first is shown again, and the spread between the two is answered. When too few
     * were marked to learn it, what was marked since is kept to go on with.
     */
    public OptionalDouble endRepeat() {
        leaveRepeat();
        Optional<ViewMarks> again = lesson.unfinished().again(large);
        OptionalDouble spread = again.isPresent() && sheet().view(large).isPresent()
                ? ClickSpread.of(sheet().view(large).get(), again.get())
                : OptionalDouble.empty();
        if (spread.isPresent()) {
            change(sheet(), lesson.unfinished().withoutAgain(large), selection());
        }
        return spread;
    }

    /** Whether the coach said that an item cannot be seen in a view. */
    public boolean unseen(View view, Item item) {
        return item instanceof Item.OfGround
                ? Arrays.stream(View.values())
                        .anyMatch(v -> lesson.unfinished().unseen(v).contains(item.name()))
                : lesson.unfinished().unseen(view).contains(item.name());
    }
}
