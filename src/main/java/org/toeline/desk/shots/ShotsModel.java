package org.toeline.desk.shots;

import java.util.AbstractList;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.toeline.flight.Shot;
import org.toeline.flight.table.Meaning;

/**
 * The shots of the lesson on the desk while they are typed. Every change that is finished is handed on to be kept and can be
 * undone; what is being typed is shown at once and kept when it is finished. Knows no control.
 */
final class ShotsModel {

    private static final int MOST_UNDONE = 500;

    private final Consumer<List<Shot>> keep;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Deque<List<TypedShot>> earlier = new ArrayDeque<>();
    private final Deque<List<TypedShot>> undone = new ArrayDeque<>();
    private List<TypedShot> kept = List.of();
    private List<TypedShot> shown = List.of();
    private ShotUnits units = ShotUnits.METRIC;

    /** @param keep is given all shots of the lesson after each change: a list that does not change, to be read on any thread */
    ShotsModel(Consumer<List<Shot>> keep) {
        this.keep = keep;
    }

    /** @param listener is told of every change, also of what is being typed */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** Rows of shots as the ledger or a table has them; of many that takes a while. */
    static List<TypedShot> rowsOf(List<Shot> shots) {
        return List.copyOf(shots.stream().map(TypedShot::of).toList());
    }

    /** Other shots, those of another lesson; nothing of the earlier ones can be undone. */
    void load(List<TypedShot> rows) {
        earlier.clear();
        undone.clear();
        kept = List.copyOf(rows);
        show(kept);
    }

    ShotUnits units() {
        return units;
    }

    void useUnits(ShotUnits changed) {
        units = changed;
        show(shown);
    }

    /** The rows as they are shown, with what is being typed. */
    List<TypedShot> rows() {
        return shown;
    }

    /** A row; beyond the last there is an empty one to type into. */
    TypedShot row(int index) {
        return index >= 0 && index < shown.size() ? shown.get(index) : TypedShot.EMPTY;
    }

    List<Shot> shots() {
        return seen(shown, TypedShot::shot);
    }

    /** Rows seen as something else: nothing is copied, since of many rows that would hold up whoever types. */
    private static <T> List<T> seen(List<TypedShot> rows, Function<TypedShot, T> as) {
        return new AbstractList<>() {
            @Override
            public T get(int index) {
                return as.apply(rows.get(index));
            }

            @Override
            public int size() {
                return rows.size();
            }
        };
    }

    /** A cell as far as it is typed: shown, not kept yet. */
    void typing(int row, Meaning meaning, String text) {
        show(with(row, meaning, text));
    }

    /** What is being typed is given up. */
    void abandon() {
        show(kept);
    }

    /** A cell is finished. */
    void type(int row, Meaning meaning, String text) {
        change(with(row, meaning, text));
    }

    private List<TypedShot> with(int row, Meaning meaning, String text) {
        List<TypedShot> rows = new ArrayList<>(kept);
        TypedShot before = row < rows.size() ? rows.get(row) : TypedShot.EMPTY;
        TypedShot typed = before.typed(meaning, text, units);
        if (row < rows.size()) {
            rows.set(row, typed);
        } else if (!typed.blank()) {
            rows.add(typed);
        }
        return rows;
    }

    void remove(int row) {
        if (row >= 0 && row < kept.size()) {
            List<TypedShot> rows = new ArrayList<>(kept);
            rows.remove(row);
            change(rows);
        }
    }

    /** How many of these shots look exactly like a row; of many that takes a while. */
    static int alike(List<TypedShot> rows, List<TypedShot> more) {
        Set<Shot> known = rows.stream().map(TypedShot::kept).collect(Collectors.toSet());
        return known.isEmpty()
                ? 0
                : (int) more.stream()
                        .map(TypedShot::kept)
                        .filter(known::contains)
                        .count();
    }

    /** More shots after those that are there, all of them. */
    void add(List<TypedShot> more) {
        List<TypedShot> rows = new ArrayList<>(kept);
        rows.addAll(more);
        change(rows);
    }

    /** @param why a shot is put aside; empty lets it count again */
    void putAside(int row, String why) {
        if (row >= 0 && row < kept.size()) {
            List<TypedShot> rows = new ArrayList<>(kept);
            rows.set(row, rows.get(row).aside(why));
            change(rows);
        }
    }

    boolean canUndo() {
        return !earlier.isEmpty();
    }

    boolean canRedo() {
        return !undone.isEmpty();
    }

    void undo() {
        back(earlier, undone);
    }

    void redo() {
        back(undone, earlier);
    }

    private void back(Deque<List<TypedShot>> from, Deque<List<TypedShot>> to) {
        if (!from.isEmpty()) {
            to.push(kept);
            kept = from.pop();
            handOn();
            show(kept);
        }
    }

    private void change(List<TypedShot> rows) {
        if (!same(rows, kept)) {
            earlier.push(kept);
            if (earlier.size() > MOST_UNDONE) {
                earlier.removeLast();
            }
            undone.clear();
            kept = List.copyOf(rows);
            handOn();
        }
        show(kept);
    }

    /** Whether nothing changed; of many rows nearly all are the very same objects. */
    private static boolean same(List<TypedShot> rows, List<TypedShot> others) {
        if (rows.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i) != others.get(i) && !rows.get(i).equals(others.get(i))) {
                return false;
            }
        }
        return true;
    }

    private void handOn() {
        keep.accept(seen(kept, TypedShot::kept));
    }

    private void show(List<TypedShot> rows) {
        shown = List.copyOf(rows);
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
