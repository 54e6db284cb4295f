package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;

/** Figures by hand. */
class SteadyTest {

    @Test
    void liesInTheMiddleAndAddsTheScatter() {
        List<Mark> steady = Steady.marks(List.of(wrist(100, 5), wrist(101, 5), wrist(105, 5)));
        assertThat(steady).hasSize(1);
        assertThat(steady.get(0).at()).isEqualTo(new ImagePoint(101, 40));
        // from the middle one −1, 0 and 4 px across and none down: √(17/2) in one direction, over √2 in each
        assertThat(steady.get(0).sigmaPx()).isEqualTo(Math.sqrt(25 + 17.0 / 4), within(1e-9));
    }

    @Test
    void aFrameAloneStaysAsItIs() {
        assertThat(Steady.marks(List.of(wrist(100, 5)))).isEqualTo(wrist(100, 5));
        assertThat(Steady.ball(List.of(Optional.of(ball(50, 15))))).contains(ball(50, 15));
    }

    @Test
    void leavesOutWhatJumpsOrIsNotSeenAgain() {
        assertThat(Steady.marks(List.of(wrist(100, 5), wrist(120, 5), wrist(80, 5))))
                .as("scatters by more than is stated")
                .isEmpty();
        assertThat(Steady.marks(List.of(wrist(100, 5), List.of(), List.of())))
                .as("seen in one of three")
                .isEmpty();
        assertThat(Steady.marks(List.of(wrist(100, 5), wrist(100, 5), List.of())))
                .as("in two of three")
                .hasSize(1);
    }

    @Test
    void joinsTheBall() {
        BallMark steady = Steady.ball(List.of(
                        Optional.of(ball(50, 15)), Optional.of(ball(50.6, 15.3)), Optional.of(ball(50.2, 14.9))))
                .orElseThrow();
        assertThat(steady.centre()).isEqualTo(new ImagePoint(50.2, 30));
        assertThat(steady.diameterPx()).hasValue(15);
        // −0.2, 0.4 and 0 px; 0, 0.3 and −0.1 px
        assertThat(steady.sigmaPx()).isEqualTo(Math.sqrt(0.04 + 0.2 / 4), within(1e-9));
        assertThat(steady.diameterSigmaPx()).isEqualTo(Math.sqrt(0.09 + 0.1 / 2), within(1e-9));
        assertThat(steady.origin()).isEqualTo(Mark.Origin.SUGGESTED);
    }

    @Test
    void aBallThatJumpsIsNone() {
        assertThat(Steady.ball(
                        List.of(Optional.of(ball(50, 15)), Optional.of(ball(56, 15)), Optional.of(ball(50, 15)))))
                .isEmpty();
        assertThat(Steady.ball(
                        List.of(Optional.of(ball(50, 13)), Optional.of(ball(47, 11)), Optional.of(ball(48.7, 12)))))
                .as("as a sock was fitted")
                .isEmpty();
        assertThat(Steady.ball(List.of(Optional.of(ball(50, 15)), Optional.empty(), Optional.empty())))
                .isEmpty();
    }

    private static List<Mark> wrist(double x, double sigmaPx) {
        return List.of(new Mark(Landmark.LEAD_WRIST, new ImagePoint(x, 40), sigmaPx, Mark.Origin.SUGGESTED));
    }

    private static BallMark ball(double x, double diameterPx) {
        return new BallMark(new ImagePoint(x, 30), OptionalDouble.of(diameterPx), 0.2, 0.3, Mark.Origin.SUGGESTED);
    }
}
