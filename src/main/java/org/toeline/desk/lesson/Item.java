package org.toeline.desk.lesson;

import org.toeline.mark.Landmark;

/** Something that can be marked on a picture. */
public sealed interface Item {

    /** A place on the player or the club. */
    record OfLandmark(Landmark landmark) implements Item {
    }

    /** A point of the floor layout. */
    record OfFloor(String pointId) implements Item {
    }

    /** The ball's outline. */
    record OfBall() implements Item {
    }

    /** Something upright, by its place among the view's verticals; one past the last is a new one. */
    record OfVertical(int index) implements Item {
    }

    Item BALL = new OfBall();
}
