package org.toeline.desk.bodymap;

import static org.toeline.mark.Landmark.*;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.paint.Color;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;

/**
 * A right-handed player at address seen along the target line from behind the ball: the trail side is in front and hides the lead
 * side in part. Of the same size as {@link BodyFigure}; a left-handed player is its mirror image.
 */
final class DownTheLineFigure implements Figure {

    private static final ImagePoint BALL = new ImagePoint(204, 312);
    private static final double PX_PER_M_AWAY = 95;
    private static final double PX_PER_M_DEEP = 42;
    private static final Map<Landmark, ImagePoint> AT = new EnumMap<>(Landmark.class);

    static {
        put(HEAD_CENTRE, 134, 56);
        put(NECK, 108, 78);
        put(TRAIL_SHOULDER, 112, 104);
        put(LEAD_SHOULDER, 128, 96);
        put(TRAIL_ELBOW, 112, 148);
        put(LEAD_ELBOW, 138, 142);
        put(TRAIL_WRIST, 124, 188);
        put(LEAD_WRIST, 138, 178);
        put(GRIP_END, 118, 172);
        put(TRAIL_HIP, 66, 176);
        put(LEAD_HIP, 80, 164);
        put(TRAIL_KNEE, 94, 236);
        put(LEAD_KNEE, 110, 226);
        put(TRAIL_ANKLE, 72, 290);
        put(LEAD_ANKLE, 92, 280);
        put(TRAIL_HEEL, 62, 311);
        put(LEAD_HEEL, 89, 296);
        put(TRAIL_TOE, 108, 313);
        put(LEAD_TOE, 124, 297);
        put(CLUB_HEAD, 190, 308);
    }

    private static void put(Landmark landmark, double x, double y) {
        AT.put(landmark, new ImagePoint(x, y));
    }

    @Override
    public ImagePoint at(Landmark landmark) {
        ImagePoint p = AT.get(landmark);
        return p == null ? BodyFigure.BODY.at(landmark) : p;
    }

    @Override
    public ImagePoint ball() {
        return BALL;
    }

    /** Towards the target is away from the eye, towards the player to the left. */
    @Override
    public ImagePoint floor(FloorReference point) {
        return Figure.kept(
                BALL.xPx() - PX_PER_M_AWAY * point.h() + PX_PER_M_DEEP / 3 * point.t(),
                BALL.yPx() - PX_PER_M_DEEP * point.t());
    }

    @Override
    public void draw(Pen pen) {
        limb(pen, BodyMap.farBody(), 24, LEAD_HIP, LEAD_KNEE);
        limb(pen, BodyMap.farBody(), 17, LEAD_KNEE, LEAD_ANKLE, LEAD_TOE);
        limb(pen, BodyMap.farBody(), 14, LEAD_SHOULDER, LEAD_ELBOW, LEAD_WRIST);
        pen.area(BodyMap.body(), 24, at(NECK), at(LEAD_SHOULDER), at(LEAD_HIP), at(TRAIL_HIP));
        limb(pen, BodyMap.body(), 26, TRAIL_HIP, TRAIL_KNEE);
        limb(pen, BodyMap.body(), 19, TRAIL_KNEE, TRAIL_ANKLE, TRAIL_TOE);
        pen.lines(BodyMap.body(), 16, at(NECK), at(HEAD_CENTRE));
        pen.oval(BodyMap.body(), at(HEAD_CENTRE), 44, 46);
        // so that the arm in front is told from the body behind it
        limb(pen, BodyMap.farBody(), 18, TRAIL_SHOULDER, TRAIL_ELBOW, TRAIL_WRIST);
        limb(pen, BodyMap.body(), 15, TRAIL_SHOULDER, TRAIL_ELBOW, TRAIL_WRIST);
        pen.lines(BodyMap.ink(), 3, at(GRIP_END), at(CLUB_HEAD));
        pen.oval(Color.WHITE, BALL, 10, 10);
        pen.rim(BodyMap.INK, 1, BALL, 10, 10);
    }

    private void limb(Pen pen, Color color, double width, Landmark... along) {
        pen.lines(color, width, Arrays.stream(along).map(this::at).toArray(ImagePoint[]::new));
    }
}
