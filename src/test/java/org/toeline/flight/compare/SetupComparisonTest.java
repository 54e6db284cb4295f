package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/** Setups of known difference are told apart in words that hold. */
class SetupComparisonTest {

    private static final ShotFigure[] FIGURES = {
        ShotFigure.BALL_SPEED,
        ShotFigure.LAUNCH_ANGLE,
        ShotFigure.LAUNCH_DIRECTION,
        ShotFigure.SPIN_RATE,
        ShotFigure.SPIN_AXIS,
        ShotFigure.CARRY,
        ShotFigure.APEX,
        ShotFigure.SIDE
    };

    private final SplittableRandom random = new SplittableRandom(23);

    /** Shots whose figures spread by twice what a coach would act on, with one figure moved by so many of those. */
    private List<Shot> shots(int count, ShotFigure moved, double byWorthwhile, double spread) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
            for (ShotFigure figure : FIGURES) {
                double middle = (figure.least() + figure.most()) / 2
                        + (figure == moved ? byWorthwhile : 0) * figure.worthwhile();
                figures.put(figure, middle + spread * figure.worthwhile() * random.nextGaussian());
            }
            shots.add(new Shot(figures));
        }
        return shots;
    }

    private static Difference of(SetupComparison comparison, ShotFigure figure) {
        return comparison.differences().stream()
                .filter(d -> d.figure() == figure)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLargeDifferenceIsRealAndTheOthersAreNot() {
        SetupComparison comparison =
                SetupComparison.of(shots(12, ShotFigure.LAUNCH_ANGLE, 0, 1), shots(12, ShotFigure.LAUNCH_ANGLE, 4, 1));
        Difference launch = of(comparison, ShotFigure.LAUNCH_ANGLE);
        assertThat(launch.state()).isEqualTo(State.REAL);
        assertThat(launch.words()).isEqualTo("real");
        Estimate estimate = launch.estimate().orElseThrow();
        assertThat(estimate.low()).isLessThan(Math.toRadians(4)).isPositive();
        assertThat(estimate.high()).isGreaterThan(Math.toRadians(4));
        assertThat(comparison.differences())
                .filteredOn(d -> d.state() == State.REAL)
                .hasSize(1);
        assertThat(comparison.differences()).hasSize(FIGURES.length);
    }

    /** Many shots of no difference: not shown. Few: too few, and about as many more as the formula for means says. */
    @Test
    void noDifferenceIsNotShownOrTooEarlyToTell() {
        assertThat(of(
                                SetupComparison.of(shots(30, ShotFigure.APEX, 0, 1), shots(30, ShotFigure.APEX, 0, 1)),
                                ShotFigure.CARRY)
                        .state())
                .isEqualTo(State.NOT_SHOWN);
        Difference few = of(
                SetupComparison.of(shots(5, ShotFigure.APEX, 0, 2), shots(5, ShotFigure.APEX, 0, 2)), ShotFigure.CARRY);
        assertThat(few.state()).isEqualTo(State.TOO_FEW);
        // 1.96·σ·√(2/n) = 1 with σ = 2: n = 31, so some 26 more; the spread of five shots is known to a factor of two.
        assertThat(few.moreShots()).isBetween(6, 100);
        assertThat(few.words()).isEqualTo("too few shots: about " + few.moreShots() + " more with each setup");
    }

    /** With so many more shots the half width is indeed down to what was asked, on average. */
    @Test
    void moreShotsAreEnough() {
        Centre before = Centre.of(new double[] {-2.2, 1.9, 0.3, -1.4, 2.0, -0.5, 1.0, -1.1});
        int more = SetupComparison.more(before, before, 1);
        double halves = 0;
        double spread = Math.sqrt(before.variance() * before.count());
        for (int i = 0; i < 400; i++) {
            double[] a = random.doubles(8 + more).map(x -> spread * gaussian()).toArray();
            double[] b = random.doubles(8 + more).map(x -> spread * gaussian()).toArray();
            halves += Estimate.of(Centre.of(a), Centre.of(b)).halfWidth() / 400;
        }
        assertThat(halves).isBetween(0.88, 1.12);
    }

    private double gaussian() {
        return random.nextGaussian();
    }

    @Test
    void oneOrTwoShotsProveNothing() {
        SetupComparison comparison =
                SetupComparison.of(shots(1, ShotFigure.APEX, 0, 1), shots(9, ShotFigure.APEX, 50, 1));
        assertThat(comparison.differences()).allSatisfy(d -> {
            assertThat(d.state()).isEqualTo(State.TOO_FEW);
            assertThat(d.moreShots()).isEqualTo(2);
            assertThat(d.estimate()).isEmpty();
        });
        assertThat(SetupComparison.of(List.of(), shots(9, ShotFigure.APEX, 0, 1))
                        .differences())
                .isEmpty();
    }

    @Test
    void figuresThatDoNotVaryAreNoEvidence() {
        Shot same = new Shot(Map.of(ShotFigure.CARRY, 200.0));
        Shot other = new Shot(Map.of(ShotFigure.CARRY, 210.0));
        Difference difference =
                of(SetupComparison.of(List.of(same, same, same), List.of(other, other, other)), ShotFigure.CARRY);
        assertThat(difference.state()).isEqualTo(State.TOO_FEW);
        assertThat(difference.estimate()).isEmpty();
    }

    /** A mishit among ten hides nothing: the same difference without it and with it. */
    @Test
    void aMishitHidesNothing() {
        List<Shot> before = shots(10, ShotFigure.CARRY, 0, 1);
        List<Shot> after = new ArrayList<>(shots(10, ShotFigure.CARRY, 3, 1));
        assertThat(of(SetupComparison.of(before, after), ShotFigure.CARRY).state())
                .isEqualTo(State.REAL);
        after.set(4, after.get(4).with(ShotFigure.CARRY, 60));
        Difference still = of(SetupComparison.of(before, after), ShotFigure.CARRY);
        assertThat(still.state()).isEqualTo(State.REAL);
        assertThat(still.estimate().orElseThrow().apart()).isGreaterThanOrEqualTo(1);
    }

    /**
     * Eight figures, no difference in any: some figure is called real in at most 5 % of comparisons (three standard
     * errors above that here), where eight intervals of their own would do so in a third.
     */
    @Test
    void manyFiguresDoNotMakeAFalseOneReal() {
        int trials = 400;
        int falselyReal = 0;
        int someIntervalExcludesZero = 0;
        for (int i = 0; i < trials; i++) {
            List<Difference> differences = SetupComparison.of(
                            shots(8, ShotFigure.APEX, 0, 0.4), shots(8, ShotFigure.APEX, 0, 0.4))
                    .differences();
            falselyReal += differences.stream().anyMatch(d -> d.state() == State.REAL) ? 1 : 0;
            someIntervalExcludesZero +=
                    differences.stream().map(d -> d.estimate().orElseThrow()).anyMatch(e -> e.low() > 0 || e.high() < 0)
                            ? 1
                            : 0;
        }
        assertThat(falselyReal / (double) trials).isLessThan(0.05 + 3 * Math.sqrt(0.05 * 0.95 / trials));
        assertThat(someIntervalExcludesZero / (double) trials).isGreaterThan(0.2);
    }
}
