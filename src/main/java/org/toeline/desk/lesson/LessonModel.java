package org.toeline.desk.lesson;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * The lesson on the desk: what is marked, what is selected, which picture is large; undo is a list of earlier sheets.
 * Owned by one thread. Listeners are told after every change.
 */
public final class LessonModel {

    /** Told of changes. */
    public interface Listener {

        /** Marks, clips, selection or the large view changed. */
        void changed();

        /** A gesture was completed: what is marked now should be kept. */
        default void settled() {
        }
    }

    private final List<Listener> listeners = new ArrayList<>();
    private final History history = new History();
    private Lesson lesson;
    private Optional<Path> file = Optional.empty();
    private View large = View.FACE_ON;
    private Optional<Item> selected = Optional.empty();
    private int handle;
    private Optional<Gesture> gesture = Optional.empty();
    private Optional<ViewMarks> repeat = Optional.empty();

    /** A drag, and how it was before it. */
    private record Gesture(History.Step before, Optional<ViewMarks> repeat) {
    }

    public LessonModel(Lesson lesson) {
        this.lesson = lesson;
    }

    public void listen(Listener listener) {
        listeners.add(listener);
    }

    public Lesson lesson() {
        return lesson;
    }

    public MarkSheet sheet() {
        return lesson.sheet();
    }

    /** The document the lesson is kept in. */
    public Optional<Path> file() {
        return file;
    }

    public View large() {
        return large;
    }

    public Optional<Item> selected() {
        return selected;
    }

    /** Takes another lesson onto the desk; what could be undone of the earlier one cannot be any more. */
    public void open(Lesson opened, Optional<Path> from) {
        lesson = opened;
        file = from;
        history.clear();
        repeat = Optional.empty();
        gesture = Optional.empty();
        large = opened.sheet().views().isEmpty() ? View.FACE_ON : opened.sheet().views().get(0).view();
        selected = MarkOrder.next(this);
        handle = 0;
        changed();
    }

    public void keepIn(Path where) {
        file = Optional.of(where);
        settled();
    }

    public void show(View view) {
        if (view != large) {
            release();
            large = view;
            repeat = Optional.empty();
            selected = MarkOrder.next(this);
            changed();
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
        return repeat.filter(r -> r.view() == view).or(() -> sheet().view(view));
    }

    /** Whether a view is being marked a second time, to learn how steadily the coach clicks. */
    public boolean repeating() {
        return repeat.isPresent();
    }

    /** Hides what is marked on the large view, to be marked afresh; nothing of it is changed. */
    public void repeat() {
        release();
        sheet().view(large).ifPresent(v -> {
            repeat = Optional.of(ViewMarks.empty(v.view(), v.widthPx(), v.heightPx()));
            selected = MarkOrder.next(this);
            handle = 0;
            changed();
        });
    }

    /** Ends marking again: what was marked first is shown again, and the spread between the two is answered. */
    public OptionalDouble endRepeat() {
        release();
        Optional<ViewMarks> again = repeat;
        repeat = Optional.empty();
        selected = MarkOrder.next(this);
        OptionalDouble spread = again.isPresent() && sheet().view(again.get().view()).isPresent()
                ? ClickSpread.of(sheet().view(again.get().view()).get(), again.get()) : OptionalDouble.empty();
        changed();
        return spread;
    }

    /** A clip for a view; marks on an earlier picture of another size do not fit it and go, undoably. */
    public void clip(View view, String clip, int width, int height) {
        ViewMarks marks = marks(view).filter(m -> m.widthPx() == width && m.heightPx() == height)
                .orElse(ViewMarks.empty(view, width, height));
        lesson = lesson.withClip(view, new ClipMoment(clip, OptionalDouble.empty()));
        apply(sheet().withView(marks));
    }

    /** A view's clip lies elsewhere now; what was marked on it stays. */
    public void moved(View view, String clip) {
        ClipMoment moment = lesson.clips().get(view);
        if (moment != null && !moment.clip().equals(clip)) {
            lesson = lesson.withClip(view, moment.moved(clip));
            changed();
            settled();
        }
    }

    /** The frame that a view is marked on. */
    public void moment(View view, double seconds) {
        ClipMoment moment = lesson.clips().get(view);
        if (moment != null && !moment.seconds().equals(OptionalDouble.of(seconds))) {
            lesson = lesson.withClip(view, moment.at(seconds));
            changed();
            settled();
        }
    }

    /** At what rate a view's clip was filmed, frames a second, as the coach says; empty for as the file says. */
    public void filmedAt(View view, OptionalDouble framesPerSecond) {
        ClipMoment moment = lesson.clips().get(view);
        if (moment != null && !moment.filmedAt().equals(framesPerSecond)) {
            lesson = lesson.withClip(view, moment.filmed(framesPerSecond));
            changed();
            settled();
        }
    }

    /** Puts the selected item at a point of the large view and goes on to the next one to place. */
    public void place(ImagePoint at) {
        release();
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
            selected = MarkOrder.next(this);
            handle = 0;
            changed();
        }
    }

    private void put(ViewMarks view, Selection selection) {
        if (repeat.filter(r -> r.view() == view.view()).isPresent()) {
            repeat = Optional.of(view);
            changed();
        } else {
            apply(sheet().withView(view), selection);
        }
    }

    private void put(ViewMarks view) {
        put(view, selection());
    }

    private Selection selection() {
        return new Selection(large, selected, handle);
    }

    /** Takes the selected suggestion as right, as it stands, and goes on to the next one. */
    public void accept() {
        release();
        if (selected.isPresent() && selected.get() instanceof Item.OfLandmark l && marks(large).isPresent()) {
            marks(large).get().mark(l.landmark()).filter(m -> m.origin() == Mark.Origin.SUGGESTED).ifPresent(m -> {
                put(marks(large).get().withMark(accepted(m)));
                selected = MarkOrder.next(this);
                handle = 0;
                changed();
            });
        }
    }

    /** Takes all suggestions of the large view as right. */
    public void acceptAll() {
        release();
        marks(large).ifPresent(v -> {
            ViewMarks all = v;
            for (Mark m : v.marks()) {
                all = m.origin() == Mark.Origin.SUGGESTED ? all.withMark(accepted(m)) : all;
            }
            put(all);
            selected = MarkOrder.next(this);
            changed();
        });
    }

    /** Looked at and found right, but not clicked: it keeps the spread that was measured for suggestions. */
    private Mark accepted(Mark suggested) {
        return Mark.placed(suggested.landmark(), suggested.at(), Math.max(sheet().clickSigmaPx(), suggested.sigmaPx()));
    }

    /** The selected item cannot be seen in this picture: on to the next one that is not marked. */
    public void skip() {
        release();
        selected = MarkOrder.after(this, selected);
        handle = 0;
        changed();
    }

    /** A drag begins: all its moves are undone as one. Whatever else is done ends it, with the mark where it is by then. */
    public void grab() {
        release();
        gesture = Optional.of(new Gesture(step(), repeat));
    }

    /** Moves the selected item while it is dragged; without a drag going on nothing is moved. */
    public void drag(ImagePoint to) {
        if (gesture.isPresent() && selected.isPresent() && marks(large).isPresent()) {
            ViewMarks moved = Marking.put(marks(large).get(), selected.get(), handle, to, sheet().clickSigmaPx());
            if (repeating()) {
                repeat = Optional.of(moved);
            } else {
                lesson = lesson.withSheet(sheet().withView(moved));
            }
            changed();
        }
    }

    /** The drag ends. */
    public void release() {
        Optional<Gesture> ended = gesture;
        gesture = Optional.empty();
        ended.ifPresent(g -> {
            if (!g.before().sheet().equals(sheet())) {
                history.remember(g.before());
                settled();
            }
            changed();
        });
    }

    /** Drops a drag: the mark is where it was before. Answers whether there was one. */
    public boolean drop() {
        Optional<Gesture> dropped = gesture;
        gesture = Optional.empty();
        dropped.ifPresent(g -> {
            lesson = lesson.withSheet(g.before().sheet());
            repeat = g.repeat();
            changed();
        });
        return dropped.isPresent();
    }

    private History.Step step() {
        return new History.Step(sheet(), selection());
    }

    public void nudge(double dxPx, double dyPx) {
        release();
        if (selected.isPresent() && marks(large).isPresent()) {
            List<ImagePoint> handles = Marking.handles(marks(large).get(), selected.get());
            if (handle < handles.size()) {
                put(Marking.put(marks(large).get(), selected.get(), handle, handles.get(handle).plus(dxPx, dyPx),
                        sheet().clickSigmaPx()));
            }
        }
    }

    public void delete() {
        release();
        if (selected.isPresent() && marks(large).isPresent()) {
            put(Marking.delete(marks(large).get(), selected.get()));
        }
    }

    public void handedness(Handedness handedness) {
        apply(sheet().withHandedness(handedness));
    }

    public void club(Club club) {
        apply(sheet().withClub(club));
    }

    /** Any other change of the sheet, undoable. */
    public void apply(MarkSheet changed) {
        release();
        apply(changed, selection());
    }

    private void apply(MarkSheet changed, Selection selection) {
        if (!changed.equals(sheet())) {
            history.remember(new History.Step(sheet(), selection));
            lesson = lesson.withSheet(changed);
        }
        changed();
        settled();
    }

    /** Changes what is written of the lesson, not what is marked. */
    public void describe(UnaryOperator<Lesson> change) {
        lesson = change.apply(lesson);
        changed();
        settled();
    }

    public boolean canUndo() {
        return history.canUndo();
    }

    public boolean canRedo() {
        return history.canRedo();
    }

    /** Takes the last change back and selects what it was made to. */
    public void undo() {
        release();
        history.undo(step()).ifPresent(this::restore);
    }

    public void redo() {
        release();
        history.redo(step()).ifPresent(this::restore);
    }

    private void restore(History.Step step) {
        lesson = lesson.withSheet(step.sheet());
        large = step.selection().view();
        selected = step.selection().item();
        handle = step.selection().handle();
        changed();
        settled();
    }

    private void changed() {
        List.copyOf(listeners).forEach(Listener::changed);
    }

    private void settled() {
        List.copyOf(listeners).forEach(Listener::settled);
    }
}
