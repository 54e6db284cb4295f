package org.toeline.desk.bodymap;

import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;

/** What a view shows, drawn, and where in the drawing the things are that are marked. */
interface Figure {

    ImagePoint at(Landmark landmark);

    ImagePoint ball();

    void draw(Pen pen);
}
