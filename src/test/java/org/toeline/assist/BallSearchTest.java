package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.ShaftSearch.Shaft;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/** The ball of a sample clip, put where none can lie. */
class BallSearchTest extends OnSampleClips {

    private static final int REACH_PX = 14;

    /** Seen from the front it lies well below the feet; white at an ankle is a sock. */
    @Test
    void whatLiesAtAFootIsNoBall() throws Exception {
        Frame frame = frame("before", "face-on");
        ImagePoint ball = ball(truth("before", "face-on"));
        try (PoseModel model = PoseModel.open().orElseThrow()) {
            Seen seen = new PoseSearch(model, frame).person(List.of()).orElseThrow();
            double span = PoseSearch.span(seen);
            ImagePoint ankle = seen.points()[27];
            ImagePoint below = ankle.plus(0, 0.13 * span);
            assertThat(found(with(frame, ball, below), seen, below)).hasSize(1);
            assertThat(found(with(frame, ball, ankle), seen, ankle)).isEmpty();
        }
    }

    private static List<BallMark> found(Frame frame, Seen seen, ImagePoint at) {
        Shaft shaft = new Shaft(ShaftSearch.hands(seen), at.plus(-0.06 * PoseSearch.span(seen), 0), 0.5, false);
        return new BallSearch(frame, View.FACE_ON, 960)
                .near(shaft, seen, () -> false).stream()
                        .filter(b -> b.centre().distancePx(at) < 2)
                        .toList();
    }

    /** The ball and the ground around it copied to a place. */
    private static Frame with(Frame frame, ImagePoint ball, ImagePoint at) {
        int[] argb = frame.argb().clone();
        int right = (int) Math.round(at.xPx() - ball.xPx());
        int down = (int) Math.round(at.yPx() - ball.yPx());
        for (int y = (int) ball.yPx() - REACH_PX; y <= ball.yPx() + REACH_PX; y++) {
            for (int x = (int) ball.xPx() - REACH_PX; x <= ball.xPx() + REACH_PX; x++) {
                argb[(y + down) * frame.width() + x + right] = frame.argb()[y * frame.width() + x];
            }
        }
        return new Frame(frame.index(), frame.seconds(), frame.width(), frame.height(), argb);
    }
}
