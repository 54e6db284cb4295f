package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/** The sample clips, whose truth is known, and pictures without golf. */
class ViewSuggesterTest extends OnSampleClips {

    @ParameterizedTest
    @CsvSource({
        "before, face-on, RIGHT",
        "before, down-the-line, RIGHT",
        "left-handed, face-on, LEFT",
        "left-handed, down-the-line, LEFT"
    })
    void marksTheWholeView(String lesson, String view, Handedness hand) throws Exception {
        View from = View.of(view).orElseThrow();
        JsonNode truth = truth(lesson, view);
        ViewSuggestion seen = suggest(frame(lesson, view), from, hand);
        assertThat(seen.view()).contains(from);
        assertThat(seen.hand().orElse(hand)).isEqualTo(hand);
        assertThat(seen.landmarks()).extracting(Mark::landmark).contains(Landmark.CLUB_HEAD, Landmark.GRIP_END);
        for (Mark mark : seen.landmarks()) {
            ImagePoint at = landmark(truth, mark.landmark().id());
            assertThat(mark.at().distancePx(at) / mark.sigmaPx())
                    .as(mark.landmark().id() + " at " + mark.at() + " for " + at)
                    .isLessThan(3.5);
        }
        BallMark ball = seen.ball().orElseThrow();
        double off = ball.centre().distancePx(ball(truth));
        assertThat(off).as("ball").isLessThan(4 * ball.sigmaPx());
        FloorLayout layout = layout(truth);
        List<FloorMark> ends = RodNames.of(seen.rods(), layout, from, hand);
        assertThat(ends).as("rods").hasSizeGreaterThanOrEqualTo(2);
        for (FloorMark end : ends) {
            assertThat(end.at().distancePx(floor(truth, end.pointId())))
                    .as(end.pointId())
                    .isLessThan(4 * end.sigmaPx());
        }
        assertThat(seen.missing().keySet()).doesNotContain(Part.BODY, Part.SHAFT, Part.BALL, Part.RODS);
        assertThat(seen.uprights().isEmpty()).isEqualTo(seen.missing().containsKey(Part.UPRIGHTS));
        assertThat(ball.origin()).isEqualTo(Mark.Origin.SUGGESTED);
    }

    /** The same clips as a dark bay gives them: three tenths as bright, with noise of three levels. */
    @ParameterizedTest
    @CsvSource({"left-handed, face-on, LEFT", "all-good, down-the-line, RIGHT"})
    void findsShaftAndBallInTheDark(String lesson, String view, Handedness hand) throws Exception {
        Frame dark = dark(frame(lesson, view), 0.3, 3);
        JsonNode truth = truth(lesson, view);
        ViewSuggestion seen = suggest(dark, View.of(view).orElseThrow(), hand);
        assertThat(seen.missing().keySet()).doesNotContain(Part.BODY, Part.SHAFT, Part.BALL);
        BallMark ball = seen.ball().orElseThrow();
        assertThat(ball.centre().distancePx(ball(truth))).isLessThan(4 * ball.sigmaPx());
        for (Mark mark : seen.landmarks()) {
            assertThat(mark.at().distancePx(landmark(truth, mark.landmark().id())))
                    .as(mark.landmark().id())
                    .isLessThan(4 * mark.sigmaPx());
        }
    }

    private static Frame dark(Frame frame, double gain, double noise) {
        SplittableRandom random = new SplittableRandom(7);
        int[] argb = new int[frame.argb().length];
        for (int i = 0; i < argb.length; i++) {
            int p = 0xff;
            for (int c = 0; c < 3; c++) {
                double grain = noise * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2;
                double v = gain * (frame.argb()[i] >> 16 - 8 * c & 255) + grain;
                p = p << 8 | (int) Math.round(Math.max(0, Math.min(255, v)));
            }
            argb[i] = p;
        }
        return new Frame(frame.index(), frame.seconds(), frame.width(), frame.height(), argb);
    }

    /** Other frames of the still span: all is there again, no spread is smaller, and what moved there is left out. */
    @Test
    void looksAgainWhileThePlayerStandsStill() throws Exception {
        Frame frame = frame("before", "face-on");
        JsonNode truth = truth("before", "face-on");
        ViewSuggestion alone = suggest(frame, View.FACE_ON, Handedness.RIGHT);
        ViewSuggestion still = again(frame, frameAt("before", "face-on", 2.0), frameAt("before", "face-on", 2.6));
        assertThat(still.landmarks())
                .extracting(Mark::landmark)
                .containsExactlyElementsOf(
                        alone.landmarks().stream().map(Mark::landmark).toList());
        for (int i = 0; i < still.landmarks().size(); i++) {
            Mark mark = still.landmarks().get(i);
            Mark was = alone.landmarks().get(i);
            assertThat(mark.sigmaPx()).as("%s", mark).isGreaterThanOrEqualTo(was.sigmaPx());
            assertThat(mark.sigmaPx()).as("%s", mark).isLessThan(1.1 * was.sigmaPx());
            assertThat(mark.at().distancePx(was.at())).as("%s", mark).isLessThan(0.5 * was.sigmaPx());
        }
        BallMark ball = still.ball().orElseThrow();
        assertThat(ball.sigmaPx())
                .isGreaterThanOrEqualTo(alone.ball().orElseThrow().sigmaPx());
        assertThat(ball.centre().distancePx(ball(truth))).isLessThan(3 * ball.sigmaPx());

        ViewSuggestion swung = again(frame, frameAt("before", "face-on", 3.4), frameAt("before", "face-on", 3.6));
        assertThat(swung.landmarks())
                .extracting(Mark::landmark)
                .contains(Landmark.LEAD_HEEL, Landmark.TRAIL_HEEL)
                .doesNotContain(Landmark.LEAD_WRIST, Landmark.TRAIL_WRIST, Landmark.CLUB_HEAD, Landmark.GRIP_END);
        assertThat(swung.missing())
                .containsEntry(Part.SHAFT, Reason.UNSTEADY)
                .containsEntry(Part.BALL, Reason.NO_SHAFT);
        assertThat(swung.ball()).isEmpty();
    }

    /** A ball that is not there in the other frames is none, and so the shaft is not sure. */
    @Test
    void aBallThatIsThereOnceIsNone() throws Exception {
        Frame frame = frame("before", "face-on");
        ImagePoint ball = ball(truth("before", "face-on"));
        ViewSuggestion seen = again(frame, without(frame, ball), without(frame, ball));
        assertThat(seen.ball()).isEmpty();
        assertThat(seen.missing()).containsEntry(Part.BALL, Reason.UNSTEADY).containsEntry(Part.SHAFT, Reason.NO_BALL);
        assertThat(seen.landmarks()).extracting(Mark::landmark).contains(Landmark.LEAD_WRIST);
    }

    private static ViewSuggestion again(Frame frame, Frame... others) {
        Asked asked = new Asked(frame, View.FACE_ON, Handedness.RIGHT, List.of(), 960).with(List.of(others));
        return suggester.suggest(asked, () -> false);
    }

    /** The ground beside it in place of the ball. */
    private static Frame without(Frame frame, ImagePoint ball) {
        int[] argb = frame.argb().clone();
        for (int y = (int) ball.yPx() - 14; y < ball.yPx() + 14; y++) {
            for (int x = (int) ball.xPx() - 14; x < ball.xPx() + 14; x++) {
                argb[y * frame.width() + x] = frame.argb()[y * frame.width() + x + 34];
            }
        }
        return new Frame(frame.index(), frame.seconds(), frame.width(), frame.height(), argb);
    }

    /** Asked for the view that it is not: said, and no landmark of the body is suggested. */
    @Test
    void saysThatItIsTheOtherView() throws Exception {
        ViewSuggestion seen = suggest(frame("before", "face-on"), View.DOWN_THE_LINE, Handedness.RIGHT);
        assertThat(seen.missing()).containsEntry(Part.BODY, Reason.OTHER_VIEW);
        assertThat(seen.landmarks()).extracting(Mark::landmark).doesNotContain(Landmark.LEAD_SHOULDER);
    }

    /** Noise and stripes are no golf; nor is a player upside down. */
    @Test
    void suggestsNothingWhereThereIsNoGolf() throws Exception {
        SplittableRandom random = new SplittableRandom(3);
        int[] noise = new int[640 * 360];
        int[] stripes = new int[640 * 360];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = 0xff000000 | random.nextInt(0x1000000);
            stripes[i] = i / 640 / 9 % 2 == 0 ? 0xffe07020 : 0xff306030;
        }
        Frame upright = frame("before", "face-on");
        int[] turned = new int[upright.argb().length];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = upright.argb()[turned.length - 1 - i];
        }
        for (Frame frame : List.of(
                new Frame(0, 0, 640, 360, noise),
                new Frame(0, 0, 640, 360, stripes),
                new Frame(0, 0, upright.width(), upright.height(), turned))) {
            ViewSuggestion seen = suggest(frame, View.FACE_ON, Handedness.RIGHT);
            assertThat(seen.isEmpty()).as("%s", seen).isTrue();
            assertThat(seen.missing()).hasSize(Part.values().length);
        }
    }

    @Test
    void stopsWhenTold() throws Exception {
        Asked asked = new Asked(frame("before", "face-on"), View.FACE_ON, Handedness.RIGHT, List.of(), 960);
        assertThatThrownBy(() -> suggester.suggest(asked, () -> true)).isInstanceOf(CancellationException.class);
    }

    private static ViewSuggestion suggest(Frame frame, View view, Handedness hand) {
        return suggest(frame, view, hand, List.of());
    }

    private static FloorLayout layout(JsonNode truth) {
        List<FloorReference> points = new ArrayList<>();
        for (JsonNode p : truth.path("floor")) {
            points.add(new FloorReference(
                    p.path("id").asText(), p.path("t").asDouble(), p.path("h").asDouble()));
        }
        return new FloorLayout(points, 0.003);
    }

    private static ImagePoint floor(JsonNode truth, String id) {
        for (JsonNode p : truth.path("floor")) {
            if (p.path("id").asText().equals(id)) {
                return new ImagePoint(p.path("x").asDouble(), p.path("y").asDouble());
            }
        }
        throw new AssertionError(id);
    }
}
