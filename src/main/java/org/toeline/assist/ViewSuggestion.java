package org.toeline.assist;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/**
 * All that the program sees in one view; nothing of it counts before a person has accepted it.
 *
 * @param view      which view it seems to be; empty where the picture does not tell
 * @param hand      which hand; empty likewise, and always a guess: a mirrored clip looks like the other hand
 * @param landmarks of the body, and the club's head and grip end, each with its spread
 * @param ball      its outline
 * @param rods      bars on the ground with both ends, the longest first
 * @param uprights  edges of posts and the like, each with its spread
 * @param missing   what is not there, and why
 * @param doubtful  what is there and had better be looked at first
 */
public record ViewSuggestion(
        Optional<View> view,
        Optional<Handedness> hand,
        List<Mark> landmarks,
        Optional<BallMark> ball,
        List<SnappedRod> rods,
        List<Upright> uprights,
        Map<Part, Reason> missing,
        Map<Part, Reason> doubtful) {

    /** What is looked for. */
    public enum Part {
        BODY,
        SHAFT,
        BALL,
        RODS,
        UPRIGHTS
    }

    /** Why something is missing or doubtful. */
    public enum Reason {
        /** Nobody is in the picture. */
        NOBODY,
        /** Somebody is, but not clearly from head to foot, or not one alone. */
        NOT_CLEAR,
        /** The player stands otherwise than this view would show. */
        OTHER_VIEW,
        /** The player seems to play from the other hand. */
        OTHER_HAND,
        /** Both shoulders lie in one place: which is which cannot be seen. */
        UNORDERED,
        /** Nothing of the kind was found. */
        NOT_FOUND,
        /** More than one that could be it. */
        SEVERAL,
        /** What it is looked for with is missing: without a shaft there is no ball. */
        NO_SHAFT,
        /** It needs a hand: draw it. */
        BY_HAND
    }

    /** @param sigmaPx of either end across it, pixels */
    public record Upright(ImagePoint from, ImagePoint to, double sigmaPx) {}

    public ViewSuggestion {
        landmarks = List.copyOf(landmarks);
        rods = List.copyOf(rods);
        uprights = List.copyOf(uprights);
        missing = Map.copyOf(missing);
        doubtful = Map.copyOf(doubtful);
    }

    /** Nothing at all, for one reason. */
    static ViewSuggestion nothing(Reason reason) {
        Map<Part, Reason> all = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            all.put(part, reason);
        }
        return new ViewSuggestion(
                Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of(), List.of(), all, Map.of());
    }

    /** Whether there is anything to be looked at. */
    public boolean isEmpty() {
        return landmarks.isEmpty() && ball.isEmpty() && rods.isEmpty() && uprights.isEmpty();
    }
}
