package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.camera.UsualLens;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/** On drawn balls whose outline is known (a short version of {@link BallStudy}), and on the sample clips. */
class BallOutlineTest {

    private static final Path MEDIA = Path.of("sample-media");
    /** As the desk takes it for clips of which nothing is known. */
    private static final double FOCAL_PX = UsualLens.MAIN.focalPx(1280, 720);

    /** The limits are those asked of the program: bias 0.1 px, rms 0.2 px, diameter 0.3 px at 4 grey levels of noise. */
    @ParameterizedTest
    @EnumSource(value = DrawnBall.Ground.class, names = {"GRASS", "MAT", "TEE", "BRIGHT"})
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
            DrawnBall ball = DrawnBall.random(diameter + random.nextDouble(), DrawnBall.Ground.MAT, DrawnBall.Cover.HALF, random);
            tally.add(ball, BallOutline.fit(ball.frame(), View.TEE, Double.POSITIVE_INFINITY, ball.click(random)));
        }
        assertThat(tally.refused()).isZero();
        assertThat(tally.centreRms()).as("centre, rms").isLessThan(0.25);
        assertThat(tally.diameterRms()).as("diameter, rms").isLessThan(0.45);
        assertThat(tally.centreCovered()).isGreaterThanOrEqualTo(0.9);
    }

    /** Shaded underneath, beside the club, on a tee, coded with colour at half resolution. */
    @ParameterizedTest
    @CsvSource({"before, face-on", "after, face-on", "left-handed, face-on", "all-good, face-on", "all-good, down-the-line",
        "left-handed, tee"})
    void theBallsOfTheSampleClips(String lesson, String view) throws Exception {
        JsonNode ball = truth(lesson, view).path("ball");
        double d = ball.path("diameter").asDouble();
        ImagePoint centre = new ImagePoint(ball.path("x").asDouble(), ball.path("y").asDouble());
        try (Clip clip = Clip.open(MEDIA.resolve(lesson).resolve(view + ".mp4"))) {
            BallMark mark = BallOutline.fit(clip.frameAt(view.equals("tee") ? 0.5 : 2.3), View.of(view).orElseThrow(), FOCAL_PX, centre.plus(d / 6, -d / 8))
                    .orElseThrow();
            assertThat(mark.centre().distancePx(centre)).isLessThan(0.5).isLessThan(3 * mark.sigmaPx());
            assertThat(Math.abs(mark.diameterPx().orElseThrow() - d)).isLessThan(0.6)
                    .isLessThan(3 * mark.diameterSigmaPx());
        }
    }

    @ParameterizedTest
    @CsvSource({"before, face-on", "all-good, down-the-line"})
    void whatIsNoBallIsRefused(String lesson, String view) throws Exception {
        JsonNode truth = truth(lesson, view);
        try (Clip clip = Clip.open(MEDIA.resolve(lesson).resolve(view + ".mp4"))) {
            Frame frame = clip.frameAt(2.3);
            for (String id : new String[] {"club-head", "grip-end", "lead-toe"}) {
                JsonNode l = truth.path("landmarks").path(id);
                assertThat(BallOutline.fit(frame, View.of(view).orElseThrow(), FOCAL_PX, new ImagePoint(l.path(3).asDouble(), l.path(4).asDouble() - 6))).as(id)
                        .isEmpty();
            }
            for (JsonNode rod : truth.path("floor")) {
                ImagePoint end = new ImagePoint(rod.path("x").asDouble(), rod.path("y").asDouble());
                assertThat(BallOutline.fit(frame, View.of(view).orElseThrow(), FOCAL_PX, end)).as(rod.path("id").asText()).isEmpty();
            }
            double x = truth.path("ball").path("x").asDouble();
            double y = truth.path("ball").path("y").asDouble();
            for (int i = 0; i < 3; i++) {
                assertThat(BallOutline.fit(frame, View.of(view).orElseThrow(), FOCAL_PX, new ImagePoint(x + 60 + 13 * i, y + 30 + 5 * i))).as("grass").isEmpty();
            }
        }
    }

    /** White shoes and gloves have round ends of a ball's size; the rest of the shoe is beside them. */
    @ParameterizedTest
    @CsvSource({"before, face-on", "after, face-on", "left-handed, face-on", "before, down-the-line"})
    void whiteShoesAreRefused(String lesson, String view) throws Exception {
        SampleBalls on = SampleBalls.of(lesson, view);
        for (String id : new String[] {"lead-heel", "trail-heel", "trail-toe"}) {
            for (ImagePoint at : on.about(id, 7, 2)) {
                assertThat(BallOutline.fit(on.frame(), View.of(view).orElseThrow(), FOCAL_PX, at)).as(id + " " + at).isEmpty();
            }
        }
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
                assertThat(BallOutline.fit(new Frame(0, 0, 90, 90, argb), view, FOCAL_PX, new ImagePoint(44, 46))).isEmpty();
            }
        }
    }

    private static JsonNode truth(String lesson, String view) throws Exception {
        return new ObjectMapper().readTree(MEDIA.resolve(lesson).resolve(view + ".truth.json").toFile());
    }
}
