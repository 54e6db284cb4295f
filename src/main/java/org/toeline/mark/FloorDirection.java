package org.toeline.mark;

import org.toeline.geometry.ImagePoint;

/**
 * Which way a line on the floor runs in a picture. Towards the target is towards the lead side in a picture from the front, and away
 * from the camera down the line; towards the player is away from the camera from the front, and towards the player's side down the
 * line. What lies away from a camera above the floor is seen higher up.
 */
public final class FloorDirection {

    private FloorDirection() {}

    /**
     * The share of a stroke that runs the way the line from one floor point to another is seen, −1 to 1: 0 for a stroke across
     * it, which says nothing; less for one that runs back.
     */
    public static double share(
            FloorReference first,
            FloorReference second,
            ImagePoint from,
            ImagePoint to,
            View view,
            Handedness handedness) {
        double along = second.t() - first.t();
        double across = second.h() - first.h();
        double up = from.yPx() - to.yPx();
        double right = (handedness == Handedness.LEFT ? -1 : 1) * (to.xPx() - from.xPx());
        boolean mostlyAlong = Math.abs(along) >= Math.abs(across);
        double seen = mostlyAlong ? (view == View.FACE_ON ? right : up) : view == View.FACE_ON ? up : -right;
        return Math.signum(mostlyAlong ? along : across) * seen / from.distancePx(to);
    }
}
