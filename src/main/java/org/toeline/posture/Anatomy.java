package org.toeline.posture;

import static org.toeline.mark.Landmark.*;

import java.util.List;
import org.toeline.mark.Landmark;

/**
 * What holds of every player, however strange the stance: bones keep their lengths, both hands hold the grip, soles are
 * on the floor, the club lies at the ball. This is evidence against a mark; how people usually stand is not. Lengths and
 * their spreads are those of the {@link Population}, which is drawn wide.
 */
final class Anatomy {

    /** The ends of bones, and of what the hands hold together. */
    private static final Landmark[][] BONES = {
        {LEAD_SHOULDER, TRAIL_SHOULDER},
        {LEAD_HIP, TRAIL_HIP},
        {LEAD_SHOULDER, LEAD_ELBOW},
        {TRAIL_SHOULDER, TRAIL_ELBOW},
        {LEAD_ELBOW, LEAD_WRIST},
        {TRAIL_ELBOW, TRAIL_WRIST},
        {LEAD_HIP, LEAD_KNEE},
        {TRAIL_HIP, TRAIL_KNEE},
        {LEAD_KNEE, LEAD_ANKLE},
        {TRAIL_KNEE, TRAIL_ANKLE},
        {LEAD_HEEL, LEAD_TOE},
        {TRAIL_HEEL, TRAIL_TOE},
        {LEAD_ANKLE, LEAD_HEEL},
        {TRAIL_ANKLE, TRAIL_HEEL},
        {LEAD_ANKLE, LEAD_TOE},
        {TRAIL_ANKLE, TRAIL_TOE},
        {NECK, HEAD_CENTRE},
        {LEAD_SHOULDER, NECK},
        {TRAIL_SHOULDER, NECK},
        {LEAD_SHOULDER, LEAD_HIP},
        {TRAIL_SHOULDER, TRAIL_HIP},
        {LEAD_WRIST, TRAIL_WRIST},
        {LEAD_WRIST, GRIP_END},
        {TRAIL_WRIST, GRIP_END},
    };

    private static final Landmark[] SOLES = {LEAD_HEEL, TRAIL_HEEL, LEAD_TOE, TRAIL_TOE};
    /** How far from the floor the ends of a shoe may be, metres; common practice. */
    private static final double SOLE_M = 0.010;
    /** How far the club head lies from the ball's place at most times, metres: t, h; common practice. */
    private static final double[] HEAD_AT_BALL_M = {-0.05, 0.02};

    private static final double HEAD_AT_BALL_SIGMA_M = 0.04;

    /** The ankle stands over the foot: this share of the way from heel to toe, give or take; as players are drawn. */
    private static final double ANKLE_SHARE = 0.24;

    private static final double ANKLE_ASIDE_M = 0.025;
    /** Where the neck is from the middle of the shoulders, metres: t, h; as players are drawn. */
    private static final double[] NECK_M = {-0.005, 0.015};

    private static final double NECK_ASIDE_M = 0.035;

    private Anatomy() {}

    static void know(Unknowns unknowns, Population population, List<Knowledge> into) {
        for (Landmark[] bone : BONES) {
            if (unknowns.has(bone[0]) && unknowns.has(bone[1])) {
                Population.Length length = population.length(bone[0], bone[1]);
                into.add(new Bone(unknowns, bone[0], bone[1], length.meanM(), length.sigmaM()));
            }
        }
        for (Landmark sole : SOLES) {
            if (unknowns.has(sole)) {
                into.add(Usually.one(Source.BODY, unknowns.landmark(sole) + 2, 0, SOLE_M));
            }
        }
        over(unknowns, LEAD_ANKLE, LEAD_HEEL, LEAD_TOE, ANKLE_SHARE, new double[2], ANKLE_ASIDE_M, into);
        over(unknowns, TRAIL_ANKLE, TRAIL_HEEL, TRAIL_TOE, ANKLE_SHARE, new double[2], ANKLE_ASIDE_M, into);
        over(unknowns, NECK, LEAD_SHOULDER, TRAIL_SHOULDER, 0.5, NECK_M, NECK_ASIDE_M, into);
        if (unknowns.has(CLUB_HEAD)) {
            for (int i = 0; i < 2; i++) {
                into.add(Usually.difference(
                        Source.BODY,
                        unknowns.landmark(CLUB_HEAD) + i,
                        unknowns.ball() + i,
                        HEAD_AT_BALL_M[i],
                        HEAD_AT_BALL_SIGMA_M));
            }
        }
    }

    /** A point stands near that share of the way from one to another, seen from above. */
    private static void over(
            Unknowns unknowns,
            Landmark point,
            Landmark from,
            Landmark to,
            double share,
            double[] asideM,
            double sigmaM,
            List<Knowledge> into) {
        if (!unknowns.has(point) || !unknowns.has(from) || !unknowns.has(to)) {
            return;
        }
        for (int i = 0; i < 2; i++) {
            int[] index = {unknowns.landmark(point) + i, unknowns.landmark(from) + i, unknowns.landmark(to) + i};
            into.add(new Usually(Source.BODY, asideM[i], sigmaM, index, new double[] {1, share - 1, -share}));
        }
    }
}
