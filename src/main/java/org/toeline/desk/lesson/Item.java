package org.toeline.desk.lesson;

import org.toeline.mark.Landmark;

/** Something that can be marked on a picture. */
public sealed interface Item {

    /** What a lesson's document calls it; all uprights have one name. */
    String name();

    /** A place on the player or the club. */
    record OfLandmark(Landmark landmark) implements Item {

        @Override
        public String name() {
            return landmark.id();
        }
    }

    /** A point of the floor layout. */
    record OfFloor(String pointId) implements Item {

        @Override
        public String name() {
            return "floor:" + pointId;
        }
    }

    /** The ball's outline. */
    record OfBall() implements Item {

        @Override
        public String name() {
            return "ball";
        }
    }

    /** Something upright, by its place among the view's verticals; one past the last is a new one. */
    record OfVertical(int index) implements Item {

        @Override
        public String name() {
            return "upright";
        }
    }

    /** What lies on the ground at all: nothing that is marked, but asked before anything else. */
    record OfGround() implements Item {

        @Override
        public String name() {
            return "layout";
        }
    }

    Item BALL = new OfBall();
    Item GROUND = new OfGround();
}
