package org.toeline.desk.bodymap;

import javafx.scene.paint.Color;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;

/** The ball on its tee and the soled club head behind it, as the tee view shows them. */
final class TeeFigure implements Figure {

    private static final double GROUND = 236;
    private static final double BALL = 44;
    private static final ImagePoint MIDDLE = new ImagePoint(160, 186);
    private static final ImagePoint SOLE = new ImagePoint(66, GROUND);
    private static final ImagePoint CROWN = new ImagePoint(84, 180);

    @Override
    public ImagePoint at(Landmark landmark) {
        return switch (landmark) {
            case CROWN -> CROWN;
            case GROUND -> new ImagePoint(MIDDLE.xPx(), GROUND);
            case CLUB_HEAD -> SOLE;
            default -> BodyFigure.BODY.at(landmark);
        };
    }

    @Override
    public ImagePoint ball() {
        return MIDDLE;
    }

    @Override
    public ImagePoint floor(FloorReference point) {
        return BodyFigure.BODY.floor(point);
    }

    @Override
    public void draw(Pen pen) {
        pen.lines(Color.web("#b9b4a8"), 3, new ImagePoint(8, GROUND), new ImagePoint(222, GROUND));
        pen.lines(BodyMap.ink(), 3, new ImagePoint(58, 14), SOLE);
        pen.oval(BodyMap.body(), new ImagePoint(84, (CROWN.yPx() + GROUND) / 2), 96, GROUND - CROWN.yPx());
        pen.rim(BodyMap.INK, 1.5, new ImagePoint(84, (CROWN.yPx() + GROUND) / 2), 96, GROUND - CROWN.yPx());
        pen.lines(
                BodyMap.ink(),
                3,
                new ImagePoint(MIDDLE.xPx(), MIDDLE.yPx() + BALL / 2),
                new ImagePoint(MIDDLE.xPx(), GROUND));
        pen.oval(Color.WHITE, MIDDLE, BALL, BALL);
        pen.rim(BodyMap.INK, 1.5, MIDDLE, BALL, BALL);
    }
}
