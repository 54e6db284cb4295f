package org.toeline.desk.bodymap;

import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;

/** What a view shows, drawn, and where in the drawing the things are that are marked. */
interface Figure {

    double MARGIN = 10;

    ImagePoint at(Landmark landmark);

    ImagePoint ball();

    /** Where a point of the floor is drawn; what lies far off is at the edge. */
    ImagePoint floor(FloorReference point);

    void draw(Pen pen);

    /** There, or at the edge of the drawing. */
    static ImagePoint kept(double x, double y) {
        return new ImagePoint(
                Math.max(MARGIN, Math.min(BodyFigure.WIDTH - MARGIN, x)),
                Math.max(MARGIN, Math.min(BodyFigure.HEIGHT - MARGIN, y)));
    }
}
