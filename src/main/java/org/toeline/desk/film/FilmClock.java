package org.toeline.desk.film;

import java.util.Optional;

/**
 * Where a film that plays is at the next pulse of the screen. Time is that of the screen's own timer, never more than a tenth of
 * a second at once, and never beyond what every view has ready: a busy machine plays more slowly and never out of step.
 */
final class FilmClock {

    private static final double MOST_AT_ONCE_S = 0.1;

    private FilmClock() {}

    /**
     * The next moment, real seconds.
     *
     * @param atS     where it is
     * @param pulseS  since the last pulse
     * @param whole   all of it
     * @param readyS  up to where every view has pictures
     * @param repeats the stretch that is played over and over
     */
    static double next(double atS, double pulseS, Pace pace, Span whole, double readyS, Optional<Span> repeats) {
        double step = pace.filmSeconds(Math.max(0, Math.min(MOST_AT_ONCE_S, pulseS)));
        double next = atS + step;
        if (repeats.isPresent()) {
            Span span = repeats.get();
            boolean out =
                    step > 0 ? next > span.toS() || next < span.fromS() : next < span.fromS() || next > span.toS();
            next = out ? (step > 0 ? span.fromS() : span.toS()) : next;
        }
        return Math.min(whole.within(next), Math.max(whole.fromS(), readyS));
    }

    /** Whether it has come to its end and nothing is repeated. */
    static boolean ended(double atS, Pace pace, Span whole) {
        return pace.direction() == Pace.Direction.FORWARDS ? atS >= whole.toS() : atS <= whole.fromS();
    }
}
