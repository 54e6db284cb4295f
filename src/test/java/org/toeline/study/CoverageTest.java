package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.reading.ReadingKind;

/**
 * A short run of the accuracy study: fixed seeds, every kind of scene. The full tables, with at least 1000 scenes of
 * each kind, are in docs/accuracy.md.
 */
class CoverageTest {

    private static final int SCENES = 150;
    /** 95 % less four standard errors of a share over that many scenes. */
    private static final double COVERED = 0.95 - 4 * Math.sqrt(0.95 * 0.05 / SCENES);
    /** One plus four standard errors of a root mean square over that many scenes. */
    private static final double OVER_BOUND = 1 + 4 / Math.sqrt(2.0 * SCENES);

    @ParameterizedTest
    @EnumSource(SceneKind.class)
    void intervalsHoldTheTruthAndErrorsReachTheBound(SceneKind kind) {
        Trial trial = new Trial(kind);
        trial.run(40_000 + 1000 * kind.ordinal(), SCENES);
        trial.tallies.forEach((reading, tally) -> {
            assertThat(tally.coverage()).as(reading.id()).isGreaterThan(COVERED);
            if (kind.wrongMarks == 0) {
                assertThat(tally.overBound()).as(reading.id()).isLessThan(OVER_BOUND);
            }
        });
        assertThat((double) trial.falseDoubts / trial.scenes).isLessThan(0.06);
        if (kind.wrongMarks > 0) {
            assertThat((double) trial.named / trial.scenes).isGreaterThan(0.85);
        }
    }

    /** What both views and rods must reach, rms: the project's own aims, from a first experiment. */
    @Test
    void bothViewsAndRodsReachTheAims() {
        Trial trial = new Trial(SceneKind.BOTH_AND_RODS);
        trial.run(90_000, 300);
        assertThat(shownRms(trial, ReadingKind.SHOULDER_TILT)).isLessThan(1.7);
        assertThat(shownRms(trial, ReadingKind.SHOULDERS_TO_FEET)).isLessThan(2.6);
        assertThat(shownRms(trial, ReadingKind.BALL_TO_LEAD_SHOULDER)).isLessThan(1.3);
        assertThat(shownRms(trial, ReadingKind.BALL_IN_STANCE)).isLessThan(3.0);
        assertThat(shownRms(trial, ReadingKind.STANCE_WIDTH)).isLessThan(1.4);
    }

    private static double shownRms(Trial trial, ReadingKind kind) {
        return kind.unit().fromInside(trial.tallies.get(kind).rms());
    }
}
