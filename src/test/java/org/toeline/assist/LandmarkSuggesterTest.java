package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/** Regression against the sample clips, from which the offsets come: that they are applied, to the right side. */
class LandmarkSuggesterTest extends OnSampleClips {

    @ParameterizedTest
    @CsvSource({
        "before, face-on, RIGHT, 16",
        "all-good, down-the-line, RIGHT, 12",
        "left-handed, face-on, LEFT, 16",
        "left-handed, down-the-line, LEFT, 12"
    })
    void findsTheLandmarksOfThePlayer(String lesson, String view, Handedness hand, int atLeast) throws Exception {
        View from = View.of(view).orElseThrow();
        JsonNode truth = truth(lesson, view);
        ViewSuggestion seen = suggest(frame(lesson, view), from, hand, List.of(ball(truth)));
        assertThat(seen.landmarks()).hasSizeGreaterThanOrEqualTo(atLeast);
        for (Mark mark : seen.landmarks()) {
            assertThat(mark.origin()).isEqualTo(Mark.Origin.SUGGESTED);
            assertThat(mark.at().distancePx(landmark(truth, mark.landmark().id())))
                    .as(mark.landmark().id())
                    .isLessThan(3.5 * mark.sigmaPx());
        }
    }

    /** Down the line the lead arm is behind the trunk. */
    @Test
    void hiddenLandmarksAreNotInvented() throws Exception {
        ViewSuggestion seen =
                suggest(frame("before", "down-the-line"), View.DOWN_THE_LINE, Handedness.RIGHT, List.of());
        assertThat(seen.landmarks())
                .extracting(Mark::landmark)
                .contains(Landmark.TRAIL_SHOULDER, Landmark.TRAIL_KNEE)
                .doesNotContain(Landmark.LEAD_ELBOW, Landmark.LEAD_WRIST);
    }

    /** Which of two is meant cannot be told; a ball that was placed tells it. */
    @Test
    void saysWhenTwoStandBesideEachOther() throws Exception {
        Frame left = frame("before", "face-on");
        Frame right = frame("all-good", "face-on");
        int w = left.width() / 2;
        int[] both = new int[2 * w * left.height()];
        for (int i = 0; i < both.length; i++) {
            int x = i % (2 * w);
            Frame of = x < w ? left : right;
            both[i] = of.argb()[i / (2 * w) * of.width() + of.width() / 4 + x % w];
        }
        Frame frame = new Frame(0, 0, 2 * w, left.height(), both);
        assertThat(suggest(frame, View.FACE_ON, Handedness.RIGHT, List.of()))
                .isEqualTo(ViewSuggestion.nothing(Reason.SEVERAL));
        ImagePoint ball = ball(truth("before", "face-on"));
        ImagePoint there = new ImagePoint(ball.xPx() - left.width() / 4.0, ball.yPx());
        assertThat(suggest(frame, View.FACE_ON, Handedness.RIGHT, List.of(there))
                        .landmarks())
                .hasSizeGreaterThan(10)
                .allMatch(m -> m.at().xPx() < w);
    }

    /** Cut short, one bit turned, and none at all: refused before native code reads it. */
    @Test
    void aDamagedModelIsNoModel() throws Exception {
        byte[] model;
        try (InputStream in = PoseModel.class.getResourceAsStream(PoseModel.RESOURCE)) {
            model = in.readAllBytes();
        }
        assertThat(PoseModel.of(new byte[0])).isEmpty();
        assertThat(PoseModel.of(Arrays.copyOf(model, model.length / 2))).isEmpty();
        model[model.length / 3] ^= 4;
        assertThat(PoseModel.of(model)).isEmpty();
    }

    @Test
    void saysWhenThereIsNobody() throws Exception {
        int[] grey = new int[640 * 360];
        for (int i = 0; i < grey.length; i++) {
            grey[i] = 0xff000000 | 0x010101 * (90 + i * 7919 % 23 + i / 640 / 8);
        }
        assertThat(suggest(new Frame(0, 0, 640, 360, grey), View.FACE_ON, Handedness.RIGHT, List.of()))
                .isEqualTo(ViewSuggestion.nothing(Reason.NOBODY));
        try (Clip clip = Clip.open(Path.of("sample-media", "before", "tee.mp4"))) {
            Frame tee = clip.frame(0);
            assertThat(suggest(tee, View.FACE_ON, Handedness.RIGHT, List.of()).isEmpty())
                    .isTrue();
        }
    }
}
