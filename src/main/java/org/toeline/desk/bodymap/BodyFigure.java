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
 * Where the landmarks are on the drawn figure: a right-handed player seen from the front, in a box of
 * {@link #WIDTH} × {@link #HEIGHT}. A left-handed player is its mirror image.
 */
final class BodyFigure implements Figure {

    static final BodyFigure BODY = new BodyFigure();

    static final double WIDTH = 230;
    static final double HEIGHT = 330;

    /** Scale of the floor in the drawing, which is seen from the front and a little from above. */
    private static final double PX_PER_M_ALONG = 150;

    private static final double PX_PER_M_DEEP = 45;
    private static final ImagePoint BALL = new ImagePoint(188, 320);
    private static final Map<Landmark, ImagePoint> AT = new EnumMap<>(Landmark.class);

    static {
        put(HEAD_CENTRE, 100, 36);
        put(NECK, 104, 66);
        put(LEAD_SHOULDER, 140, 80);
        put(TRAIL_SHOULDER, 68, 92);
        put(LEAD_ELBOW, 152, 124);
        put(TRAIL_ELBOW, 88, 136);
        put(LEAD_WRIST, 142, 166);
        put(TRAIL_WRIST, 134, 180);
        put(GRIP_END, 139, 152);
        put(LEAD_HIP, 130, 172);
        put(TRAIL_HIP, 82, 174);
        put(LEAD_KNEE, 142, 228);
        put(TRAIL_KNEE, 70, 228);
        put(LEAD_ANKLE, 152, 282);
        put(TRAIL_ANKLE, 60, 282);
        put(LEAD_HEEL, 150, 296);
        put(TRAIL_HEEL, 62, 296);
        put(LEAD_TOE, 166, 314);
        put(TRAIL_TOE, 50, 314);
        put(CLUB_HEAD, 148, 318);
        put(CROWN, 140, 306);
        put(GROUND, 190, 326);
    }

    private BodyFigure() {}

    private static void put(Landmark landmark, double x, double y) {
        AT.put(landmark, new ImagePoint(x, y));
    }

    @Override
    public ImagePoint at(Landmark landmark) {
        ImagePoint p = AT.get(landmark);
        if (p == null) {
            throw new IllegalStateException(landmark + " is not on the figure");
        }
        return p;
    }

    @Override
    public ImagePoint ball() {
        return BALL;
    }

    /** Towards the target is towards the lead side, towards the player is up. */
    @Override
    public ImagePoint floor(FloorReference point) {
        return Figure.kept(BALL.xPx() + PX_PER_M_ALONG * point.t(), BALL.yPx() - PX_PER_M_DEEP * point.h());
    }

    @Override
    public void draw(Pen pen) {
        limb(pen, 26, LEAD_HIP, LEAD_KNEE);
        limb(pen, 26, TRAIL_HIP, TRAIL_KNEE);
        limb(pen, 19, LEAD_KNEE, LEAD_ANKLE, LEAD_TOE);
        limb(pen, 19, TRAIL_KNEE, TRAIL_ANKLE, TRAIL_TOE);
        pen.area(BodyMap.body(), 22, at(LEAD_SHOULDER), at(LEAD_HIP), at(TRAIL_HIP), at(TRAIL_SHOULDER));
        limb(pen, 16, TRAIL_SHOULDER, TRAIL_ELBOW, TRAIL_WRIST);
        limb(pen, 16, LEAD_SHOULDER, LEAD_ELBOW, LEAD_WRIST);
        pen.oval(BodyMap.body(), at(HEAD_CENTRE), 40, 48);
        pen.lines(BodyMap.ink(), 3, at(GRIP_END), at(CLUB_HEAD));
        pen.oval(Color.WHITE, BALL, 10, 10);
        pen.rim(BodyMap.INK, 1, BALL, 10, 10);
    }

    private void limb(Pen pen, double width, Landmark... along) {
        pen.lines(BodyMap.body(), width, Arrays.stream(along).map(this::at).toArray(ImagePoint[]::new));
    }
}
