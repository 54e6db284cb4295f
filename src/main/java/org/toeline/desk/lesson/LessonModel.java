package org.toeline.desk.lesson;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.toeline.advice.Mend;
import org.toeline.advice.Slip;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.Handedness;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * The lesson on the desk: placing, moving and skipping what is marked on it. Owned by one
 * thread. Listeners are told after every change.
 */
public final class LessonModel extends TwiceMarkedLesson {

    /** What lay on the ground in the lesson before that had something there. */
    private FloorLayout groundBefore = FloorLayout.NONE;

    private final Suggestions suggestions = new Suggestions(this);
    private final MovedByKeys byKeys = new MovedByKeys(this);

    public LessonModel(Lesson lesson) {
        super(lesson);
    }

    /** Takes another lesson onto the desk; what could be undone of the earlier one cannot be any more. */
    public void open(Lesson opened, Optional<Path> from) {
        if (!sheet().floor().points().isEmpty()) {
            groundBefore = sheet().floor();
        }
        begin(opened, from);
        suggestions.begin();
        firstMarksShown();
        byKeys.placed(Optional.empty());
        large = opened.sheet().views().isEmpty()
                ? View.FACE_ON
                : opened.sheet().views().get(0).view();
        selectNext();
    }

    /** What lay on the ground in the lesson before: it may lie there still, which only the coach knows. */
    public FloorLayout groundBefore() {
        return groundBefore;
    }

    /** Says what lies on the ground. */
    public void ground(FloorLayout floor) {
        apply(sheet().withFloor(floor));
    }

    /** What is only suggested of the large view. */
    public Suggestions suggestions() {
        return suggestions;
    }

    /** What the arrow keys move. */
    public MovedByKeys byKeys() {
        return byKeys;
    }

    public void show(View view) {
        if (view != large) {
            release();
            large = view;
            selectNext();
        }
    }

    public void select(Item item) {
        select(item, 0);
    }

    /** @param atHandle which end of an upright */
    public void select(Item item, int atHandle) {
        release();
        selected = Optional.of(item);
        handle = atHandle;
        changed();
    }

    /** The next item of the large view in the order of marking, or the one before, whether it is marked or not. */
    public void selectBeside(int step) {
        List<Item> items = MarkOrder.items(this, large);
        int from = selected.map(items::indexOf).orElse(-1);
        select(items.get(Math.floorMod(from < 0 && step < 0 ? step : from + step, items.size())));
    }

    /**
     * Another frame is the marked one from now on, with what is marked on it; undone as one.
     *
     * @param marks as they stand on that frame; none to start afresh
     * @param words what is pinned to that frame, of all views
     */
    public void markFrame(double seconds, ViewMarks marks, List<PinnedWords> words) {
        release();
        View view = marks.view();
        firstMarksShown(view);
        change(
                lesson.withSheet(sheet().withView(marks))
                        .withUnfinished(lesson.unfinished().withoutAgain(view))
                        .withMoment(view, m -> m.at(seconds))
                        .withWords(words),
                selection());
        if (view == large) {
            selectNext();
        }
    }

    /** Puts the selected item at a point of the large view and goes on to the next one to place. */
    public void place(ImagePoint at) {
        release();
        if (refused()) {
            return;
        }
        Optional<ViewMarks> view = marks(large);
        if (view.isEmpty() || selected.isEmpty()) {
            return;
        }
        Item item = selected.get();
        if (item instanceof Item.OfGround) {
            refuse();
            return;
        }
        boolean isNew = MarkOrder.isOpen(view.get(), item);
        put(Marking.put(view.get(), item, handle, at, sheet().clickSigmaPx()), selection());
        if (isNew && !(item instanceof Item.OfVertical)) {
            goOn(large, item);
        }
    }

    /** Puts both ends of a rod or an upright on a view and goes on to the next thing to place. */
    public void place(View of, LineMark line) {
        release();
        marks(of).ifPresent(v -> {
            put(
                    Marking.put(v, line, sheet().floor(), sheet().handedness()),
                    new Selection(of, Optional.of(line.item()), 0));
            goOn(of, line.item());
        });
    }

    /** Puts the ball on a view and, when it is a new one, goes on to the next thing to place. */
    public void place(View of, BallMark ball) {
        release();
        marks(of).ifPresent(v -> {
            put(v.withBall(Optional.of(ball)), new Selection(of, Optional.of(Item.BALL), 0));
            if (MarkOrder.isOpen(v, Item.BALL)) {
                goOn(of, Item.BALL);
            }
        });
    }

    /** From an item that was placed to the next one, unless something else was chosen meanwhile. */
    private void goOn(View of, Item from) {
        if (of == large && selected.equals(Optional.of(from))) {
            selectNext();
        }
    }

    @Override
    Optional<Item> next() {
        return MarkOrder.next(this);
    }

    void put(ViewMarks view, Selection selection) {
        byKeys.placed(Optional.of(selection));
        Unfinished now = lesson.unfinished().withUnseen(view.view(), names -> {
            Marking.marked(view).forEach(item -> names.remove(item.name()));
            return names;
        });
        if (repeating(view.view())) {
            change(sheet(), now.withAgain(view), selection);
        } else {
            change(sheet().withView(view), now, selection);
        }
    }

    void put(ViewMarks view) {
        put(view, selection());
    }

    /** The selected item cannot be seen in this picture, which is kept: on to the next one. */
    public void skip() {
        release();
        if (refused()) {
            return;
        }
        Optional<Item> item = selected;
        item.filter(i -> marks(large)
                        .filter(v -> Marking.handles(v, i).isEmpty())
                        .isPresent())
                .ifPresent(i -> change(
                        sheet(),
                        lesson.unfinished().withUnseen(large, names -> {
                            names.add(i.name());
                            return names;
                        }),
                        selection()));
        select(MarkOrder.after(this, item));
    }

    /** Moves the selected item while it is dragged; without a drag going on nothing is moved. */
    public void drag(ImagePoint to) {
        if (isGrabbed() && selected.isPresent() && marks(large).isPresent()) {
            ViewMarks moved = Marking.put(marks(large).get(), selected.get(), handle, to, sheet().clickSigmaPx());
            lesson = repeating()
                    ? lesson.withUnfinished(lesson.unfinished().withAgain(moved))
                    : lesson.withSheet(sheet().withView(moved));
            changed();
        }
    }

    public void delete() {
        release();
        if (!refused() && selected.isPresent() && marks(large).isPresent()) {
            put(Marking.delete(marks(large).get(), selected.get()));
        }
    }

    /** Undoes a slip of the marking. */
    public void mend(Mend mend) {
        release();
        change(
                mend.slip() == Slip.VIEWS_EXCHANGED
                        ? lesson.withViewsExchanged(mend.sheet())
                        : lesson.withSheet(mend.sheet()),
                selection());
    }

    public void handedness(Handedness handedness) {
        apply(sheet().withHandedness(handedness));
    }

    public void club(Club club) {
        apply(sheet().withClub(club));
    }
}
