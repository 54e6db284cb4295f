package org.toeline.desk.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * What is only suggested of the large view: looked at one by one, what is doubtful first, and taken as right or taken away.
 * Doubtful is what the other marks speak against, and down the line shoulders of which one hides the other.
 */
public final class Suggestions {

    /** Down the line shoulders nearer than this share of the trunk have been exchanged: which is which is asked. */
    private static final double CLEAR_OF_ONE_ANOTHER = 0.1;

    private static final List<Item> SHOULDERS =
            List.of(new Item.OfLandmark(Landmark.LEAD_SHOULDER), new Item.OfLandmark(Landmark.TRAIL_SHOULDER));

    private final LessonModel lesson;
    private Set<String> doubted = Set.of();
    /** What was accepted by itself, not with all the others. */
    private final Map<View, Set<Landmark>> lookedAt = new EnumMap<>(View.class);

    Suggestions(LessonModel lesson) {
        this.lesson = lesson;
    }

    /** @param names of marks of the large view that the others speak against */
    public void doubted(Set<String> names) {
        doubted = Set.copyOf(names);
    }

    /**
     * Takes the selected suggestion as right, as it stands, and goes on to the next one. Shoulders down the line of which one hides the
     * other are one question, which is which, and answered together.
     */
    public void accept() {
        lesson.release();
        if (lesson.refused()) {
            return;
        }
        suggestion().ifPresent(item -> {
            ViewMarks view = lesson.marks(lesson.large()).orElseThrow();
            ViewMarks marks = accepted(view, item);
            if (item instanceof Item.OfLandmark l) {
                lookedAt.computeIfAbsent(view.view(), v -> EnumSet.noneOf(Landmark.class))
                        .add(l.landmark());
            }
            if (isHiddenShoulder(item)) {
                for (Item other : SHOULDERS) {
                    boolean along = MarkOrder.suggested(marks, other) && !doubted.contains(other.name());
                    marks = along ? accepted(marks, other) : marks;
                }
            }
            lesson.put(marks);
            goOn();
        });
    }

    /** Whether the coach accepted a suggestion of this lesson by itself, which was magnified then. */
    public boolean lookedAt(View view, Landmark landmark) {
        return lookedAt.getOrDefault(view, Set.of()).contains(landmark);
    }

    /** Another lesson comes. */
    void begin() {
        lookedAt.clear();
    }

    /** Takes the selected suggestion away; it is still selected, to be marked by hand or skipped. */
    public void refuse() {
        if (suggestion().isPresent()) {
            lesson.delete();
        }
    }

    /** What is selected, when it is only suggested. */
    public Optional<Item> suggestion() {
        return lesson.selected()
                .filter(i -> lesson.marks(lesson.large())
                        .filter(v -> MarkOrder.suggested(v, i))
                        .isPresent());
    }

    /** Takes all suggestions of the large view as right but the doubtful ones, to which it goes. */
    public void acceptAll() {
        lesson.release();
        if (lesson.refused()) {
            return;
        }
        lesson.marks(lesson.large()).filter(v -> !left().isEmpty()).ifPresent(v -> {
            ViewMarks all = v;
            for (Item item : left()) {
                all = doubtful(item) ? all : accepted(all, item);
            }
            lesson.put(all);
            goOn();
        });
    }

    /** What is still to be looked at in the large view: the doubtful first, then in the order of marking. */
    public List<Item> left() {
        List<Item> items = left(lesson.large());
        items.sort((a, b) -> Boolean.compare(doubtful(b), doubtful(a)));
        return items;
    }

    private List<Item> left(View of) {
        Optional<ViewMarks> view = lesson.marks(of);
        if (view.isEmpty()) {
            return new ArrayList<>();
        }
        List<Item> order = MarkOrder.items(lesson, of);
        List<Item> items = new ArrayList<>(
                order.stream().filter(i -> MarkOrder.suggested(view.get(), i)).toList());
        Marking.marked(view.get()).stream()
                .filter(i -> !order.contains(i) && MarkOrder.suggested(view.get(), i))
                .forEach(items::add);
        return items;
    }

    /** Whether it is to be looked at by itself. */
    public boolean doubtful(Item item) {
        return isHiddenShoulder(item) || doubted.contains(item instanceof Item.OfFloor f ? f.pointId() : item.name());
    }

    private boolean isHiddenShoulder(Item item) {
        return lesson.large() == View.DOWN_THE_LINE && SHOULDERS.contains(item) && !apart();
    }

    /** Whether the shoulders of the large view lie clear of one another, by the length of its trunk. */
    private boolean apart() {
        return lesson.marks(lesson.large())
                .filter(v -> {
                    OptionalDouble shoulders = between(v, Landmark.LEAD_SHOULDER, Landmark.TRAIL_SHOULDER);
                    OptionalDouble trunk = between(v, Landmark.TRAIL_SHOULDER, Landmark.TRAIL_HIP);
                    return shoulders.isPresent()
                            && trunk.isPresent()
                            && shoulders.getAsDouble() > CLEAR_OF_ONE_ANOTHER * trunk.getAsDouble();
                })
                .isPresent();
    }

    private static OptionalDouble between(ViewMarks view, Landmark one, Landmark other) {
        Optional<Mark> a = view.mark(one);
        Optional<Mark> b = view.mark(other);
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.get().at().distancePx(b.get().at()))
                : OptionalDouble.empty();
    }

    /** Selects what is to be looked at first; when that is nothing, what is to be marked. */
    public void lookAtNext() {
        Optional<Item> next = left().stream().findFirst();
        if (next.isPresent()) {
            lesson.select(next.get());
        } else {
            lesson.selectNext();
        }
    }

    /**
     * To what is to be looked at next; when that is nothing in this view, to the next one of which anything is suggested, and last to
     * one on which nothing is marked.
     */
    private void goOn() {
        if (left().isEmpty()) {
            first(v -> !left(v).isEmpty())
                    .or(() -> first(v -> lesson.marks(v).isPresent() && !lesson.begun(v)))
                    .ifPresent(lesson::show);
        }
        lookAtNext();
    }

    private Optional<View> first(Predicate<View> such) {
        return Arrays.stream(View.values())
                .filter(v -> such.test(v) && !lesson.away(v))
                .findFirst();
    }

    private ViewMarks accepted(ViewMarks view, Item item) {
        return Marking.accepted(view, item, lesson.sheet().clickSigmaPx());
    }
}
