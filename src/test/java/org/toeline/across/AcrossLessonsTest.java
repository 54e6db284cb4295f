package org.toeline.across;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.ledger.store.TestLessons;
import org.toeline.ledger.store.rows.LessonFindings;

/** Findings of several lessons become figures over time. */
class AcrossLessonsTest {

    private static List<LessonFindings> lessons(String setup, double... tilts) {
        List<LessonFindings> lessons = new ArrayList<>();
        for (double tilt : tilts) {
            lessons.add(new LessonFindings(lessons.size() + 1, Optional.empty(), setup, TestLessons.findings(tilt)));
        }
        return lessons;
    }

    @Test
    void noneOneAndTwoLessons() {
        assertThat(AcrossLessons.of(List.of())).isEmpty();
        AcrossLessons one = AcrossLessons.of(lessons("", 7)).get(0);
        assertThat(one.reading()).isEqualTo("shoulder-tilt");
        assertThat(one.change()).isEmpty();
        assertThat(one.trend()).isEmpty();
        AcrossLessons two = AcrossLessons.of(lessons("", 7, 11)).get(0);
        assertThat(two.change().orElseThrow().call())
                .as("4 against 1.96·√2·√(1.25² + 1.5²) = 5.4, and more as one of two readings")
                .isEqualTo(ChangeCall.TOO_CLOSE);
        assertThat(AcrossLessons.of(lessons("", 7, 18))
                        .get(0)
                        .change()
                        .orElseThrow()
                        .call())
                .isEqualTo(ChangeCall.REAL);
        assertThat(two.trend()).isEmpty();
    }

    @Test
    void aSteadyRiseIsATrend() {
        AcrossLessons rising = AcrossLessons.of(lessons("", 5, 6, 7, 8, 9)).get(0);
        assertThat(rising.trend().orElseThrow().slope()).isCloseTo(1, within(1e-9));
        assertThat(rising.trend().orElseThrow().slopeStandardUncertainty())
                .as("√(1.25² + 1.5²)/√10")
                .isCloseTo(0.6175, within(1e-4));
        assertThat(rising.trend().orElseThrow().call()).isEqualTo(ChangeCall.TOO_CLOSE);
        assertThat(AcrossLessons.of(lessons("", 5, 8, 11, 14, 17))
                        .get(0)
                        .trend()
                        .orElseThrow()
                        .call())
                .isEqualTo(ChangeCall.REAL);
    }

    /** Squares about 8 are 40 over 4 degrees of freedom: s² = 10; the usual 1.5² counts for 5 beside them. */
    @Test
    void repeatsTellTheOwnSpread() {
        AcrossLessons again =
                AcrossLessons.of(lessons("as told", 4, 6, 8, 10, 12)).get(0);
        double tells = 4 * Math.pow(2.25 / (2.25 + 1.5625), 2);
        assertThat(again.spread().standardDeviation())
                .isCloseTo(Math.sqrt((5 * 2.25 + tells * 10) / (5 + tells)), within(1e-9));
        assertThat(again.change().orElseThrow().call())
                .as("8 is no news for such a player")
                .isNotEqualTo(ChangeCall.REAL);
        assertThat(AcrossLessons.of(lessons("", 4, 6, 8, 10, 12))
                        .get(0)
                        .spread()
                        .isKnown())
                .isFalse();
    }

    private static LessonFindings lesson(int id, String setup, double tilt) {
        return new LessonFindings(id, Optional.empty(), setup, TestLessons.findings(tilt));
    }

    /** Filmed from one place, repeats err together: four of them are no four witnesses. */
    @Test
    void repeatsAreOnePointOfATrend() {
        List<LessonFindings> two = List.of(
                lesson(1, "a", 5),
                lesson(2, "a", 5),
                lesson(3, "a", 5),
                lesson(4, "a", 5),
                lesson(5, "b", 11),
                lesson(6, "b", 11),
                lesson(7, "b", 11),
                lesson(8, "b", 11));
        assertThat(AcrossLessons.of(two).get(0).trend())
                .as("two setups are no line")
                .isEmpty();
        List<LessonFindings> three =
                List.of(lesson(1, "", 5), lesson(2, "a", 6), lesson(3, "a", 7), lesson(4, "a", 8), lesson(5, "", 9));
        Trend trend = AcrossLessons.of(three).get(0).trend().orElseThrow();
        assertThat(trend.slope()).as("through 5 at 0, 7 at 2, 9 at 4").isCloseTo(1, within(1e-9));
        assertThat(trend.slopeStandardUncertainty())
                .as("of three points, not of five: √(1.25² + s²)/√8")
                .isCloseTo(
                        Math.hypot(1.25, AcrossLessons.of(three).get(0).spread().standardDeviation()) / Math.sqrt(8),
                        within(1e-6));
    }
}
