package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Assessment;
import org.toeline.advice.CameraMove;
import org.toeline.advice.CameraStand;
import org.toeline.advice.CameraWords;
import org.toeline.advice.Words;
import org.toeline.camera.Camera;
import org.toeline.mark.View;
import org.toeline.reading.ReadingKind;

/** Property: synthetic scenes of known cameras. */
class CameraPlaceTest {

    private static final int SCENES = 40;

    @Test
    void saysWhereTheCameraStood() {
        for (int i = 0; i < SCENES; i++) {
            RandomScene scene = new RandomScene(7_100 + i, SceneKind.BOTH_AND_RODS);
            Assessment assessment = Assessment.of(scene.sheet);
            for (View view : scene.cameras.keySet()) {
                Camera truth = scene.cameras.get(view);
                CameraStand stand = CameraStand.of(assessment.posture(), view).orElseThrow();
                double distance = Math.hypot(
                        truth.pose().position().t(), truth.pose().position().h());
                // the focal length is unknown to 10 %, and distance goes with it
                assertThat(stand.distanceM()).isCloseTo(distance, within(0.2 * distance));
                assertThat(stand.leanRad()).isCloseTo(truth.pose().rollRad(), within(Math.toRadians(3)));
                double beside = view == View.FACE_ON
                        ? truth.pose().position().t()
                        : truth.pose().position().h();
                assertThat(stand.besideM()).isCloseTo(beside, within(0.35));
            }
        }
    }

    /** A better place narrows the reading there, and is worth the walk; most scenes of one view have one. */
    @Test
    void findsABetterPlaceOnlyWhereOneIs() {
        int moves = 0;
        for (int i = 0; i < SCENES; i++) {
            Assessment assessment = Assessment.of(new RandomScene(7_100 + i, SceneKind.FACE_ON_AND_RODS).sheet);
            Optional<CameraMove> best = CameraMove.best(assessment, View.FACE_ON);
            if (best.isPresent()) {
                moves++;
                assertThat(best.get().halfWidthThen())
                        .isLessThan(0.9 * best.get().halfWidthNow());
                assertThat(new CameraWords(Words.english()).move(View.FACE_ON, best))
                        .startsWith("Stand it ");
            }
        }
        assertThat(moves).isBetween(1, SCENES - 1);
    }

    @Test
    void saysItInACoachsWords() {
        CameraWords words = new CameraWords(Words.english());
        assertThat(spaced(words.stand(new CameraStand(View.FACE_ON, 3.42, 1.1, 0.4, Math.toRadians(-2.1)))))
                .isEqualTo("In the face-on view the camera stands about 3.4 m from the ball and 1.1 m high, "
                        + "40 cm nearer the target than the ball; it leans 2°.");
        assertThat(spaced(words.move(
                        View.FACE_ON,
                        Optional.of(new CameraMove(
                                View.FACE_ON, 0.6, -0.4, ReadingKind.BALL_TO_LEAD_SHOULDER, 0.018, 0.014)))))
                .isEqualTo("Stand it 60 cm closer in and 40 cm away from the target, "
                        + "and “Ball and lead shoulder” would be known to ± 1.4 cm instead of ± 1.8 cm.");
        assertThat(words.move(View.FACE_ON, Optional.empty()))
                .isEqualTo("No better place for it would tell noticeably more.");
    }

    /** Numbers and units are kept together by no-break spaces. */
    private static String spaced(String text) {
        return text.replace('\u00a0', ' ');
    }
}
