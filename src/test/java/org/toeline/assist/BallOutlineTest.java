package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.camera.UsualLens;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.View;
import org.toeline.scene.RandomLessons;
import org.toeline.scene.Scenario;
import org.toeline.scene.Truth;
import org.toeline.video.Frame;

/** On drawn balls whose outline is known (a short version of {@link BallStudy}), and on the sample clips. */
class BallOutlineTest {

    /** The limits are those asked of the program: bias 0.1 px, rms 0.2 px, diameter 0.3 px at 4 grey levels of noise. */
    @ParameterizedTest
    @EnumSource(
            value = DrawnBall.Ground.class,
            names = {"GRASS", "MAT", "TEE", "BRIGHT"})
    void centreAndDiameterOnEveryGround(DrawnBall.Ground ground) {
        SplittableRandom random = new SplittableRandom(5 + ground.ordinal());
        BallTally tally = new BallTally();
        for (double diameter : new double[] {10, 15, 22, 34, 58}) {
            for (int i = 0; i < 2; i++) {
                DrawnBall ball = DrawnBall.random(diameter + random.nextDouble(), ground, DrawnBall.Cover.NONE, random);
                tally.add(ball, BallOutline.fit(ball.frame(), View.TEE, Double.POSITIVE_INFINITY, ball.click(random)));
            }
        }
        assertThat(tally.refused()).isZero();
        assertThat(tally.centreBias()).as("bias").isLessThan(0.1);
        assertThat(tally.centreRms()).as("centre, rms").isLessThan(0.2);
        assertThat(tally.diameterRms()).as("diameter, rms").isLessThan(0.3);
        assertThat(tally.centreCovered()).as("centre within its interval").isGreaterThanOrEqualTo(0.95);
        assertThat(tally.diameterCovered()).as("diameter within its interval").isGreaterThanOrEqualTo(0.9);
    }

    /** The club head hides half of the ball. */
    @Test
    void aHiddenHalfIsLeftOut() {
        SplittableRandom random = new SplittableRandom(6);
        BallTally tally = new BallTally();
        for (double diameter : new double[] {10, 12, 14, 20, 30, 44}) {
            DrawnBall ball = DrawnBall.random(
                    diameter + random.nextDouble(), DrawnBall.Ground.MAT, DrawnBall.Cover.HALF, random);
            tally.add(ball, BallOutline.fit(ball.frame(), View.TEE, Double.POSITIVE_INFINITY, ball.click(random)));
        }
        assertThat(tally.refused()).isZero();
        assertThat(tally.centreRms()).as("centre, rms").isLessThan(0.25);
        assertThat(tally.diameterRms()).as("diameter, rms").isLessThan(0.45);
        assertThat(tally.centreCovered()).isGreaterThanOrEqualTo(0.9);
    }

    /** Shaded underneath, beside the club, on a tee, coded with colour at half resolution. */
    @ParameterizedTest
    @CsvSource({
        "before, FACE_ON",
        "after, FACE_ON",
        "left-handed, FACE_ON",
        "all-good, FACE_ON",
        "all-good, DOWN_THE_LINE",
        "left-handed, TEE"
    })
    void theBallsOfTheSampleClips(String lesson, View view) throws Exception {
        SampleBalls on = SampleBalls.of(lesson, view);
        BallMark mark = on.fit(on.click()).orElseThrow();
        assertThat(mark.centre().distancePx(on.centre())).isLessThan(0.5).isLessThan(3 * mark.sigmaPx());
        assertThat(Math.abs(mark.diameterPx().orElseThrow() - on.diameterPx()))
                .isLessThan(0.6)
                .isLessThan(3 * mark.diameterSigmaPx());
    }

    @ParameterizedTest
    @CsvSource({"before, FACE_ON", "all-good, DOWN_THE_LINE"})
    void whatIsNoBallIsRefused(String lesson, View view) throws Exception {
        SampleBalls on = SampleBalls.of(lesson, view);
        for (String id : new String[] {"club-head", "grip-end", "lead-toe"}) {
            assertThat(on.fit(on.landmark(id).plus(0, -6))).as(id).isEmpty();
        }
        for (ImagePoint end : on.rodEnds()) {
            assertThat(on.fit(end)).as("rod").isEmpty();
        }
        for (int i = 0; i < 3; i++) {
            assertThat(on.fit(on.centre().plus(60 + 13 * i, 30 + 5 * i)))
                    .as("grass")
                    .isEmpty();
        }
    }

    /** White shoes and gloves have round ends of a ball's size; the rest of the shoe is beside them. */
    @ParameterizedTest
    @CsvSource({"before, FACE_ON", "after, FACE_ON", "left-handed, FACE_ON", "before, DOWN_THE_LINE"})
    void whiteShoesAreRefused(String lesson, View view) throws Exception {
        SampleBalls on = SampleBalls.of(lesson, view);
        for (String id : new String[] {"lead-heel", "trail-heel", "trail-toe"}) {
            for (ImagePoint at : on.about(id, 7, 2)) {
                assertThat(on.fit(at)).as(id + " " + at).isEmpty();
            }
        }
    }

    /** Close by, the toe of a white shoe behind the ball, in places no darker than it: the two are no ball. */
    @Test
    void aBallBeforeAWhiteShoeIsItselfOrNothing() {
        SplittableRandom random = new SplittableRandom(9);
        BallTally tally = new BallTally();
        for (int i = 0; i < 8; i++) {
            DrawnBall ball = DrawnBall.beforeAShoe(60 + random.nextDouble(50), random);
            tally.add(ball, BallOutline.fit(ball.frame(), View.TEE, Double.POSITIVE_INFINITY, ball.click(random)));
        }
        assertThat(tally.refused()).isLessThanOrEqualTo(1);
        assertThat(tally.centreRms()).as("centre, rms").isLessThan(0.2);
        assertThat(tally.diameterRms()).as("diameter, rms").isLessThan(0.3);
    }

    /** A rendered one, where the shoe is hardly another white, and one with a smaller circle of light on it: circles of many beginnings agree. */
    @ParameterizedTest
    @CsvSource({"1005", "16091"})
    void aBallIsWhatManyCirclesComeTo(int lesson) {
        Scenario scenario = RandomLessons.lesson(lesson);
        Frame frame = RandomLessons.frames(scenario, View.TEE, RandomLessons.look(lesson), 1)
                .get(0);
        Truth.Outline truth = Truth.ball(scenario, View.TEE);
        double share = (double) frame.width() / Scenario.WIDTH;
        ImagePoint centre =
                new ImagePoint(truth.centre().xPx() * share, truth.centre().yPx() * share);
        BallMark ball = BallOutline.fit(frame, View.TEE, UsualLens.MAIN.focalPx(frame.width(), frame.height()), centre)
                .orElseThrow();
        assertThat(ball.centre().distancePx(centre)).isLessThan(2 * ball.sigmaPx());
        assertThat(Math.abs(ball.diameterPx().orElseThrow() - truth.diameterPx() * share))
                .isLessThan(2 * ball.diameterSigmaPx());
    }

    /** Pictures in which nothing can be found, or nothing be told: an answer, and no exception. */
    @Test
    void emptyAndNoisyPicturesHoldNoBall() {
        SplittableRandom random = new SplittableRandom(8);
        for (int kind = 0; kind < 4; kind++) {
            int[] argb = new int[90 * 90];
            for (int i = 0; i < argb.length; i++) {
                int level = kind == 0 ? 0 : kind == 1 ? 255 : kind == 2 ? random.nextInt(256) : i % 90 < 45 ? 40 : 235;
                argb[i] = 0xff000000 | level << 16 | level << 8 | level;
            }
            for (View view : View.values()) {
                assertThat(BallOutline.fit(
                                new Frame(0, 0, 90, 90, argb), view, Double.POSITIVE_INFINITY, new ImagePoint(44, 46)))
                        .isEmpty();
            }
        }
    }
}
