package org.toeline.desk.shots;

/** What is compared on the screen of the shots. */
sealed interface Comparing {

    /** Nothing: the shots of the lesson stand alone. */
    record Nothing() implements Comparing {}

    /** The lesson on the desk with another of the player's. */
    record Lesson(PlayersShots.OfLesson other) implements Comparing {}

    /** The shots of the lesson on the desk that were hit with one setup with those hit with another. */
    record Setups(String first, String second) implements Comparing {}

    /** Whether it is the same choice, whatever shots there are by now. */
    default boolean sameAs(Comparing choice) {
        return this instanceof Lesson mine && choice instanceof Lesson theirs
                ? mine.other.lessonId() == theirs.other.lessonId()
                : equals(choice);
    }
}
