package org.toeline.assist;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/**
 * From the joint centres of the body-pose model to the bony points that readings need. Offsets and spreads are shares of
 * the person's span (nose to soles), measured on the sample clips against their truth; {@code docs/marking.md} has the
 * table and the study that makes it. An offset's first figure points away from the body's middle in the face-on view (to
 * the target for points in the middle) and to the ball's side down the line; its second points up.
 */
final class BonyPoints {

    /** A point less visible than this is hidden, and is not suggested. */
    static final double LEAST_VISIBILITY = 0.5;
    /** Real bodies vary more than drawn ones: no spread is stated below this share of the span. */
    private static final double LEAST_SPREAD = 0.012;
    /** And the measured one is widened by this. */
    private static final double WIDENED = 1.25;

    /**
     * How a landmark follows from the model's points.
     *
     * @param right the model's point of the right side of the body; the left one has the number before
     * @param out   offset out or to the ball, share of the span
     * @param up    offset up, share of the span
     * @param sigma measured spread, share of the span
     */
    record From(int right, double out, double up, double sigma) {}

    private static final Map<Landmark, From> FACE_ON = new EnumMap<>(Landmark.class);
    private static final Map<Landmark, From> DOWN_THE_LINE = new EnumMap<>(Landmark.class);
    private static final int EARS = 8;
    private static final int SHOULDERS = 12;

    private BonyPoints() {}

    static List<Mark> of(Seen seen, View view, Handedness handedness) {
        double span = PoseSearch.span(seen);
        // seen face-on the target, and seen down the line the ball, lies to the right of a right-handed player's
        // picture
        double way = handedness == Handedness.RIGHT ? 1 : -1;
        List<Mark> marks = new ArrayList<>();
        (view == View.FACE_ON ? FACE_ON : DOWN_THE_LINE).forEach((landmark, from) -> {
            boolean middle = landmark.side() == Landmark.Side.MIDDLE;
            boolean rightBody = (landmark.side() == Landmark.Side.TRAIL) == (handedness == Handedness.RIGHT);
            int right = from.right;
            int left = from.right - 1;
            double visible = middle
                    ? Math.max(seen.visibility()[left], seen.visibility()[right])
                    : seen.visibility()[rightBody ? right : left];
            if (visible >= LEAST_VISIBILITY) {
                ImagePoint joint = middle
                        ? between(seen.points()[left], seen.points()[right])
                        : seen.points()[rightBody ? right : left];
                double out = view == View.FACE_ON && landmark.side() == Landmark.Side.TRAIL ? -from.out : from.out;
                marks.add(new Mark(
                        landmark,
                        joint.plus(way * out * span, -from.up * span),
                        span * Math.max(LEAST_SPREAD, WIDENED * from.sigma),
                        Mark.Origin.SUGGESTED));
            }
        });
        return marks;
    }

    private static ImagePoint between(ImagePoint a, ImagePoint b) {
        return new ImagePoint((a.xPx() + b.xPx()) / 2, (a.yPx() + b.yPx()) / 2);
    }

    private static void both(Map<Landmark, From> table, Landmark lead, Landmark trail, From from) {
        table.put(lead, from);
        table.put(trail, from);
    }

    static {
        both(FACE_ON, LEAD_SHOULDER, TRAIL_SHOULDER, new From(12, 0.027, 0.028, 0.014));
        both(FACE_ON, LEAD_ELBOW, TRAIL_ELBOW, new From(14, -0.017, -0.020, 0.025));
        FACE_ON.put(LEAD_WRIST, new From(16, -0.019, 0.019, 0.009));
        FACE_ON.put(TRAIL_WRIST, new From(16, -0.026, -0.008, 0.009));
        both(FACE_ON, LEAD_HIP, TRAIL_HIP, new From(24, 0.038, 0.017, 0.013));
        both(FACE_ON, LEAD_KNEE, TRAIL_KNEE, new From(26, 0.001, 0.011, 0.009));
        both(FACE_ON, LEAD_ANKLE, TRAIL_ANKLE, new From(28, -0.002, 0.001, 0.011));
        both(FACE_ON, LEAD_HEEL, TRAIL_HEEL, new From(30, 0.005, -0.011, 0.013));
        both(FACE_ON, LEAD_TOE, TRAIL_TOE, new From(32, -0.009, -0.015, 0.014));
        FACE_ON.put(HEAD_CENTRE, new From(EARS, -0.002, 0.040, 0.005));
        FACE_ON.put(NECK, new From(SHOULDERS, -0.014, 0.064, 0.005));
        DOWN_THE_LINE.put(LEAD_SHOULDER, new From(12, 0.027, 0.020, 0.008));
        DOWN_THE_LINE.put(TRAIL_SHOULDER, new From(12, -0.030, 0.026, 0.009));
        DOWN_THE_LINE.put(LEAD_ELBOW, new From(14, 0.012, -0.014, 0.030));
        DOWN_THE_LINE.put(TRAIL_ELBOW, new From(14, 0.002, -0.013, 0.023));
        DOWN_THE_LINE.put(LEAD_WRIST, new From(16, 0.037, 0.018, 0.030));
        DOWN_THE_LINE.put(TRAIL_WRIST, new From(16, -0.003, 0.017, 0.011));
        DOWN_THE_LINE.put(LEAD_HIP, new From(24, 0.030, 0.018, 0.008));
        DOWN_THE_LINE.put(TRAIL_HIP, new From(24, -0.007, 0.017, 0.007));
        DOWN_THE_LINE.put(LEAD_KNEE, new From(26, -0.019, 0.005, 0.013));
        DOWN_THE_LINE.put(TRAIL_KNEE, new From(26, 0.004, 0.011, 0.008));
        DOWN_THE_LINE.put(LEAD_ANKLE, new From(28, 0.009, -0.016, 0.013));
        DOWN_THE_LINE.put(TRAIL_ANKLE, new From(28, -0.003, -0.009, 0.013));
        DOWN_THE_LINE.put(LEAD_HEEL, new From(30, 0.007, -0.035, 0.015));
        DOWN_THE_LINE.put(TRAIL_HEEL, new From(30, 0.001, -0.019, 0.013));
        DOWN_THE_LINE.put(LEAD_TOE, new From(32, 0.039, 0.008, 0.012));
        DOWN_THE_LINE.put(TRAIL_TOE, new From(32, 0.023, -0.024, 0.023));
        DOWN_THE_LINE.put(HEAD_CENTRE, new From(EARS, 0.001, 0.023, 0.004));
        DOWN_THE_LINE.put(NECK, new From(SHOULDERS, -0.021, 0.061, 0.004));
    }
}
