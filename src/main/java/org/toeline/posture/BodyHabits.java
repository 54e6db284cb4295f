package org.toeline.posture;

import static org.toeline.mark.Landmark.*;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.toeline.mark.Landmark;

/**
 * How people are usually built and stand at address: a table of loose relations between landmarks, each a mean and a
 * standard deviation in metres or radians. They decide only what the marks leave open.
 *
 * <p>Sources. Breadths and heights: ANSUR II (biacromial 416 ± 19 men, 365 ± 18 women; acromial height 1.44 ± 0.06 and
 * 1.34 ± 0.06; foot 0.271 and 0.246), joined over both sexes, lowered by the bend at address, and widened for children
 * and clothing. Where players stand to the ball: {@link ClubStance}. That shoulders hang over the toes, knees over the
 * feet, hands below the shoulders is geometry of a standing person who does not fall. All other spreads are common
 * practice, taken wide.
 */
final class BodyHabits {

    /** Where a landmark is, give or take, from the ball: the start of the fit and a tie for what nothing else ties. */
    private static final double LOOSE_LEVEL_M = 0.35;
    private static final double LOOSE_UP_M = 0.25;
    /** How near the ground the shoe's rearmost and foremost points are. */
    private static final double SOLE_M = 0.006;

    private static final int T = 0;
    private static final int H = 1;
    private static final int U = 2;

    private final Unknowns unknowns;
    private final ClubStance stance;
    private final List<Knowledge> into;

    private BodyHabits(Unknowns unknowns, ClubStance stance, List<Knowledge> into) {
        this.unknowns = unknowns;
        this.stance = stance;
        this.into = into;
    }

    static void know(Unknowns unknowns, ClubStance stance, List<Knowledge> into) {
        BodyHabits habits = new BodyHabits(unknowns, stance, into);
        habits.loosely();
        habits.feet();
        habits.shoulders();
        habits.hips();
        habits.legs();
        habits.arms();
        habits.headAndNeck();
        habits.club();
    }

    static void start(Unknowns unknowns, ClubStance stance, double[] x) {
        int ball = unknowns.ball();
        template(stance).forEach((landmark, p) -> {
            if (unknowns.has(landmark)) {
                int at = unknowns.landmark(landmark);
                x[at] = x[ball] + p[0];
                x[at + 1] = x[ball + 1] + p[1];
                x[at + 2] = p[2];
            }
        });
    }

    /** A usual address, (t, h, u) from the ground under the ball. */
    private static Map<Landmark, double[]> template(ClubStance s) {
        Map<Landmark, double[]> at = new EnumMap<>(Landmark.class);
        double w = s.heels() / 2;
        double toes = s.toeDistance();
        double heels = toes + 0.27;
        pair(at, LEAD_HEEL, TRAIL_HEEL, s.feet(), w, heels, 0);
        pair(at, LEAD_TOE, TRAIL_TOE, s.feet() + 0.02, w + 0.05, toes, 0);
        pair(at, LEAD_ANKLE, TRAIL_ANKLE, s.feet(), w, heels - 0.06, 0.09);
        pair(at, LEAD_KNEE, TRAIL_KNEE, s.feet(), w - 0.03, toes + 0.10, 0.48);
        pair(at, LEAD_HIP, TRAIL_HIP, s.feet() - 0.01, 0.16, heels + 0.02, 0.87);
        pair(at, LEAD_SHOULDER, TRAIL_SHOULDER, s.feet() - 0.03, 0.19, toes, 1.29);
        at.get(LEAD_SHOULDER)[U] += 0.027;
        at.get(TRAIL_SHOULDER)[U] -= 0.027;
        pair(at, LEAD_ELBOW, TRAIL_ELBOW, s.feet() - 0.01, 0.16, toes - 0.08, 1.00);
        pair(at, LEAD_WRIST, TRAIL_WRIST, s.feet() + 0.04, 0.02, toes - 0.18, 0.80);
        at.put(HEAD_CENTRE, new double[] {s.feet() - 0.04, toes - 0.14, 1.50});
        at.put(NECK, new double[] {s.feet() - 0.03, toes + 0.01, 1.36});
        at.put(CLUB_HEAD, new double[] {-0.06, 0.02, 0.01});
        at.put(GRIP_END, new double[] {s.feet() + 0.06, toes - 0.11, 0.86});
        at.put(CROWN, new double[] {-0.04, 0.02, s.teedSigma() > 0.01 ? 0.06 : 0.045});
        at.put(GROUND, new double[] {0, 0, 0});
        return at;
    }

    private static void pair(Map<Landmark, double[]> at, Landmark lead, Landmark trail, double t, double half, double h,
                             double u) {
        at.put(lead, new double[] {t + half, h, u});
        at.put(trail, new double[] {t - half, h, u});
    }

    private void loosely() {
        template(stance).forEach((landmark, p) -> {
            if (!unknowns.has(landmark)) {
                return;
            }
            int at = unknowns.landmark(landmark);
            double level = landmark == CROWN || landmark == CLUB_HEAD ? 0.04 : landmark == GROUND ? 0.004
                    : LOOSE_LEVEL_M;
            into.add(Usually.difference(Source.BODY, at + T, unknowns.ball(), p[0], level));
            into.add(Usually.difference(Source.BODY, at + H, unknowns.ball() + 1, p[1], level));
            into.add(Usually.one(Source.BODY, at + U, p[2], up(landmark)));
        });
    }

    private static double up(Landmark landmark) {
        return switch (landmark) {
            case LEAD_HEEL, TRAIL_HEEL, LEAD_TOE, TRAIL_TOE -> SOLE_M;
            case CLUB_HEAD -> 0.015;
            case CROWN -> 0.012;
            case GROUND -> 0.002;
            default -> LOOSE_UP_M;
        };
    }

    private void feet() {
        toBall(LEAD_HEEL, TRAIL_HEEL, T, stance.feet(), 0.10);
        toBall(LEAD_TOE, TRAIL_TOE, H, stance.toeDistance(), 0.12);
        apart(TRAIL_HEEL, LEAD_HEEL, T, stance.heels(), 0.10);
        apart(TRAIL_TOE, LEAD_TOE, H, 0, 0.06);
        span(LEAD_HEEL, LEAD_TOE, 0.285, 0.03);
        span(TRAIL_HEEL, TRAIL_TOE, 0.285, 0.03);
        apart(LEAD_HEEL, LEAD_TOE, T, 0.07, 0.06);
        apart(TRAIL_HEEL, TRAIL_TOE, T, -0.04, 0.06);
        if (!unknowns.has(LEAD_TOE) || !unknowns.has(TRAIL_TOE)) {
            apart(TRAIL_HEEL, LEAD_HEEL, H, 0, 0.06);
        }
    }

    private void shoulders() {
        middles(LEAD_SHOULDER, TRAIL_SHOULDER, LEAD_HEEL, TRAIL_HEEL, T, -0.03, 0.07);
        middles(LEAD_SHOULDER, TRAIL_SHOULDER, LEAD_TOE, TRAIL_TOE, H, 0, 0.08);
        height(LEAD_SHOULDER, TRAIL_SHOULDER, 1.29, 0.13);
        span(TRAIL_SHOULDER, LEAD_SHOULDER, 0.388, 0.042);
        apart(TRAIL_SHOULDER, LEAD_SHOULDER, U, 0.05, 0.05);
        turn(TRAIL_TOE, LEAD_TOE, TRAIL_SHOULDER, LEAD_SHOULDER, 0, 11);
    }

    private void hips() {
        middles(LEAD_HIP, TRAIL_HIP, LEAD_HEEL, TRAIL_HEEL, T, 0, 0.06);
        middles(LEAD_HIP, TRAIL_HIP, LEAD_HEEL, TRAIL_HEEL, H, 0.02, 0.08);
        height(LEAD_HIP, TRAIL_HIP, 0.87, 0.10);
        span(TRAIL_HIP, LEAD_HIP, 0.33, 0.04);
        apart(TRAIL_HIP, LEAD_HIP, U, 0.01, 0.03);
        turn(TRAIL_TOE, LEAD_TOE, TRAIL_HIP, LEAD_HIP, 0, 11);
        middles(LEAD_SHOULDER, TRAIL_SHOULDER, LEAD_HIP, TRAIL_HIP, U, 0.42, 0.06);
    }

    private void legs() {
        leg(LEAD_HIP, LEAD_KNEE, LEAD_ANKLE, LEAD_HEEL, LEAD_TOE, -1);
        leg(TRAIL_HIP, TRAIL_KNEE, TRAIL_ANKLE, TRAIL_HEEL, TRAIL_TOE, 1);
    }

    private void leg(Landmark hip, Landmark knee, Landmark ankle, Landmark heel, Landmark toe, int inward) {
        apart(heel, knee, T, 0.03 * inward, 0.06);
        apart(toe, knee, H, 0.10, 0.07);
        apart(heel, ankle, T, 0, 0.03);
        apart(heel, ankle, H, -0.06, 0.025);
        if (unknowns.has(ankle)) {
            into.add(Usually.one(Source.BODY, unknowns.landmark(ankle) + U, 0.09, 0.02));
        }
        span(ankle, knee, 0.40, 0.04);
        span(knee, hip, 0.41, 0.045);
    }

    private void arms() {
        span(LEAD_SHOULDER, LEAD_ELBOW, 0.32, 0.03);
        span(TRAIL_SHOULDER, TRAIL_ELBOW, 0.32, 0.03);
        span(LEAD_ELBOW, LEAD_WRIST, 0.26, 0.025);
        span(TRAIL_ELBOW, TRAIL_WRIST, 0.26, 0.025);
        if (!unknowns.has(LEAD_ELBOW)) {
            span(LEAD_SHOULDER, LEAD_WRIST, 0.56, 0.05);
        }
        apart(LEAD_SHOULDER, LEAD_ELBOW, H, -0.08, 0.08);
        apart(TRAIL_SHOULDER, TRAIL_ELBOW, H, -0.08, 0.08);
        middles(LEAD_WRIST, TRAIL_WRIST, LEAD_TOE, TRAIL_TOE, H, -0.18, 0.09);
        span(TRAIL_WRIST, LEAD_WRIST, 0.09, 0.03);
        apart(TRAIL_WRIST, LEAD_WRIST, U, 0.04, 0.03);
        apart(TRAIL_WRIST, LEAD_WRIST, H, 0, 0.05);
    }

    private void headAndNeck() {
        middles(HEAD_CENTRE, HEAD_CENTRE, LEAD_SHOULDER, TRAIL_SHOULDER, T, -0.02, 0.05);
        middles(HEAD_CENTRE, HEAD_CENTRE, LEAD_SHOULDER, TRAIL_SHOULDER, H, -0.14, 0.06);
        middles(HEAD_CENTRE, HEAD_CENTRE, LEAD_SHOULDER, TRAIL_SHOULDER, U, 0.20, 0.05);
        middles(NECK, NECK, LEAD_SHOULDER, TRAIL_SHOULDER, T, -0.01, 0.03);
        middles(NECK, NECK, LEAD_SHOULDER, TRAIL_SHOULDER, H, 0.01, 0.05);
        middles(NECK, NECK, LEAD_SHOULDER, TRAIL_SHOULDER, U, 0.07, 0.04);
    }

    private void club() {
        span(CLUB_HEAD, GRIP_END, stance.clubLength(), 0.04);
        span(LEAD_WRIST, GRIP_END, 0.11, 0.04);
        middles(GRIP_END, GRIP_END, LEAD_WRIST, TRAIL_WRIST, H, 0.06, 0.06);
    }

    private void toBall(Landmark lead, Landmark trail, int axis, double mean, double sigma) {
        if (unknowns.has(lead) && unknowns.has(trail)) {
            into.add(new Usually(Source.BODY, mean, sigma, new int[] {unknowns.landmark(lead) + axis,
                    unknowns.landmark(trail) + axis, unknowns.ball() + axis}, new double[] {0.5, 0.5, -1}));
        }
    }

    private void height(Landmark lead, Landmark trail, double mean, double sigma) {
        if (unknowns.has(lead) && unknowns.has(trail)) {
            into.add(new Usually(Source.BODY, mean, sigma, new int[] {unknowns.landmark(lead) + U,
                    unknowns.landmark(trail) + U}, new double[] {0.5, 0.5}));
        }
    }

    /** The middle of one pair against the middle of another. */
    private void middles(Landmark lead, Landmark trail, Landmark fromLead, Landmark fromTrail, int axis, double mean,
                         double sigma) {
        if (unknowns.has(lead) && unknowns.has(trail) && unknowns.has(fromLead) && unknowns.has(fromTrail)) {
            into.add(new Usually(Source.BODY, mean, sigma, new int[] {unknowns.landmark(lead) + axis,
                    unknowns.landmark(trail) + axis, unknowns.landmark(fromLead) + axis,
                    unknowns.landmark(fromTrail) + axis}, new double[] {0.5, 0.5, -0.5, -0.5}));
        }
    }

    private void apart(Landmark from, Landmark to, int axis, double mean, double sigma) {
        if (unknowns.has(from) && unknowns.has(to)) {
            into.add(Usually.difference(Source.BODY, unknowns.landmark(to) + axis, unknowns.landmark(from) + axis,
                    mean, sigma));
        }
    }

    private void span(Landmark from, Landmark to, double mean, double sigma) {
        if (unknowns.has(from) && unknowns.has(to)) {
            into.add(new Span(unknowns.landmark(from), unknowns.landmark(to), mean, sigma));
        }
    }

    private void turn(Landmark fromA, Landmark toA, Landmark fromB, Landmark toB, double meanDeg, double sigmaDeg) {
        if (unknowns.has(fromA) && unknowns.has(toA) && unknowns.has(fromB) && unknowns.has(toB)) {
            into.add(new Turn(unknowns.landmark(fromA), unknowns.landmark(toA), unknowns.landmark(fromB),
                    unknowns.landmark(toB), Math.toRadians(meanDeg), Math.toRadians(sigmaDeg)));
        }
    }
}
