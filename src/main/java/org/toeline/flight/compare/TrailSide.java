package org.toeline.flight.compare;

/** On which side of the target line, looking at the target, the player's trail side is. */
public enum TrailSide {
    /** A right-handed player's. */
    RIGHT,
    /** A left-handed player's. */
    LEFT
}
