package org.toeline.assist.learn;

import org.toeline.assist.learn.Correction.Kind;
import org.toeline.geometry.Finite;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/**
 * A landmark that was suggested to the coach, to be held against where it is marked in the end.
 *
 * @param suggested as the program by itself suggests it
 * @param shown     as it was shown: moved by what was learnt before
 * @param spanPx    of the player in this picture, nose to soles, above zero
 */
public record Shown(View view, Mark suggested, Mark shown, double spanPx, Handedness hand) {

    /** A mark that was moved by less than this share of the stated spread stands where it was suggested. */
    private static final double SAME = 0.1;

    /** How the coach came to the mark. */
    public enum Look {
        /** By itself, magnified. */
        ALONE,
        /** It was accepted with all the others, or placed by hand. */
        OTHERWISE
    }

    public Shown {
        Finite.requirePositive(spanPx, "spanPx");
    }

    /**
     * With what this mark tells. A mark accepted as it stood, together with all the others, tells nothing: nobody is known to have
     * looked at it.
     */
    public CorrectionBook onto(CorrectionBook book, Mark marked, Look look) {
        Corrections before = book.of(view, shown.landmark()).orElseGet(() -> Corrections.none(view, shown.landmark()));
        double moved = shown.at().distancePx(marked.at()) / spanPx;
        if (moved > Corrections.MISS * before.stated()) {
            return book.with(before.withMiss());
        }
        if (moved < SAME * before.stated()) {
            return look == Look.ALONE ? book.with(before.with(between(shown, Kind.AGREED))) : book;
        }
        return book.with(before.with(between(marked, Kind.MOVED)));
    }

    private Correction between(Mark marked, Kind kind) {
        return Correction.between(suggested.at(), marked.at(), spanPx, hand, kind);
    }
}
