package org.toeline.posture;

import org.toeline.mark.Landmark;

/**
 * How far from the true point a landmark of a clothed person is taken to be, one standard deviation in each direction,
 * metres; added to the click's own spread. Trochanters and the pelvis are found within 15 to 20 mm (Della Croce et al.
 * 2005, Gait Posture 21:226, as quoted in handbooks); 8 mm for points that clothing shows well; the others lie between,
 * common practice.
 */
final class LandmarkSpread {

    /** A suggested mark that nobody has accepted is this much less certain than it says, metres. */
    static final double SUGGESTED_M = 0.03;

    private LandmarkSpread() {}

    static double metres(Landmark landmark) {
        return switch (landmark) {
            case LEAD_HIP, TRAIL_HIP -> 0.016;
            case HEAD_CENTRE -> 0.012;
            case NECK -> 0.012;
            case LEAD_ELBOW, TRAIL_ELBOW, LEAD_KNEE, TRAIL_KNEE, LEAD_ANKLE, TRAIL_ANKLE -> 0.010;
            case CLUB_HEAD -> 0.006;
            case CROWN -> 0.0008;
            case GROUND -> 0.002;
            default -> 0.008;
        };
    }
}
