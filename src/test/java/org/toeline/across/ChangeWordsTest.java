package org.toeline.across;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.reading.Measured;
import org.toeline.reading.ReadingKind;

/** Changes in words; figures rounded as {@link Figures} rounds them. */
class ChangeWordsTest {

    private final ChangeWords words = new ChangeWords(Words.english());

    /** No spread at all, known for certain. */
    private static final OwnSpread NONE = new OwnSpread(0, 1e4, 3);

    private static LessonChange change(double from, double to, double u) {
        return LessonChange.between(new Measured(from, u), new Measured(to, u), NONE, Family.ALONE);
    }

    /** 1.96·√2·1.5 = 4.16, rounded up to 5; 8 is more, 5 at 80 % too, 1 is not. */
    @Test
    void namesTheCallAndTheFigure() {
        ReadingKind kind = ReadingKind.BALL_TO_LEAD_SHOULDER;
        assertThat(words.change(kind, change(12, 4, 1.5))).isEqualTo("real: −8 ± 5\u00a0cm");
        assertThat(words.change(kind, change(4, 8, 1.5))).isEqualTo("too close to call: +4 ± 5\u00a0cm");
        assertThat(words.change(kind, change(4, 5, 1.5))).isEqualTo("not shown: +1 ± 5\u00a0cm");
    }

    /** 8 cm are 3.15 in, and 4.16 cm are 1.64, rounded up to 1.7. */
    @Test
    void inchesWhereTheCoachWantsThem() {
        ChangeWords inches = new ChangeWords(Words.of(Locale.ENGLISH, LengthUnit.INCH));
        assertThat(inches.change(ReadingKind.BALL_TO_LEAD_SHOULDER, change(12, 4, 1.5)))
                .isEqualTo("real: −3.1 ± 1.7\u00a0in");
    }

    @Test
    void namesWhatChanged() {
        assertThat(words.real(List.of(ReadingKind.SHOULDER_TILT, ReadingKind.TEE_HEIGHT)))
                .isEqualTo("Really changed: shoulder tilt and tee height.");
        assertThat(words.real(List.of())).isEqualTo("Nothing is shown to have really changed.");
    }

    /** Slope 1 with 1.96·1.25/√10 = 0.775, rounded up to 0.8. */
    @Test
    void aTrendHasItsInterval() {
        Trend trend = Trend.of(
                        List.of(5.0, 6.0, 7.0, 8.0, 9.0).stream()
                                .map(v -> new Trend.Point(v, new Measured(v, 1.25)))
                                .toList(),
                        NONE,
                        Family.ALONE)
                .orElseThrow();
        assertThat(words.trend(ReadingKind.SHOULDER_TILT, trend)).isEqualTo("trend: +1.0 ± 0.8° a lesson");
    }
}
