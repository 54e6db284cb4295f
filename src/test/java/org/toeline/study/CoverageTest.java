package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.reading.ReadingKind;

/**
 * A short run of the accuracy study: fixed seeds, every kind of scene. The full tables, with at least 1000 scenes of
 * each kind, are in docs/accuracy.md. Limits of coverage and error are four standard errors from what is aimed at: a share p of n scenes
 * is known to √(p(1 − p)/n), a root mean square to 1/√(2n) of itself, a mean of squares of normal deviates to √(2/n).
 */
class CoverageTest {

    private static final int SCENES = 150;

    private static double below(double share) {
        return share - 4 * Math.sqrt(share * (1 - share) / SCENES);
    }

    /** One plus four standard errors of a root mean square over that many scenes. */
    private static final double OVER_BOUND = 1 + 4 / Math.sqrt(2.0 * SCENES);
    /**
     * Squared errors over stated variances, all readings pooled, are 1 on the average where the statement is right. The
     * readings of one scene go together, so no more than the scenes count.
     */
    private static final double LEAST_SQUARES = 1 - 4 * Math.sqrt(2.0 / SCENES);

    private static final double MOST_SQUARES = 1 + 4 * Math.sqrt(2.0 / SCENES);
    /** Clean sheets doubted, and wrong marks named. */
    private static final double DOUBTED = 0.06;

    private static final double NAMED = 0.85;

    @ParameterizedTest
    @EnumSource(SceneKind.class)
    void intervalsHoldTheTruthAndAreNoWiderThanNeeded(SceneKind kind) {
        Trial trial = new Trial(kind);
        trial.run(40_000 + 1000 * kind.ordinal(), SCENES);
        trial.tallies.forEach((reading, tally) -> {
            assertThat(tally.coverage()).as(reading.id()).isGreaterThan(below(0.95));
            if (kind.wrongMarks == 0) {
                assertThat(tally.overBound()).as(reading.id()).isLessThan(OVER_BOUND);
            }
        });
        double squares = trial.pooled.meanSquareOverStated();
        assertThat(squares).isBetween(LEAST_SQUARES, MOST_SQUARES);
        assertThat(squares / 9).as("intervals three times too wide").isLessThan(LEAST_SQUARES);
        assertThat((double) trial.falseDoubts / trial.scenes).isLessThan(DOUBTED);
        if (kind.wrongMarks > 0) {
            assertThat((double) trial.named / trial.scenes).isGreaterThan(NAMED);
            assertThat(trial.ofTheWrong.coverage()).isGreaterThan(below(0.93));
        } else {
            assertThat(trial.fitQuantile(0.95)).as("misfit of clean sheets").isBetween(0.5, 1.4);
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
