package org.toeline.ledger;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.toeline.language.Sentences;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * Where the marking of a lesson stands, apart from the marks: kept with it, so that it goes on where it was left.
 *
 * @param unseen by view, what the coach could not see there: a landmark's name, {@code ball}, {@code upright}, or
 *               {@code floor:} and a floor point; {@code layout} where nothing lies on the ground
 * @param again  what was marked a second time so far, to learn the coach's own click spread
 */
public record Unfinished(Map<View, Set<String>> unseen, Map<View, ViewMarks> again) {

    public static final Unfinished NOTHING = new Unfinished(Map.of(), Map.of());

    public Unfinished {
        unseen = unseen.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> Set.copyOf(e.getValue())));
        again = Map.copyOf(again);
        again.forEach((view, marks) -> {
            if (marks.view() != view) {
                throw new IllegalArgumentException(Sentences.of(Unfinished.class)
                        .of("lesson.again-view", marks.view().id(), view.id()));
            }
        });
    }

    public Set<String> unseen(View view) {
        return unseen.getOrDefault(view, Set.of());
    }

    public Optional<ViewMarks> again(View view) {
        return Optional.ofNullable(again.get(view));
    }

    /** With what cannot be seen in a view changed. */
    public Unfinished withUnseen(View view, Function<Set<String>, Set<String>> change) {
        Map<View, Set<String>> changed = new EnumMap<>(View.class);
        changed.putAll(unseen);
        changed.put(view, change.apply(new TreeSet<>(unseen(view))));
        return new Unfinished(changed, again);
    }

    public Unfinished withAgain(ViewMarks marks) {
        Map<View, ViewMarks> changed = new EnumMap<>(View.class);
        changed.putAll(again);
        changed.put(marks.view(), marks);
        return new Unfinished(unseen, changed);
    }

    public Unfinished withoutAgain(View view) {
        Map<View, ViewMarks> changed = new EnumMap<>(View.class);
        changed.putAll(again);
        changed.remove(view);
        return new Unfinished(unseen, changed);
    }
}
