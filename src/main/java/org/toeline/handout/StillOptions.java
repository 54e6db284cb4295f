package org.toeline.handout;

/**
 * What goes on the still besides the picture and the one thing to change.
 *
 * @param footer the player's initials and the date, or nothing
 * @param lines  which lines are drawn
 */
public record StillOptions(String footer, Lines lines) {

    /** Only those that matter for the one thing to change first, or all. */
    public enum Lines { THAT_MATTER, ALL }

    public static final StillOptions USUAL = new StillOptions("", Lines.THAT_MATTER);
}
