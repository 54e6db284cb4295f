package org.toeline.desk.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Property: how time goes by while a film plays. */
class FilmClockTest {

    private static final Span WHOLE = new Span(0, 5);
    private static final double EXACT = 1e-12;
    private static final double ALL_READY = Double.POSITIVE_INFINITY;

    private static double next(double at, double pulse, Pace pace, double ready, Optional<Span> repeats) {
        return FilmClock.next(at, pulse, pace, WHOLE, ready, repeats);
    }

    @Test
    void atItsPaceAndItsWay() {
        assertThat(next(1, 0.016, Pace.REAL, ALL_READY, Optional.empty())).isCloseTo(1.016, within(EXACT));
        Pace eighth = Pace.REAL.slower().slower().slower().slower();
        assertThat(eighth.slowed()).isEqualTo(8);
        assertThat(next(1, 0.016, eighth, ALL_READY, Optional.empty())).isCloseTo(1.002, within(EXACT));
        assertThat(next(1, 0.016, eighth.turned(), ALL_READY, Optional.empty())).isCloseTo(0.998, within(EXACT));
    }

    @Test
    void neverBeyondWhatIsReadyNorTheEnds() {
        assertThat(next(1, 0.05, Pace.REAL, 1.02, Optional.empty())).isEqualTo(1.02);
        assertThat(next(4.99, 0.05, Pace.REAL, ALL_READY, Optional.empty())).isEqualTo(5);
        assertThat(FilmClock.ended(5, Pace.REAL, WHOLE)).isTrue();
        assertThat(next(0.01, 0.05, Pace.REAL.turned(), ALL_READY, Optional.empty()))
                .isZero();
        assertThat(FilmClock.ended(0, Pace.REAL.turned(), WHOLE)).isTrue();
        assertThat(FilmClock.ended(0, Pace.REAL, WHOLE)).isFalse();
    }

    /** After a pause of the whole machine the film goes on where it was. */
    @Test
    void aLongPulseIsNoJump() {
        assertThat(next(1, 3, Pace.REAL, ALL_READY, Optional.empty())).isCloseTo(1.1, within(EXACT));
    }

    @Test
    void aStretchIsPlayedOverAndOver() {
        Optional<Span> stretch = Optional.of(new Span(2, 3));
        assertThat(next(2.99, 0.05, Pace.REAL, ALL_READY, stretch)).isEqualTo(2);
        assertThat(next(2.01, 0.05, Pace.REAL.turned(), ALL_READY, stretch)).isEqualTo(3);
        assertThat(next(0.5, 0.05, Pace.REAL, ALL_READY, stretch))
                .as("from outside it goes to its beginning")
                .isEqualTo(2);
        assertThat(next(2.5, 0.05, Pace.REAL, ALL_READY, stretch)).isCloseTo(2.55, within(EXACT));
    }
}
