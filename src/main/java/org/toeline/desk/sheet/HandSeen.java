package org.toeline.desk.sheet;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/**
 * From which hand the pictures show the player to play, held against the hand that is set. Where the two differ, lead and trail
 * would all be exchanged, and the lesson mirrored without a word: the coach says which is right, once for each clip.
 */
final class HandSeen {

    /** A view whose picture shows a hand that is not the one that is set. */
    record Differs(View view, Handedness hand) {}

    private record Shown(String clip, Handedness hand) {}

    private final Map<View, Shown> shown = new EnumMap<>(View.class);
    /** Where the coach said that the hand that is set is the right one: what was shown, and the hand that is kept. */
    private final Map<Shown, Set<Handedness>> kept = new HashMap<>();

    private Runnable changed = () -> {};

    /** @param toldOfIt whenever there may be something else to ask, though the lesson is as it was */
    void listen(Runnable toldOfIt) {
        changed = toldOfIt;
    }

    /** A clip's marked frame was looked at; empty where it does not tell. */
    void saw(View view, String clip, Optional<Handedness> hand) {
        shown.remove(view);
        hand.ifPresent(h -> shown.put(view, new Shown(clip, h)));
        changed.run();
    }

    /** The first view that shows another hand than is set, of which the coach has not said which is right. */
    Optional<Differs> asks(Lesson lesson) {
        for (Map.Entry<View, Shown> entry : shown.entrySet()) {
            if (differs(entry.getKey(), lesson) && !isKept(entry.getValue(), lesson)) {
                return Optional.of(new Differs(entry.getKey(), entry.getValue().hand()));
            }
        }
        return Optional.empty();
    }

    /** The hand that is set is the right one, whatever the clips show that are there by now. */
    void keep(Lesson lesson) {
        shown.forEach((view, what) -> {
            if (differs(view, lesson)) {
                kept.computeIfAbsent(what, w -> new HashSet<>())
                        .add(lesson.sheet().handedness());
            }
        });
        changed.run();
    }

    /**
     * Whether lead and trail may be suggested of a view: not while it is asked, nor ever where its own picture shows the other
     * hand, as a mirrored clip does.
     */
    boolean tellsSides(View view, Lesson lesson) {
        return asks(lesson).isEmpty() && !differs(view, lesson);
    }

    /** Another lesson. */
    void forget() {
        shown.clear();
        kept.clear();
        changed.run();
    }

    private boolean differs(View view, Lesson lesson) {
        Shown what = shown.get(view);
        return what != null
                && what.hand() != lesson.sheet().handedness()
                && Optional.ofNullable(lesson.clips().get(view))
                        .filter(m -> m.clip().equals(what.clip()))
                        .isPresent();
    }

    private boolean isKept(Shown what, Lesson lesson) {
        return kept.getOrDefault(what, Set.of()).contains(lesson.sheet().handedness());
    }
}
