package org.toeline.desk.bodymap;

import javafx.scene.paint.Color;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;

/**
 * A small drawing of the place that a landmark means, bone and all, on a card in the empty corner beside the head. Bones are drawn
 * as simply as they can still be recognised; where the points are is said by {@link Landmark}.
 */
final class BonyPoint {

    private static final Color CARD = Color.web("#ffffff");
    private static final Color EDGE = Color.web("#c9c6bf");
    private static final Color BONE = Color.web("#e6dcc3");
    private static final Color POINT = Color.web("#F0E442");
    private static final double SIZE = 66;
    private static final double FROM = 2;

    private final Pen pen;

    private BonyPoint(Pen pen) {
        this.pen = pen;
    }

    static void draw(Pen pen, Landmark landmark) {
        BonyPoint drawn = new BonyPoint(pen);
        pen.area(EDGE, 8, at(4, 4), at(SIZE - 4, 4), at(SIZE - 4, SIZE - 4), at(4, SIZE - 4));
        pen.area(CARD, 6, at(4, 4), at(SIZE - 4, 4), at(SIZE - 4, SIZE - 4), at(4, SIZE - 4));
        drawn.point(drawn.place(landmark));
    }

    private ImagePoint place(Landmark landmark) {
        return switch (landmark) {
            case LEAD_SHOULDER, TRAIL_SHOULDER -> shoulder();
            case LEAD_ELBOW, TRAIL_ELBOW -> elbow();
            case LEAD_WRIST, TRAIL_WRIST -> wrist();
            case LEAD_HIP, TRAIL_HIP -> hip();
            case LEAD_KNEE, TRAIL_KNEE -> knee();
            case LEAD_ANKLE, TRAIL_ANKLE -> ankle();
            case LEAD_HEEL, TRAIL_HEEL -> shoe(at(8, 53));
            case LEAD_TOE, TRAIL_TOE -> shoe(at(59, 53));
            case HEAD_CENTRE -> head();
            case NECK -> neck();
            case CLUB_HEAD -> club(at(29, 54));
            case CROWN -> club(at(24, 34));
            case GRIP_END -> grip();
            case GROUND -> tee();
        };
    }

    /** The tip of the shoulder blade above the head of the upper arm. */
    private ImagePoint shoulder() {
        pen.area(BONE, 2, at(12, 30), at(36, 27), at(24, 58));
        bone(6, at(46, 36), at(52, 62));
        knob(at(45, 34), 17);
        bone(5, at(6, 26), at(30, 19), at(50, 21));
        return at(51, 20);
    }

    private ImagePoint elbow() {
        bone(8, at(33, 6), at(33, 26));
        bone(6, at(28, 38), at(22, 60));
        bone(6, at(38, 38), at(44, 60));
        knob(at(26, 30), 12);
        knob(at(40, 30), 12);
        return at(33, 32);
    }

    /** The middle between the knobs of both bones of the forearm. */
    private ImagePoint wrist() {
        bone(6, at(27, 6), at(25, 26));
        bone(6, at(39, 6), at(41, 26));
        for (double x : new double[] {22, 30, 38, 46}) {
            bone(3, at(26 + (x - 22) * 0.6, 44), at(x, 61));
        }
        pen.oval(BONE, at(33, 41), 24, 12);
        knob(at(23, 30), 9);
        knob(at(43, 30), 9);
        return at(33, 31);
    }

    /** The knob on the outside of the thigh bone. */
    private ImagePoint hip() {
        pen.area(BONE, 5, at(8, 10), at(28, 12), at(32, 30), at(18, 42), at(8, 34));
        bone(7, at(34, 30), at(50, 28), at(45, 60));
        knob(at(34, 30), 13);
        knob(at(51, 26), 10);
        return at(54, 26);
    }

    private ImagePoint knee() {
        bone(8, at(33, 6), at(33, 24));
        bone(8, at(32, 42), at(32, 60));
        bone(4, at(44, 44), at(43, 60));
        knob(at(26, 28), 13);
        knob(at(40, 28), 13);
        bone(5, at(23, 39), at(43, 39));
        return at(33, 32);
    }

    /** The middle between the inner and the outer knob. */
    private ImagePoint ankle() {
        bone(7, at(29, 6), at(28, 34));
        bone(4, at(42, 6), at(43, 38));
        pen.oval(BONE, at(34, 45), 20, 9);
        bone(5, at(30, 54), at(40, 57));
        knob(at(23, 37), 10);
        knob(at(45, 41), 9);
        return at(34, 39);
    }

    private ImagePoint shoe(ImagePoint point) {
        ground();
        pen.area(BodyMap.BODY, 4, at(10, 50), at(11, 24), at(26, 22), at(34, 36), at(54, 42), at(57, 51));
        pen.lines(BodyMap.INK, 2, at(9, 53), at(58, 53));
        return point;
    }

    /** As far from one ear as from the other. */
    private ImagePoint head() {
        pen.oval(BodyMap.BODY, at(33, 33), 38, 50);
        pen.oval(BodyMap.BODY, at(13, 34), 8, 14);
        pen.oval(BodyMap.BODY, at(53, 34), 8, 14);
        pen.lines(BodyMap.INK, 1, at(13, 34), at(53, 34));
        return at(33, 34);
    }

    /** The one that stands out among the vertebrae, seen from behind. */
    private ImagePoint neck() {
        pen.oval(BodyMap.BODY, at(33, 8), 24, 12);
        bone(4, at(33, 26), at(12, 34), at(6, 44));
        bone(4, at(33, 26), at(54, 34), at(60, 44));
        for (double y : new double[] {10, 18, 38, 47, 56}) {
            knob(at(33, y), 8);
        }
        knob(at(33, 28), 13);
        return at(33, 28);
    }

    private ImagePoint club(ImagePoint point) {
        ground();
        pen.lines(BodyMap.INK, 3, at(56, 6), at(32, 50));
        pen.oval(BodyMap.BODY, at(24, 44), 36, 21);
        pen.rim(BodyMap.INK, 1.5, at(24, 44), 36, 21);
        return point;
    }

    private ImagePoint grip() {
        pen.lines(BodyMap.INK, 3, at(8, 60), at(24, 40));
        pen.lines(BodyMap.INK, 8, at(24, 40), at(46, 13));
        return at(49, 9);
    }

    private ImagePoint tee() {
        ground();
        pen.lines(BodyMap.INK, 3, at(33, 30), at(33, 54));
        pen.oval(CARD, at(33, 20), 24, 24);
        pen.rim(BodyMap.INK, 1.5, at(33, 20), 24, 24);
        return at(33, 54);
    }

    private void ground() {
        pen.lines(EDGE, 2, at(4, 55), at(62, 55));
    }

    private void bone(double width, ImagePoint... along) {
        pen.lines(BodyMap.INK, width + 2, along);
        pen.lines(BONE, width, along);
    }

    private void knob(ImagePoint middle, double size) {
        pen.oval(BONE, middle, size, size);
        pen.rim(BodyMap.INK, 1, middle, size, size);
    }

    private void point(ImagePoint p) {
        pen.oval(POINT, p, 9, 9);
        pen.rim(BodyMap.INK, 2, p, 9, 9);
    }

    private static ImagePoint at(double x, double y) {
        return new ImagePoint(FROM + x, FROM + y);
    }
}
