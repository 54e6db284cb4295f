package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Expectation.Goes;
import org.toeline.flight.compare.Expectation.Outcome;
import org.toeline.reading.ReadingKind;

/** What is expected of the shots, beside what they did. */
class ExpectationsTest {

    private static Difference difference(ShotFigure figure, State state, double by) {
        Estimate estimate = new Estimate(by, by - 0.01, by + 0.01, 0.001, 0);
        return new Difference(figure, 9, 9, state, estimate, state == State.TOO_FEW ? 4 : 0, figure.worthwhile());
    }

    @Test
    void everyReadingNamedIsOneOfTheCatalogue() {
        assertThat(Expectations.shipped().all())
                .isNotEmpty()
                .allSatisfy(e -> assertThat(Arrays.stream(ReadingKind.values()).map(ReadingKind::id))
                        .contains(e.reading()));
        assertThat(Expectations.shipped().of("tee-height")).hasSize(5);
        assertThat(Expectations.shipped().of("knee-flex")).isEmpty();
    }

    @Test
    void aHigherTeeIsExpectedToLaunchHigher() {
        Expectation higher = Expectations.shipped().of("tee-height").get(0);
        assertThat(higher.figure()).isEqualTo(ShotFigure.LAUNCH_ANGLE);
        assertThat(higher.outcome(0.02, difference(ShotFigure.LAUNCH_ANGLE, State.REAL, 0.05), TrailSide.RIGHT))
                .isEqualTo(Outcome.AS_EXPECTED);
        assertThat(higher.outcome(-0.02, difference(ShotFigure.LAUNCH_ANGLE, State.REAL, 0.05), TrailSide.RIGHT))
                .isEqualTo(Outcome.AGAINST_IT);
        assertThat(higher.outcome(0.02, difference(ShotFigure.LAUNCH_ANGLE, State.TOO_FEW, 0.05), TrailSide.RIGHT))
                .isEqualTo(Outcome.CANNOT_TELL);
        assertThat(higher.outcome(0, difference(ShotFigure.LAUNCH_ANGLE, State.REAL, 0.05), TrailSide.RIGHT))
                .isEqualTo(Outcome.CANNOT_TELL);
    }

    /** A right-handed player's trail side is the right, where h is below zero; a left-handed player's the left. */
    @Test
    void theTrailSideIsThePlayersOwn() {
        Expectation open = Expectations.shipped().of("shoulders-to-feet").get(0);
        Difference right = difference(ShotFigure.SPIN_AXIS, State.REAL, -0.1);
        assertThat(open.outcome(1, right, TrailSide.RIGHT)).isEqualTo(Outcome.AS_EXPECTED);
        assertThat(open.outcome(1, right, TrailSide.LEFT)).isEqualTo(Outcome.AGAINST_IT);
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThatThrownBy(() -> new Expectation(
                        "x",
                        ShotFigure.CARRY,
                        Goes.TO_TRAIL_SIDE,
                        java.util.Set.of(),
                        Expectation.Start.ANYWHERE,
                        "published",
                        Expectation.Strength.SAID,
                        "s"))
                .hasMessageContaining("only sided figures");
        Expectation higher = Expectations.shipped().of("tee-height").get(0);
        assertThatThrownBy(() -> higher.outcome(1, difference(ShotFigure.CARRY, State.REAL, 1), TrailSide.RIGHT))
                .hasMessageContaining("launch-angle is needed");
    }

    /** The source says so of a driver and beyond the lead shoulder only: of an iron, or short of it, nothing is expected. */
    @Test
    void itIsExpectedOnlyWhereItsSourceSaysSo() {
        Expectation low = Expectations.shipped().of("ball-to-lead-shoulder").get(0);
        assertThat(low.goes()).isEqualTo(Goes.DOWN);
        assertThat(low.applies("driver", -2, 4)).isTrue();
        assertThat(low.applies("driver", -6, -1)).isFalse();
        assertThat(low.applies("7-iron", -2, 4)).isFalse();
    }

    @Test
    void aHigherTeeIsExpectedToSpinLess() {
        assertThat(Expectations.shipped().of("tee-height")).anySatisfy(e -> {
            assertThat(e.figure()).isEqualTo(ShotFigure.SPIN_RATE);
            assertThat(e.goes()).isEqualTo(Goes.DOWN);
        });
    }

    /** Nothing worth acting on is something else than not knowing. */
    @Test
    void noChangeAndNoKnowledgeAreToldApart() {
        Expectation higher = Expectations.shipped().of("tee-height").get(0);
        assertThat(higher.outcome(1, difference(ShotFigure.LAUNCH_ANGLE, State.NOT_SHOWN, 0.001), TrailSide.RIGHT))
                .isEqualTo(Outcome.NEITHER);
        assertThat(higher.outcome(1, difference(ShotFigure.LAUNCH_ANGLE, State.TOO_FEW, 0.001), TrailSide.RIGHT))
                .isEqualTo(Outcome.CANNOT_TELL);
    }
}
