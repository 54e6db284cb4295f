package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
                                SetupComparison.of(shots(60, ShotFigure.APEX, 0, 1), shots(60, ShotFigure.APEX, 0, 1)),
                                ShotFigure.CARRY)
                        .state())
                .isEqualTo(State.NOT_SHOWN);
        Difference few = of(
                SetupComparison.of(shots(5, ShotFigure.APEX, 0, 2), shots(5, ShotFigure.APEX, 0, 2)), ShotFigure.CARRY);
        assertThat(few.state()).isEqualTo(State.TOO_FEW);
        assertThat(few.moreShots()).isBetween(3, 200);
        assertThat(few.words()).isEqualTo("too few shots: about " + few.moreShots() + " more with each setup");
    }

    /** With so many more shots the half width is indeed down to what was asked, by the usual interval. */
    @Test
    void moreShotsAreEnough() {
        Centre before = Centre.of(new double[] {-2.2, 1.9, 0.3, -1.4, 2.0, -0.5, 1.0, -1.1});
        int few = SetupComparison.more(before, before, 2, 1.5);
        int more = SetupComparison.more(before, before, 2, 1);
        // the width falls with the root of the number: a half needs some four times as many
        assertThat(more).isBetween(14, 26);
        assertThat(few).isLessThan(more);
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
        List<Shot> after = new ArrayList<>(shots(10, ShotFigure.CARRY, 4, 1));
        assertThat(of(SetupComparison.of(before, after), ShotFigure.CARRY).state())
                .isEqualTo(State.REAL);
        after.set(4, after.get(4).with(ShotFigure.CARRY, 60));
        Difference still = of(SetupComparison.of(before, after), ShotFigure.CARRY);
        assertThat(still.state()).isEqualTo(State.REAL);
        assertThat(still.estimate().orElseThrow().apart()).isGreaterThanOrEqualTo(1);
    }

    /**
     * The larger a change, the surer it is, hit one setup after the other, in runs of three or shot by shot: what a shuffle deals
     * to the wrong setup is a heap of its own then, and no mishits.
     */
    @ParameterizedTest
    @CsvSource({"6, 6", "8, 8", "7, 8", "12, 12", "10, 15"})
    void theLargerAChangeTheSurer(int first, int second) {
        for (int run : new int[] {first + second, 3, 1}) {
            for (double spreads : new double[] {17, 100, 1000}) {
                for (int trial = 0; trial < 5; trial++) {
                    List<Shot> before = shots(first, ShotFigure.CARRY, 0, 1);
                    List<Shot> after = shots(second, ShotFigure.CARRY, spreads, 1);
                    Difference carry = of(
                            SetupComparison.of(HitOrder.inTurns(before, after, turns(first, second, run))),
                            ShotFigure.CARRY);
                    assertThat(carry.state())
                            .as("%s spreads, %d and %d in runs of %d", spreads, first, second, run)
                            .isEqualTo(State.REAL);
                    Estimate e = carry.estimate().orElseThrow();
                    assertThat(e.halfWidth()).isLessThan(14 * ShotFigure.CARRY.worthwhile());
                    assertThat(e.difference())
                            .isCloseTo(
                                    spreads * ShotFigure.CARRY.worthwhile(),
                                    within(2.5 * ShotFigure.CARRY.worthwhile()));
                }
            }
        }
    }

    private static List<Boolean> turns(int first, int second, int run) {
        List<Boolean> turns = new ArrayList<>();
        for (int a = 0, b = 0; a < first || b < second; ) {
            for (int i = 0; i < run && a < first; i++, a++) {
                turns.add(false);
            }
            for (int i = 0; i < run && b < second; i++, b++) {
                turns.add(true);
            }
        }
        return turns;
    }

    /** Nothing is shown only where no difference worth acting on can be there: the whole interval is smaller. */
    @Test
    void notShownMeansThatNothingWorthActingOnCanBeThere() {
        for (int i = 0; i < 40; i++) {
            SetupComparison.of(shots(12, ShotFigure.APEX, 0, 1), shots(12, ShotFigure.APEX, 0.8, 1))
                    .differences()
                    .stream()
                    .filter(d -> d.state() == State.NOT_SHOWN)
                    .forEach(d -> {
                        Estimate e = d.estimate().orElseThrow();
                        assertThat(Math.max(Math.abs(e.low()), Math.abs(e.high())))
                                .isLessThanOrEqualTo(d.worth());
                    });
        }
    }

    /** What is worth acting on shrinks with the speed of the ball: five metres of a drive are more than two of a wedge. */
    @Test
    void whatIsWorthActingOnGoesWithClubAndSpeed() {
        Shot drive = new Shot(Map.of(ShotFigure.BALL_SPEED, 67.0, ShotFigure.CARRY, 220.0));
        Shot wedge = new Shot(Map.of(ShotFigure.BALL_SPEED, 33.5, ShotFigure.CARRY, 90.0));
        assertThat(Worth.of(List.of(drive)).of(ShotFigure.CARRY)).isEqualTo(ShotFigure.CARRY.worthwhile());
        assertThat(Worth.of(List.of(wedge)).of(ShotFigure.CARRY)).isEqualTo(ShotFigure.CARRY.worthwhile() / 2);
    }

    /** Shots that lie three times as far apart are seen to, and their middles are not called different for it. */
    @Test
    void spreadsAreCompared() {
        List<Shot> narrow = shots(25, ShotFigure.CARRY, 0, 1);
        List<Shot> wide = shots(25, ShotFigure.CARRY, 0, 4);
        SpreadDifference carry = SetupComparison.of(narrow, wide).spreads().stream()
                .filter(s -> s.figure() == ShotFigure.CARRY)
                .findFirst()
                .orElseThrow();
        assertThat(carry.real()).isTrue();
        assertThat(carry.low()).isLessThan(4).isGreaterThan(1);
        assertThat(carry.high()).isGreaterThan(4);
    }

    /** Reference: Newcombe 1998, Stat. Med. 17:873, table II, example (a): 56/70 less 48/80 is 0.2, 0.0524 to 0.3339. */
    @Test
    void sharesByThePublishedExample() {
        SharesOfSides shares = SharesOfSides.of(SharesOfSides.Side.LEFT, ShotFigure.SIDE, 48, 80, 56, 70);
        assertThat(shares.difference()).isCloseTo(0.2, within(1e-12));
        assertThat(shares.low()).isCloseTo(0.0524, within(5e-5));
        assertThat(shares.high()).isCloseTo(0.3339, within(5e-5));
        assertThat(shares.real()).isTrue();
    }

    /** The same shots hit in turns leave a narrower interval than hit one setup after the other. */
    @Test
    void inTurnsTellsMore() {
        List<Shot> before = shots(6, ShotFigure.CARRY, 0, 1);
        List<Shot> after = shots(6, ShotFigure.CARRY, 3, 1);
        List<Shot> turns = new ArrayList<>();
        List<Boolean> second = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            turns.add(before.get(i));
            turns.add(after.get(i));
            second.add(false);
            second.add(true);
        }
        HitOrder order = new HitOrder(turns, second);
        assertThat(order.inTurns()).isTrue();
        assertThat(HitOrder.oneAfterTheOther(before, after).inTurns()).isFalse();
        assertThat(Likeness.allowed(Neighbours.of(order.seconds())))
                .isLessThan(Likeness.allowed(
                        Neighbours.of(HitOrder.oneAfterTheOther(before, after).seconds())));
        assertThat(of(SetupComparison.of(order), ShotFigure.CARRY).estimate()).isPresent();
    }

    /**
     * Reference: the mean of many shots each like the one before by ρ has (1 + ρ)/(1 − ρ) times the variance of shots by
     * themselves (Bayley and Hammersley 1946, J. R. Stat. Soc. Suppl. 8:184; from memory); 7/3 for 0.4. A, B, A, B one shot each
     * leaves its inverse, and is not counted on.
     */
    @Test
    void likenessIsAllowedForByTheKnownFormula() {
        boolean[] runs = new boolean[4000];
        java.util.Arrays.fill(runs, 2000, 4000, true);
        assertThat(Likeness.allowed(Neighbours.of(runs))).isCloseTo(Math.sqrt(7 / 3.0), within(2e-3));
        boolean[] turns = new boolean[4000];
        for (int i = 1; i < turns.length; i += 2) {
            turns[i] = true;
        }
        assertThat(Likeness.allowed(Neighbours.of(turns))).isCloseTo(Math.sqrt(3 / 7.0), within(2e-3));
        Centre any = Centre.of(new double[] {1, 2, 3, 4, 5, 6, 7});
        assertThat(Likeness.widening(Neighbours.of(turns), any, any, 0.4)).isEqualTo(1);
    }

    /** Ten figures, no difference in any: some figure is called real in at most 5 % of comparisons (three standard errors). */
    @Test
    void manyFiguresDoNotMakeAFalseOneReal() {
        int trials = 60;
        double real = new SimulatedSetups(77)
                .rates(SimulatedSetups.Kind.SKEWED, 8, 8, ComparisonStudy.TEN, 0, trials)
                .real();
        assertThat(real).isLessThan(0.05 + 3 * Math.sqrt(0.05 * 0.95 / trials));
    }
}
