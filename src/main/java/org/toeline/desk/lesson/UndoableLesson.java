package org.toeline.desk.lesson;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * A lesson, what is selected in it and which picture is large; every change can be undone, a drag as one, and listeners are told
 * of it.
 */
abstract class UndoableLesson {

    Lesson lesson;
    View large = View.FACE_ON;
    Optional<Item> selected = Optional.empty();
    int handle;
    private final List<LessonListener> listeners = new ArrayList<>();
    private final History history = new History();
    private Optional<Path> file = Optional.empty();
    private Film film = Film.NONE;
    /** How it was before the drag that is going on. */
    private Optional<History.Step> gesture = Optional.empty();

    UndoableLesson(Lesson lesson) {
        this.lesson = lesson;
    }

    public void listen(LessonListener listener) {
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

    public void keepIn(Path where) {
        file = Optional.of(where);
        settled();
    }

    /** Another lesson, with nothing to be undone. */
    void begin(Lesson opened, Optional<Path> from) {
        lesson = opened;
        file = from;
        history.clear();
        gesture = Optional.empty();
    }

    void select(Optional<Item> item) {
        selected = item;
        handle = 0;
        changed();
    }

    /** What is to be marked next on the large view; empty when everything is. */
    abstract Optional<Item> next();

    /** That is selected. */
    void selectNext() {
        select(next());
    }

    /** Whether there is such a thing: a floor point goes with its layout, and what lies on the ground is asked while nothing is known to. */
    private boolean isThere(Item item) {
        if (item instanceof Item.OfGround) {
            return sheet().floor().points().isEmpty();
        }
        return !(item instanceof Item.OfFloor f)
                || sheet().floor().point(f.pointId()).isPresent();
    }

    Selection selection() {
        return new Selection(large, selected, handle);
    }

    /**
     * A drag begins, unless another frame than the marked one is shown: all its moves are undone as one. Whatever else is done ends it,
     * with the mark where it is by then.
     */
    public void grab() {
        release();
        if (refused()) {
            return;
        }
        gesture = Optional.of(step());
    }

    /** Whether a drag is going on. */
    boolean isGrabbed() {
        return gesture.isPresent();
    }

    /** The drag ends. */
    public void release() {
        Optional<History.Step> before = gesture;
        gesture = Optional.empty();
        before.ifPresent(b -> {
            if (!b.isOf(lesson)) {
                history.remember(b);
                settled();
            }
            changed();
        });
    }

    /** Drops a drag: the mark is where it was before. Answers whether there was one. */
    public boolean drop() {
        Optional<History.Step> before = gesture;
        gesture = Optional.empty();
        before.ifPresent(b -> {
            lesson = b.in(lesson);
            changed();
        });
        return before.isPresent();
    }

    private History.Step step() {
        return History.Step.of(lesson, selection());
    }

    /** Any other change of the sheet, undoable. */
    public void apply(MarkSheet changed) {
        release();
        change(changed, lesson.unfinished(), selection());
    }

    /** @param of what undoing it selects */
    void change(MarkSheet sheet, Unfinished unfinished, Selection of) {
        change(lesson.withSheet(sheet).withUnfinished(unfinished), of);
    }

    /** @param of what undoing it selects */
    void change(Lesson to, Selection of) {
        History.Step before = History.Step.of(lesson, of);
        lesson = pinned(to);
        if (!before.isOf(lesson)) {
            history.remember(before);
        }
        changed();
        settled();
    }

    /** The frame on which the first mark of a view is placed is its marked frame from then on. */
    private Lesson pinned(Lesson to) {
        Lesson pinned = to;
        for (ViewMarks marks : to.sheet().views()) {
            View view = marks.view();
            OptionalDouble shown = film.shown(view);
            boolean first =
                    !begun(view) && !marks.isBlank() && !sheet().view(view).equals(Optional.of(marks));
            if (first && shown.isPresent()) {
                pinned = pinned.withMoment(view, m -> m.at(shown.getAsDouble()));
            }
        }
        return pinned;
    }

    /** What is looked at of the clips from now on. */
    public void watch(Film shown) {
        film = shown;
    }

    Film film() {
        return film;
    }

    /** Whether anything of a view was placed or accepted; what is only suggested gives way to the hand. */
    public boolean begun(View view) {
        return begun(lesson, view);
    }

    static boolean begun(Lesson of, View view) {
        return of.sheet().view(view).filter(v -> !v.onlyAccepted().isBlank()).isPresent();
    }

    /** Whether another frame of a view is shown than the one it is marked on, or one whose picture is still on its way. */
    public boolean away(View view) {
        if (!film.has(view)) {
            return false;
        }
        return begun(view)
                ? !film.shows(view, markedAt(view))
                : film.shown(view).isEmpty();
    }

    /** Time of the marked frame; empty for the first of the clip, or while there is none. */
    public OptionalDouble markedAt(View view) {
        ClipMoment moment = lesson.clips().get(view);
        return moment == null ? OptionalDouble.empty() : moment.seconds();
    }

    /** Whether what the hand asks for is refused, since another frame is looked at; listeners are told. */
    boolean refused() {
        boolean away = away(large);
        if (away) {
            refuse();
        }
        return away;
    }

    /** Nothing was done of what the hand asked for. */
    void refuse() {
        List.copyOf(listeners).forEach(LessonListener::refused);
    }

    /** A view's clip lies elsewhere now; what was marked on it stays, and so does what can be undone. */
    public void moved(View view, String clip) {
        known(view, m -> m.moved(clip));
    }

    /** Something is known of a view's clip that no undoing of marks takes back. */
    void known(View view, UnaryOperator<ClipMoment> change) {
        ClipMoment moment = lesson.clips().get(view);
        if (moment != null) {
            everywhere(l -> isOf(l, view, moment.clip()) ? l.withMoment(view, change) : l);
        }
    }

    static boolean isOf(Lesson lesson, View view, String clip) {
        ClipMoment moment = lesson.clips().get(view);
        return moment != null && moment.clip().equals(clip);
    }

    /** Changes the lesson as it is and as undoing and redoing have it, so that neither takes the change back. */
    void everywhere(UnaryOperator<Lesson> change) {
        UnaryOperator<History.Step> step = s -> History.Step.of(change.apply(s.in(lesson)), s.selection());
        history.each(step);
        gesture = gesture.map(step);
        describe(change);
    }

    /** Changes what is written of the lesson, not what is marked. */
    public void describe(UnaryOperator<Lesson> change) {
        Lesson described = change.apply(lesson);
        if (!described.equals(lesson)) {
            lesson = described;
            changed();
            settled();
        }
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
        boolean ofAPicture = step.isOfAPicture(lesson);
        lesson = step.in(lesson);
        if (ofAPicture) {
            large = step.selection().view();
            selected = step.selection().item();
            handle = step.selection().handle();
        }
        changed();
        settled();
    }

    /** Whatever was changed, nothing is selected only when nothing is left to be marked. */
    void changed() {
        if (selected.filter(this::isThere).isEmpty()) {
            selected = next();
            handle = 0;
        }
        List.copyOf(listeners).forEach(LessonListener::changed);
    }

    void settled() {
        List.copyOf(listeners).forEach(LessonListener::settled);
    }
}
