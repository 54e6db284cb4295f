package org.toeline.assist;

import java.util.List;
import org.toeline.mark.Mark;

/** What the body-pose model has to say about a picture. */
public sealed interface LandmarkSuggestion {

    /**
     * A person is seen. Landmarks that are hidden are not among the marks.
     *
     * @param marks all of origin {@link Mark.Origin#SUGGESTED}, each with the spread measured for it
     * @param score that it is a person, 0.9 to 1
     */
    record Landmarks(List<Mark> marks, double score) implements LandmarkSuggestion {

        public Landmarks {
            marks = List.copyOf(marks);
        }
    }

    /** Nothing is suggested. */
    record NoPerson(Reason reason) implements LandmarkSuggestion {

        /** Why not. */
        public enum Reason {
            /** Nothing in the picture looks like a person. */
            NOBODY,
            /** Something does, but not clearly from head to foot. */
            NOT_CLEAR,
            /** This view is not one that shows the player. */
            OTHER_VIEW
        }
    }
}
