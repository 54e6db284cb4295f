package org.toeline.assist;

import static org.toeline.mark.Landmark.*;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/**
 * From the joint centres of the body-pose model to the bony points that readings need. Offsets are shares of the person's
 * span (nose to soles), measured on the sample clips against their truth; spreads were measured on a real man
 * ({@code docs/accuracy.md}). An offset's first figure points away from the body's middle in the face-on view (to the
 * target for points in the middle) and to the ball's side down the line; its second points up. On the trunk both turn with
 * it.
 */
final class BonyPoints {

    /** A point less visible than this is hidden, and is not suggested. */
    static final double LEAST_VISIBILITY = 0.5;
    /** The far leg down the line, half hidden by the near one: on a real player's clip its foot lay 8 to 11 cm off. */
    private static final double FAR_FOOT = 0.050;

    /**
     * How far the points lie from others' on a real dressed man ({@code docs/accuracy.md}), share of the span in each
     * direction. The drawn players of the samples are met two to four times more closely, and are no measure of a spread.
     */
    private static final Map<Landmark, Double> SPREAD = new EnumMap<>(Landmark.class);

    /**
     * How a landmark follows from the model's points.
     *
     * @param right the model's point of the right side of the body; the left one has the number before
     * @param out   offset out or to the ball, share of the span
     * @param up    offset up, share of the span
     */
    record From(int right, double out, double up) {}

    private static final Map<Landmark, From> FACE_ON = new EnumMap<>(Landmark.class);
    private static final Map<Landmark, From> DOWN_THE_LINE = new EnumMap<>(Landmark.class);
    /** So many digits tell editions apart. */
    private static final int EDITION = 12;

    private static final int EARS = 8;
    private static final int SHOULDERS = 12;

    private BonyPoints() {}

    static List<Mark> of(Sides sides, View view, Handedness handedness) {
        Seen seen = sides.seen();
        double span = PoseSearch.span(seen);
        Axes trunk = Axes.ofTrunk(seen);
        // seen face-on the target, and seen down the line the ball, lies to the right of a right-handed player's
        // picture
        double way = handedness == Handedness.RIGHT ? 1 : -1;
        List<Mark> marks = new ArrayList<>();
        table(view).forEach((landmark, from) -> {
            boolean middle = landmark.side() == Landmark.Side.MIDDLE;
            boolean rightBody = rightBody(landmark, handedness == Handedness.RIGHT);
            int right = from.right;
            int left = from.right - 1;
            double visible = middle
                    ? Math.max(seen.visibility()[left], seen.visibility()[right])
                    : seen.visibility()[rightBody ? right : left];
            if (visible >= LEAST_VISIBILITY && (sides.legs() || !isOfALeg(landmark))) {
                ImagePoint joint = joint(seen, landmark, from, handedness == Handedness.RIGHT);
                double out = view == View.FACE_ON && landmark.side() == Landmark.Side.TRAIL ? -from.out : from.out;
                Axes axes = turnsWithTrunk(landmark) ? trunk : Axes.UPRIGHT;
                marks.add(new Mark(
                        landmark,
                        axes.moved(joint, way * out * span, from.up * span),
                        span * spread(landmark, view),
                        Mark.Origin.SUGGESTED));
            }
        });
        return marks;
    }

    /** Other offsets, spreads or another model have another one. */
    static String edition() {
        String all = PoseModel.SHA_256 + FACE_ON + DOWN_THE_LINE + SPREAD + FAR_FOOT;
        return PoseModel.sha256(all.getBytes(StandardCharsets.UTF_8)).substring(0, EDITION);
    }

    /** Standard deviation in each direction, share of the span. */
    static double spread(Landmark landmark, View view) {
        boolean far = view == View.DOWN_THE_LINE && (landmark == LEAD_HEEL || landmark == LEAD_TOE);
        return far ? FAR_FOOT : Objects.requireNonNull(SPREAD.get(landmark));
    }

    private static boolean isOfALeg(Landmark landmark) {
        return landmark.ordinal() >= LEAD_KNEE.ordinal() && landmark.ordinal() <= TRAIL_TOE.ordinal();
    }

    private static boolean rightBody(Landmark landmark, boolean rightTrails) {
        return (landmark.side() == Landmark.Side.TRAIL) == rightTrails;
    }

    /** The model's point, or the middle of two, from which a landmark is counted. */
    static ImagePoint joint(Seen seen, Landmark landmark, From from, boolean rightTrails) {
        return landmark.side() == Landmark.Side.MIDDLE
                ? between(seen.points()[from.right - 1], seen.points()[from.right])
                : seen.points()[rightBody(landmark, rightTrails) ? from.right : from.right - 1];
    }

    /** The directions of offsets in the picture: up, and to the right of that. */
    record Axes(double upX, double upY) {

        static final Axes UPRIGHT = new Axes(0, -1);

        /** Up along the trunk, from the middle of the hips to that of the shoulders. */
        static Axes ofTrunk(Seen seen) {
            ImagePoint hips = between(seen.points()[23], seen.points()[24]);
            ImagePoint shoulders = between(seen.points()[11], seen.points()[12]);
            double length = Math.max(1, hips.distancePx(shoulders));
            return new Axes((shoulders.xPx() - hips.xPx()) / length, (shoulders.yPx() - hips.yPx()) / length);
        }

        ImagePoint moved(ImagePoint from, double rightPx, double upPx) {
            return from.plus(-upY * rightPx + upX * upPx, upX * rightPx + upY * upPx);
        }

        /** How far a place lies to the right and up from another, pixels. */
        double[] of(ImagePoint from, ImagePoint to) {
            double dx = to.xPx() - from.xPx();
            double dy = to.yPx() - from.yPx();
            return new double[] {-upY * dx + upX * dy, upX * dx + upY * dy};
        }
    }

    /** Shoulders, hips, head and neck sit on the trunk; arms hang and feet stand whichever way it leans. */
    static boolean turnsWithTrunk(Landmark landmark) {
        return switch (landmark) {
            case LEAD_SHOULDER, TRAIL_SHOULDER, LEAD_HIP, TRAIL_HIP, HEAD_CENTRE, NECK -> true;
            default -> false;
        };
    }

    static Map<Landmark, From> table(View view) {
        return view == View.FACE_ON ? FACE_ON : DOWN_THE_LINE;
    }

    private static ImagePoint between(ImagePoint a, ImagePoint b) {
        return new ImagePoint((a.xPx() + b.xPx()) / 2, (a.yPx() + b.yPx()) / 2);
    }

    private static void both(Map<Landmark, From> table, Landmark lead, Landmark trail, From from) {
        table.put(lead, from);
        table.put(trail, from);
    }

    private static void spread(Landmark lead, Landmark trail, double share) {
        SPREAD.put(lead, share);
        SPREAD.put(trail, share);
    }

    static {
        spread(LEAD_SHOULDER, TRAIL_SHOULDER, 0.020);
        spread(LEAD_ELBOW, TRAIL_ELBOW, 0.026);
        spread(LEAD_WRIST, TRAIL_WRIST, 0.021);
        spread(LEAD_HIP, TRAIL_HIP, 0.020);
        spread(LEAD_KNEE, TRAIL_KNEE, 0.018);
        spread(LEAD_ANKLE, TRAIL_ANKLE, 0.023);
        spread(LEAD_HEEL, TRAIL_HEEL, 0.027);
        spread(LEAD_TOE, TRAIL_TOE, 0.0305);
        SPREAD.put(HEAD_CENTRE, 0.020);
        SPREAD.put(NECK, 0.023);
        both(FACE_ON, LEAD_SHOULDER, TRAIL_SHOULDER, new From(12, 0.027, 0.028));
        both(FACE_ON, LEAD_ELBOW, TRAIL_ELBOW, new From(14, -0.017, -0.020));
        FACE_ON.put(LEAD_WRIST, new From(16, -0.019, 0.019));
        FACE_ON.put(TRAIL_WRIST, new From(16, -0.026, -0.008));
        both(FACE_ON, LEAD_HIP, TRAIL_HIP, new From(24, 0.038, 0.017));
        both(FACE_ON, LEAD_KNEE, TRAIL_KNEE, new From(26, 0.001, 0.011));
        both(FACE_ON, LEAD_ANKLE, TRAIL_ANKLE, new From(28, -0.002, 0.001));
        both(FACE_ON, LEAD_HEEL, TRAIL_HEEL, new From(30, 0.005, -0.011));
        both(FACE_ON, LEAD_TOE, TRAIL_TOE, new From(32, -0.009, -0.015));
        FACE_ON.put(HEAD_CENTRE, new From(EARS, -0.002, 0.040));
        FACE_ON.put(NECK, new From(SHOULDERS, -0.014, 0.064));
        DOWN_THE_LINE.put(LEAD_SHOULDER, new From(12, 0.027, 0.020));
        DOWN_THE_LINE.put(TRAIL_SHOULDER, new From(12, -0.030, 0.026));
        DOWN_THE_LINE.put(LEAD_ELBOW, new From(14, 0.012, -0.014));
        DOWN_THE_LINE.put(TRAIL_ELBOW, new From(14, 0.002, -0.013));
        DOWN_THE_LINE.put(LEAD_WRIST, new From(16, 0.037, 0.018));
        DOWN_THE_LINE.put(TRAIL_WRIST, new From(16, -0.003, 0.017));
        DOWN_THE_LINE.put(LEAD_HIP, new From(24, 0.030, 0.018));
        DOWN_THE_LINE.put(TRAIL_HIP, new From(24, -0.007, 0.017));
        DOWN_THE_LINE.put(LEAD_KNEE, new From(26, -0.019, 0.005));
        DOWN_THE_LINE.put(TRAIL_KNEE, new From(26, 0.004, 0.011));
        DOWN_THE_LINE.put(LEAD_ANKLE, new From(28, 0.009, -0.016));
        DOWN_THE_LINE.put(TRAIL_ANKLE, new From(28, -0.003, -0.009));
        DOWN_THE_LINE.put(LEAD_HEEL, new From(30, 0.007, -0.035));
        DOWN_THE_LINE.put(TRAIL_HEEL, new From(30, 0.001, -0.019));
        DOWN_THE_LINE.put(LEAD_TOE, new From(32, 0.039, 0.008));
        DOWN_THE_LINE.put(TRAIL_TOE, new From(32, 0.023, -0.024));
        DOWN_THE_LINE.put(HEAD_CENTRE, new From(EARS, 0.001, 0.023));
        DOWN_THE_LINE.put(NECK, new From(SHOULDERS, -0.021, 0.061));
    }
}
