package org.toeline.assist;

import java.util.Optional;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** How a player stands to the camera, and from which hand they seem to play. Limits are shares of the trunk. */
final class Standing {

    /** Shoulders and hips as wide as this are seen from the front: the narrowest met is 0.63. */
    private static final double FACE_ON = 0.6;
    /** And as narrow from the side: the widest met is 0.19. */
    private static final double FROM_THE_SIDE = 0.25;
    /** By so much a hand and a shoulder together hang lower than the others, or hands and nose lie ahead. */
    private static final double CLEARLY = 0.12;

    private static final int NOSE = 0;
    private static final int SHOULDER = 11;
    private static final int WRIST = 15;
    private static final int HIP = 23;
    private static final int ANKLE = 27;
    private static final int FEET_END = 33;

    private Standing() {}

    static Optional<View> view(Seen seen) {
        double width = (apart(seen, SHOULDER) + apart(seen, HIP)) / 2 / trunk(seen);
        if (width >= FACE_ON) {
            return Optional.of(View.FACE_ON);
        }
        return width <= FROM_THE_SIDE ? Optional.of(View.DOWN_THE_LINE) : Optional.empty();
    }

    static Optional<Handedness> hand(Seen seen, View view) {
        double right;
        if (view == View.DOWN_THE_LINE) {
            double hips = middle(seen, HIP).xPx();
            right = (seen.points()[NOSE].xPx() + middle(seen, WRIST).xPx() - 2 * hips) / 2;
        } else {
            // the trail hand is the lower one; its side is to the picture's left of a right-handed player
            right = lowerOnTheLeft(seen, WRIST) + lowerOnTheLeft(seen, SHOULDER);
        }
        double share = right / trunk(seen);
        return Math.abs(share) < CLEARLY
                ? Optional.empty()
                : Optional.of(share > 0 ? Handedness.RIGHT : Handedness.LEFT);
    }

    /** By how much the one of a pair that lies further left, by the shoulders' order, is the lower one. */
    private static double lowerOnTheLeft(Seen seen, int left) {
        ImagePoint a = seen.points()[left];
        ImagePoint b = seen.points()[left + 1];
        boolean bOnTheLeft = seen.points()[SHOULDER + 1].xPx() < seen.points()[SHOULDER].xPx();
        return bOnTheLeft ? b.yPx() - a.yPx() : a.yPx() - b.yPx();
    }

    static double trunk(Seen seen) {
        return Math.max(1, middle(seen, SHOULDER).distancePx(middle(seen, HIP)));
    }

    /** How far a place lies from the nearer foot, ankle to heel to toe, pixels. */
    static double fromFeet(Seen seen, ImagePoint at) {
        double nearest = Double.MAX_VALUE;
        for (int ankle = ANKLE; ankle < ANKLE + 2; ankle++) {
            for (int i = ankle; i < FEET_END; i += 2) {
                for (int k = i; k < FEET_END; k += 2) {
                    nearest = Math.min(nearest, RodSearch.fromStretch(at, seen.points()[i], seen.points()[k]));
                }
            }
        }
        return nearest;
    }

    private static double apart(Seen seen, int left) {
        return Math.abs(seen.points()[left].xPx() - seen.points()[left + 1].xPx());
    }

    static ImagePoint middle(Seen seen, int left) {
        ImagePoint a = seen.points()[left];
        ImagePoint b = seen.points()[left + 1];
        return new ImagePoint((a.xPx() + b.xPx()) / 2, (a.yPx() + b.yPx()) / 2);
    }
}
