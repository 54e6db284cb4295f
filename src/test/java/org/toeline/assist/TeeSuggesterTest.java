package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.toeline.camera.UsualLens;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/** The close view of the tee: ball, crown and ground where the clips' truth has them, or a reason. */
class TeeSuggesterTest {

    /** In one direction 99.9 % of a normal distribution lie within so many standard deviations. */
    private static final double MET = 3.3;

    private static ViewSuggestion suggest(Frame frame, Handedness hand) {
        double focalPx = UsualLens.MAIN.focalPx(frame.width(), frame.height());
        return new TeeSuggester(new Asked(frame, View.TEE, hand, List.of(), focalPx), () -> false).suggest();
    }

    private static Frame first(String sample) throws Exception {
        try (Clip clip = Clip.open(Path.of("sample-media", sample, "tee.mp4"))) {
            return clip.frame(0);
        }
    }

    /** Reference: what the drawn clip was drawn from, {@code tee.truth.json}. */
    @Test
    void ballCrownAndGroundLieWhereTheyWereDrawn() throws Exception {
        ViewSuggestion seen = suggest(first("all-good"), Handedness.RIGHT);
        JsonNode truth = new ObjectMapper()
                .readTree(Path.of("sample-media", "all-good", "tee.truth.json").toFile());
        assertThat(seen.missing()).isEmpty();
        BallMark ball = seen.ball().orElseThrow();
        assertThat(ball.origin()).isEqualTo(Mark.Origin.SUGGESTED);
        near(ball.centre().xPx(), truth.path("ball").path("x").asDouble(), ball.sigmaPx());
        near(ball.centre().yPx(), truth.path("ball").path("y").asDouble(), ball.sigmaPx());
        near(
                ball.diameterPx().orElseThrow(),
                truth.path("ball").path("diameter").asDouble(),
                ball.diameterSigmaPx());
        assertThat(seen.landmarks()).hasSize(2);
        for (Mark mark : seen.landmarks()) {
            // the fifth of a truth's landmark is its row in the picture
            double row =
                    truth.path("landmarks").path(mark.landmark().id()).get(4).asDouble();
            near(mark.at().yPx(), row, mark.sigmaPx());
            assertThat(mark.origin()).isEqualTo(Mark.Origin.SUGGESTED);
        }
        assertThat(seen.landmarks().stream().map(Mark::landmark)).containsExactly(Landmark.CROWN, Landmark.GROUND);
    }

    private static void near(double value, double truth, double sigma) {
        assertThat(value).isCloseTo(truth, within(MET * sigma));
    }

    /** An iron lies on the ground: neither a wood's head nor a tee is suggested, and each is said. */
    @Test
    void anIronHasNoCrownAndItsBallNoTee() throws Exception {
        ViewSuggestion seen = suggest(first("left-handed"), Handedness.LEFT);
        assertThat(seen.ball()).isPresent();
        assertThat(seen.landmarks()).isEmpty();
        assertThat(seen.missing())
                .isEqualTo(Map.of(
                        ViewSuggestion.Part.CROWN, ViewSuggestion.Reason.NOT_FOUND,
                        ViewSuggestion.Part.GROUND, ViewSuggestion.Reason.NOT_FOUND));
    }

    @Test
    void whatIsNoTeeHasNone() {
        int[] grey = new int[640 * 360];
        for (int i = 0; i < grey.length; i++) {
            grey[i] = 0xff000000 | 0x010101 * (90 + i * 7919 % 23 + i / 640 / 8);
        }
        ViewSuggestion seen = suggest(new Frame(0, 0, 640, 360, grey), Handedness.RIGHT);
        assertThat(seen.isEmpty()).isTrue();
        assertThat(seen.missing().get(ViewSuggestion.Part.CROWN)).isEqualTo(ViewSuggestion.Reason.NO_BALL);
    }
}
