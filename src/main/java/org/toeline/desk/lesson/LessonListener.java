package org.toeline.desk.lesson;

/** Told of changes of the lesson on the desk. */
public interface LessonListener {

    /** Marks, clips, selection or the large view changed. */
    void changed();

    /** A gesture was completed: what is marked now should be kept. */
    default void settled() {}

    /** What the hand asked for was not done: another frame is looked at than the marked one. */
    default void refused() {}
}
