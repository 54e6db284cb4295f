package org.toeline.desk.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * What is only suggested of the large view: looked at one by one, what is doubtful first, and taken as right or taken away.
 * Doubtful is what the other marks speak against, and down the line the shoulders: there one hides the other.
 */
public final class Suggestions {

    private final LessonModel lesson;
    private Set<String> doubted = Set.of();

    Suggestions(LessonModel lesson) {
        this.lesson = lesson;
    }

    /** @param names of marks of the large view that the others speak against */
    public void doubted(Set<String> names) {
        doubted = Set.copyOf(names);
    }

    /** Takes the selected suggestion as right, as it stands, and goes on to the next one. */
    public void accept() {
        lesson.release();
        if (lesson.refused()) {
            return;
        }
        suggestion().ifPresent(item -> {
            lesson.put(accepted(lesson.marks(lesson.large()).orElseThrow(), item));
            lookAtNext();
        });
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
        lesson.marks(lesson.large()).ifPresent(v -> {
            ViewMarks all = v;
            for (Item item : left()) {
                all = doubtful(item) ? all : accepted(all, item);
            }
            lesson.put(all);
            lookAtNext();
        });
    }

    /** What is still to be looked at in the large view: the doubtful first, then in the order of marking. */
    public List<Item> left() {
        Optional<ViewMarks> view = lesson.marks(lesson.large());
        if (view.isEmpty()) {
            return List.of();
        }
        List<Item> order = MarkOrder.items(lesson, lesson.large());
        List<Item> items = new ArrayList<>(
                order.stream().filter(i -> MarkOrder.suggested(view.get(), i)).toList());
        Marking.marked(view.get()).stream()
                .filter(i -> !order.contains(i) && MarkOrder.suggested(view.get(), i))
                .forEach(items::add);
        items.sort((a, b) -> Boolean.compare(doubtful(b), doubtful(a)));
        return items;
    }

    /** Whether it is to be looked at by itself. */
    public boolean doubtful(Item item) {
        boolean hidden = lesson.large() == View.DOWN_THE_LINE
                && item instanceof Item.OfLandmark l
                && (l.landmark() == Landmark.LEAD_SHOULDER || l.landmark() == Landmark.TRAIL_SHOULDER);
        return hidden || doubted.contains(item instanceof Item.OfFloor f ? f.pointId() : item.name());
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

    private ViewMarks accepted(ViewMarks view, Item item) {
        return Marking.accepted(view, item, lesson.sheet().clickSigmaPx());
    }
}
