package org.toeline.assist;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;

/**
 * All that the program is sure to see in one view; nothing of it counts before a person has accepted it. What it is not sure
 * of is missing, with the reason.
 *
 * @param view      which view it seems to be; empty where the picture does not tell
 * @param hand      which hand; empty likewise, and always a guess: a mirrored clip looks like the other hand
 * @param spanPx    of the player, from the nose down to the soles, pixels; empty where nobody is seen, and close by
 * @param landmarks of the body, and the club's head and grip end, each with its spread
 * @param ball      its outline
 * @param rods      bars on the ground, the longest first; an end with {@link SnappedRod.Beyond#COVER} is none of the rod's
 * @param uprights  edges of posts and the like, the longest first
 * @param missing   what is not there, and why
 */
public record ViewSuggestion(
        Optional<View> view,
        Optional<Handedness> hand,
        OptionalDouble spanPx,
        List<Mark> landmarks,
        Optional<BallMark> ball,
        List<SnappedRod> rods,
        List<VerticalMark> uprights,
        Map<Part, Reason> missing) {

    /** What is looked for. */
    public enum Part {
        BODY,
        SHAFT,
        BALL,
        RODS,
        UPRIGHTS,
        /** The highest point of the club's head, beside the ball at the tee. */
        CROWN,
        /** Where the tee or the ball meets the ground. */
        GROUND
    }

    /** Why something is missing. */
    public enum Reason {
        /** Nobody is in the picture. */
        NOBODY,
        /** Somebody is, but not clearly from head to foot, or not one alone. */
        NOT_CLEAR,
        /** The player stands otherwise than this view would show. */
        OTHER_VIEW,
        /** The player seems to play from the other hand. */
        OTHER_HAND,
        /** Nothing of the kind was found. */
        NOT_FOUND,
        /** More than one that could be it. */
        SEVERAL,
        /** What it is looked for with is missing: without a shaft there is no ball. */
        NO_SHAFT,
        /** No ball alone is seen at its end: it may be something else. */
        NO_BALL,
        /** In most other frames in which the player stands still it is not there, or elsewhere. */
        UNSTEADY
    }

    public ViewSuggestion {
        landmarks = List.copyOf(landmarks);
        rods = List.copyOf(rods);
        uprights = List.copyOf(uprights);
        missing = Map.copyOf(missing);
    }

    /** Nothing at all, for one reason. */
    static ViewSuggestion nothing(Reason reason) {
        Map<Part, Reason> all = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            all.put(part, reason);
        }
        return new ViewSuggestion(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                all);
    }

    /** With landmarks in place of those there are. */
    public ViewSuggestion with(List<Mark> others) {
        return new ViewSuggestion(view, hand, spanPx, others, ball, rods, uprights, missing);
    }

    /** Whether there is anything to be looked at. */
    public boolean isEmpty() {
        return landmarks.isEmpty() && ball.isEmpty() && rods.isEmpty() && uprights.isEmpty();
    }
}
