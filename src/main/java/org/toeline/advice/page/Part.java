package org.toeline.advice.page;

import java.util.Locale;

/** A part of what a page says about one finding. */
public enum Part {
    /** What is so. */
    SO,
    /** What to do. */
    DO,
    /** Why it matters. */
    WHY,
    /** How the player sees alone that it is right. */
    CHECK,
    /** What to practise, with a dose. */
    DRILL,
    /** What it feels like. */
    FEEL,
    /** What the ball tended to do. */
    FLIGHT;

    /** The name in the keys of phrases. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
