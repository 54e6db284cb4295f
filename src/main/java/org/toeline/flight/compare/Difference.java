package org.toeline.flight.compare;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Sentences;

/**
 * One figure of two setups.
 *
 * @param before     shots of the first setup that have the figure
 * @param after      shots of the second
 * @param found      the difference; null if there are too few shots for any, or the figures do not vary at all
 * @param moreShots  if too few, about how many more with each setup would bring the interval's half width down to what a
 *                   coach would act on; else 0
 * @param worth      the smallest difference a coach would act on, with this club and at this speed
 */
public record Difference(
        ShotFigure figure,
        int before,
        int after,
        State state,
        @Nullable Estimate found,
        int moreShots,
        double worth) {

    /** More than this is not worth counting. */
    public static final int MOST_MORE = 200;

    public Difference {
        if ((state == State.TOO_FEW) != (moreShots > 0)) {
            throw new IllegalArgumentException(state + " with " + moreShots + " more shots");
        }
    }

    public Optional<Estimate> estimate() {
        return Optional.ofNullable(found);
    }

    /** Whether the change is real and the whole interval smaller than what a coach would act on, as among very many shots. */
    public boolean isRealButSmall() {
        return state == State.REAL && found != null && Math.max(Math.abs(found.low()), Math.abs(found.high())) < worth;
    }

    /** The state in words, in the person's language: “real”, “real, but too small to act on”, “not shown”, “too few shots: about 7 more with each setup”. */
    public String words() {
        Sentences sentences = Sentences.of(Difference.class);
        return switch (state) {
            case REAL -> sentences.of(isRealButSmall() ? "difference.real-small" : "difference.real");
            case NOT_SHOWN -> sentences.of("difference.not-shown");
            case TOO_FEW ->
                moreShots > MOST_MORE
                        ? sentences.of("difference.too-few-many", MOST_MORE)
                        : sentences.of("difference.too-few", moreShots);
        };
    }
}
