package org.toeline.desk.lesson;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.toeline.advice.Mend;
import org.toeline.advice.Slip;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * The lesson on the desk: placing, moving, accepting and skipping what is marked on it, also a second time. Owned by one
 * thread. Listeners are told after every change.
 */
public final class LessonModel extends FilmedLesson {

    /** Told of changes. */
    public interface Listener {

        /** Marks, clips, selection or the large view changed. */
        void changed();

        /** A gesture was completed: what is marked now should be kept. */
        default void settled() {}

        /** What the hand asked for was not done: another frame is looked at than the marked one. */
        default void refused() {}
    }

    /** What was put somewhere last. */
    private Optional<Selection> placed = Optional.empty();

    private final Set<View> repeating = EnumSet.noneOf(View.class);

    public LessonModel(Lesson lesson) {
        super(lesson);
    }

    /** Takes another lesson onto the desk; what could be undone of the earlier one cannot be any more. */
    public void open(Lesson opened, Optional<Path> from) {
        begin(opened, from);
        repeating.clear();
        placed = Optional.empty();
        large = opened.sheet().views().isEmpty()
                ? View.FACE_ON
                : opened.sheet().views().get(0).view();
        selectNext();
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

    /** What is marked on a view; while it is being marked again, what has been marked again so far. */
    public Optional<ViewMarks> marks(View view) {
        return repeating(view) ? lesson.unfinished().again(view) : sheet().view(view);
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

    /** Whether the coach said that an item cannot be seen in a view. */
    public boolean unseen(View view, Item item) {
        return lesson.unfinished().unseen(view).contains(item.name());
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

    /**
     * Another frame is the marked one from now on, with what is marked on it; undone as one.
     *
     * @param marks as they stand on that frame; none to start afresh
     * @param words what is pinned to that frame, of all views
     */
    public void markFrame(double seconds, ViewMarks marks, List<PinnedWords> words) {
        release();
        View view = marks.view();
        repeating.remove(view);
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
        boolean isNew = Marking.handles(view.get(), item).isEmpty();
        put(Marking.put(view.get(), item, handle, at, sheet().clickSigmaPx()), selection());
        if (isNew && !(item instanceof Item.OfVertical)) {
            goOn(large, item);
        }
    }

    /** Puts both ends of a rod or an upright on a view and goes on to the next thing to place. */
    public void place(View of, LineMark line) {
        release();
        marks(of).ifPresent(v -> {
            put(Marking.put(v, line, sheet().floor()), new Selection(of, Optional.of(line.item()), 0));
            goOn(of, line.item());
        });
    }

    /** Puts the ball on a view and, when it is a new one, goes on to the next thing to place. */
    public void place(View of, BallMark ball) {
        release();
        marks(of).ifPresent(v -> {
            put(v.withBall(Optional.of(ball)), new Selection(of, Optional.of(Item.BALL), 0));
            if (v.ball().isEmpty()) {
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
    void selectNext() {
        select(MarkOrder.next(this));
    }

    private void put(ViewMarks view, Selection selection) {
        placed = Optional.of(selection);
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

    private void put(ViewMarks view) {
        put(view, selection());
    }

    /** Takes the selected suggestion as right, as it stands, and goes on to the next one. */
    public void accept() {
        release();
        if (refused()) {
            return;
        }
        suggestion().ifPresent(m -> {
            put(Marking.accepted(marks(large).orElseThrow(), m, sheet().clickSigmaPx()));
            selectNext();
        });
    }

    /** Takes the selected suggestion away; it is still selected, to be marked by hand or skipped. */
    public void refuse() {
        if (suggestion().isPresent()) {
            delete();
        }
    }

    /** What is selected, when it is only suggested. */
    public Optional<Mark> suggestion() {
        return selected.filter(i -> i instanceof Item.OfLandmark)
                .map(i -> ((Item.OfLandmark) i).landmark())
                .flatMap(l -> marks(large).flatMap(v -> v.mark(l)))
                .filter(m -> m.origin() == Mark.Origin.SUGGESTED);
    }

    /** Takes all suggestions of the large view as right. */
    public void acceptAll() {
        release();
        if (refused()) {
            return;
        }
        marks(large).ifPresent(v -> {
            ViewMarks all = v;
            for (Mark m : v.marks()) {
                all = m.origin() == Mark.Origin.SUGGESTED ? Marking.accepted(all, m, sheet().clickSigmaPx()) : all;
            }
            put(all);
            selectNext();
        });
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

    /** Moves the selected item a little; while it is not marked yet, the one that was placed last, which is answered. */
    public Optional<Item> nudge(double dxPx, double dyPx) {
        release();
        if (refused()) {
            return Optional.empty();
        }
        Optional<Selection> moved =
                Optional.of(selection()).filter(this::isMarked).or(() -> placed.filter(this::isMarked));
        moved.ifPresent(s -> {
            ViewMarks view = marks(large).orElseThrow();
            Item item = s.item().orElseThrow();
            put(
                    Marking.put(
                            view,
                            item,
                            s.handle(),
                            Marking.handles(view, item).get(s.handle()).plus(dxPx, dyPx),
                            sheet().clickSigmaPx()),
                    s);
        });
        return moved.flatMap(Selection::item);
    }

    private boolean isMarked(Selection s) {
        return s.view() == large
                && s.item().isPresent()
                && marks(large)
                        .filter(v ->
                                s.handle() < Marking.handles(v, s.item().get()).size())
                        .isPresent();
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
