package org.toeline.mark;

import org.toeline.geometry.ImagePoint;

/**
 * Words of the coach's own, pinned to a place of a view's marked frame.
 *
 * @param at      what they are about, where their arrow ends
 * @param stand   the middle of where they stand
 * @param onStill whether the player's still shows them
 */
public record PinnedWords(View view, String text, ImagePoint at, ImagePoint stand, boolean onStill) {

    /** As much as fits beside a player on a phone. */
    public static final int LONGEST = 120;

    public PinnedWords {
        if (text.isBlank() || text.length() > LONGEST) {
            throw new IllegalArgumentException("text: " + text.length());
        }
    }

    public PinnedWords to(View other) {
        return new PinnedWords(other, text, at, stand, onStill);
    }

    public PinnedWords saying(String other) {
        return new PinnedWords(view, other, at, stand, onStill);
    }

    public PinnedWords standing(ImagePoint place) {
        return new PinnedWords(view, text, at, place, onStill);
    }

    /** As they stand on another frame, where what they are about has gone there. */
    public PinnedWords moved(ImagePoint to) {
        return new PinnedWords(view, text, to, stand.plus(to.xPx() - at.xPx(), to.yPx() - at.yPx()), onStill);
    }

    public PinnedWords onStill(boolean shown) {
        return new PinnedWords(view, text, at, stand, shown);
    }

    /** As it must be for a picture of that size. */
    public PinnedWords within(double widthPx, double heightPx) {
        return new PinnedWords(view, text, within(at, widthPx, heightPx), within(stand, widthPx, heightPx), onStill);
    }

    private static ImagePoint within(ImagePoint p, double widthPx, double heightPx) {
        return new ImagePoint(Math.max(0, Math.min(widthPx, p.xPx())), Math.max(0, Math.min(heightPx, p.yPx())));
    }
}
