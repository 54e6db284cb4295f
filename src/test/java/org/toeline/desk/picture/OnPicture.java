package org.toeline.desk.picture;

import javafx.geometry.Point2D;
import org.toeline.geometry.ImagePoint;

/** Where a hand that drives the desk finds the picture's pixels. */
public final class OnPicture {

    private OnPicture() {}

    /** In the window, measured from the corner of the pane. */
    public static Point2D inPane(PicturePane picture, ImagePoint at) {
        return new Point2D(picture.transform().deviceX(at), picture.transform().deviceY(at));
    }

    public static Point2D onScreen(PicturePane picture, ImagePoint at) {
        return picture.localToScreen(inPane(picture, at));
    }

    /** The pixel that lies so far beside another one, device units. */
    public static ImagePoint beside(PicturePane picture, ImagePoint at, double right, double down) {
        Point2D place = inPane(picture, at).add(right, down);
        return picture.transform().picture(place.getX(), place.getY());
    }

    /** Device units a pixel. */
    public static double scale(PicturePane picture) {
        return picture.transform().scale();
    }

    public static void zoom(PicturePane picture, double factor) {
        picture.zoom(factor);
    }
}
