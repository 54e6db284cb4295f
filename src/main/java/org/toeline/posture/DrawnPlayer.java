package org.toeline.posture;

import static org.toeline.mark.Landmark.*;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;

/**
 * One player at address out of all those a coach may meet, drawn joint by joint; (t, h, u) in metres from the ground
 * under the ball.
 *
 * <p>Sources. Stature, biacromial breadth and foot length: ANSUR II, men and women alike often (1.756 ± 0.069 and
 * 1.628 ± 0.064 m; breadth ÷ stature 0.237 and 0.224, ± 0.010; foot ÷ stature 0.154 and 0.151), and one player in six a
 * child or a small person of 1.15 to 1.65 m, who keeps the proportions. Other segments as shares of stature: from
 * memory of the usual tables of segment lengths (Drillis and Contini 1966). Shoulder tilt and stance: {@link ClubStance}
 * and the CaddieSet figures (12.5 ± 4.0° driver, 8.4 ± 2.7° 7-iron); forward bend by club: {@link ClubStance}; knees
 * bent by some 17° ± 7° (CaddieSet: 16.8 ± 7.5° driver, 23.9 ± 6.8° 7-iron, trail side). All other angles are common
 * practice.
 *
 * <p>A prior may fill gaps and must not overrule a mark, so it is as wide as bodies are, not as tables of one population
 * are. Trunk, breadths, arms, hips and what no two people have alike are drawn about 1.6 times as wide as those tables
 * say; shoulders turn by ± 12°, since some players stand 16 to 30° open; the breadth of the hips allows for coaches who
 * click the trochanters (0.19 of the stature), the joint centres within (0.125; 0.218 m in a man measured by four
 * cameras), or what is pictured between them. Tried on players drawn otherwise, see docs/accuracy.md.
 */
final class DrawnPlayer {

    /** What no two people have alike, and clothes hide, in each coordinate, metres. */
    private static final double OWN_M = 0.015;

    /** How much forward bend differs between players with one club, degrees. */
    private static final double BEND_SIGMA_DEG = 11;
    /** The same of the shoe's rearmost and foremost points, level. */
    private static final double SHOE_M = 0.008;
    /** How near the ground those are, metres. */
    private static final double SOLE_M = 0.005;

    private final SplittableRandom random;
    private final Map<Landmark, double[]> at = new EnumMap<>(Landmark.class);
    private final double stature;
    private final ClubStance stance;

    DrawnPlayer(Club club, SplittableRandom random) {
        this.random = random;
        this.stance = ClubStance.of(club);
        boolean man = random.nextBoolean();
        boolean small = random.nextInt(6) == 0;
        double adult = man ? normal(1.756, 0.069) : normal(1.628, 0.064);
        this.stature = small ? 1.15 + 0.50 * random.nextDouble() : adult;
        double size = stature / 1.70;
        feet(size);
        double toeLine = heading(TRAIL_TOE, LEAD_TOE);
        trunk(toeLine, stature * (man ? normal(0.235, 0.0176) : normal(0.2225, 0.0176)), club);
        leg(LEAD_HIP, LEAD_KNEE, LEAD_ANKLE, LEAD_HEEL, LEAD_TOE);
        leg(TRAIL_HIP, TRAIL_KNEE, TRAIL_ANKLE, TRAIL_HEEL, TRAIL_TOE);
        arms();
        club(club);
        at.forEach((landmark, p) -> ownWay(landmark, p));
    }

    double[] at(Landmark landmark) {
        double[] p = at.get(landmark);
        if (p == null) {
            throw new IllegalArgumentException(landmark + " is not drawn");
        }
        return p;
    }

    double statureM() {
        return stature;
    }

    private void feet(double size) {
        double toeDistance = stance.toeDistance() * (0.4 + 0.6 * size) + normal(0, 0.07);
        double foot = stature * normal(0.1525, 0.005) + normal(0.022, 0.01);
        double heels = Math.max(0.12, stance.heels() * size + normal(0, 0.065));
        double middle = stance.feet() + normal(0, 0.075);
        double open = degrees(0, 5);
        double heelsH = toeDistance + 0.96 * foot;
        put(LEAD_HEEL, middle + heels / 2 * Math.cos(open), heelsH + heels / 2 * Math.sin(open), 0);
        put(TRAIL_HEEL, middle - heels / 2 * Math.cos(open), heelsH - heels / 2 * Math.sin(open), 0);
        toe(LEAD_HEEL, LEAD_TOE, foot, degrees(17, 10));
        toe(TRAIL_HEEL, TRAIL_TOE, foot, -degrees(9, 10));
    }

    private void toe(Landmark heel, Landmark toe, double foot, double flare) {
        double[] p = at(heel);
        put(toe, p[0] + foot * Math.sin(flare), p[1] - foot * Math.cos(flare), 0);
    }

    private void trunk(double toeLine, double breadth, Club club) {
        double[] heels = middle(LEAD_HEEL, TRAIL_HEEL);
        double[] hips = {
            heels[0] + normal(0.01, 0.04),
            heels[1] + normal(0.02, 0.064),
            stature * normal(0.518, 0.024) - Math.abs(normal(0.015, 0.015))
        };
        across(
                LEAD_HIP,
                TRAIL_HIP,
                hips,
                stature * Math.max(0.08, normal(0.160, 0.033)),
                toeLine + degrees(2, 11.2),
                degrees(1, 4.8));
        double trunk = stature * normal(0.288, 0.016);
        double bend = Math.toRadians(normal(stance.bendDeg(), BEND_SIGMA_DEG));
        double side = degrees(4, 6.4);
        double[] shoulders = {
            hips[0] - trunk * Math.sin(side),
            hips[1] - trunk * Math.sin(bend),
            hips[2] + trunk * Math.cos(bend) * Math.cos(side)
        };
        double tilt = club == Club.DRIVER ? degrees(9, 7) : degrees(8, 6.5);
        across(LEAD_SHOULDER, TRAIL_SHOULDER, shoulders, breadth, toeLine + degrees(4, 12), tilt);
        put(
                NECK,
                shoulders[0] + normal(-0.005, 0.015),
                shoulders[1] + normal(0.015, 0.025),
                shoulders[2] + stature * normal(0.033, 0.009));
        double head = stature * normal(0.13, 0.01);
        double nod = bend + degrees(8, 9);
        put(
                HEAD_CENTRE,
                shoulders[0] + normal(-0.02, 0.03),
                shoulders[1] - head * Math.sin(nod),
                shoulders[2] + head * Math.cos(nod));
    }

    private void across(Landmark lead, Landmark trail, double[] middle, double length, double heading, double tilt) {
        double level = length / 2 * Math.cos(tilt);
        double dt = level * Math.cos(heading);
        double dh = level * Math.sin(heading);
        double du = length / 2 * Math.sin(tilt);
        put(lead, middle[0] + dt, middle[1] + dh, middle[2] + du);
        put(trail, middle[0] - dt, middle[1] - dh, middle[2] - du);
    }

    private void leg(Landmark hip, Landmark knee, Landmark ankle, Landmark heel, Landmark toe) {
        double[] a = at(heel);
        double[] b = at(toe);
        double share = normal(0.24, 0.05);
        put(ankle, a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), stature * normal(0.050, 0.007));
        double[] top = at(hip);
        double[] low = at(ankle);
        double where = normal(0.49, 0.02);
        put(
                knee,
                low[0] + where * (top[0] - low[0]) + normal(0, 0.025),
                low[1] + where * (top[1] - low[1]) - Math.abs(normal(0.065, 0.026)),
                low[2] + where * (top[2] - low[2]));
    }

    private void arms() {
        double[] shoulders = middle(LEAD_SHOULDER, TRAIL_SHOULDER);
        double handsT = shoulders[0] + normal(0.06, 0.08);
        double handsH = shoulders[1] - Math.abs(normal(0.17, 0.088));
        double arm = stature * normal(0.318, 0.0192);
        double[] lead = at(LEAD_SHOULDER);
        double aside = square(lead[0] - handsT) + square(lead[1] - handsH);
        double leadU = lead[2] - Math.sqrt(Math.max(0.04, square(arm) - aside));
        put(LEAD_WRIST, handsT + 0.02, handsH, leadU);
        put(TRAIL_WRIST, handsT - normal(0.03, 0.02), handsH + normal(-0.015, 0.02), leadU - normal(0.045, 0.02));
        elbow(LEAD_SHOULDER, LEAD_ELBOW, LEAD_WRIST, normal(0.01, 0.055));
        elbow(TRAIL_SHOULDER, TRAIL_ELBOW, TRAIL_WRIST, normal(0.05, 0.055));
    }

    private void elbow(Landmark shoulder, Landmark elbow, Landmark wrist, double outward) {
        double[] a = at(shoulder);
        double[] b = at(wrist);
        double where = normal(0.545, 0.035);
        put(
                elbow,
                a[0] + where * (b[0] - a[0]) + normal(0, 0.055),
                a[1] + where * (b[1] - a[1]) + outward,
                a[2] + where * (b[2] - a[2]));
    }

    private void club(Club club) {
        double radius = 0.0214;
        put(CLUB_HEAD, -radius - Math.abs(normal(0.030, 0.012)), normal(0.02, 0.015), Math.abs(normal(0.008, 0.005)));
        // the butt lies in the heel of the lead hand: a little below the wrist and nearer the body
        double[] hands = at(LEAD_WRIST);
        put(GRIP_END, hands[0] + normal(0, 0.02), hands[1] + normal(0.025, 0.02), hands[2] + normal(-0.035, 0.025));
        double crown = club == Club.DRIVER ? normal(0.059, 0.006) : normal(0.040, 0.010);
        put(CROWN, -radius - Math.abs(normal(0.030, 0.030)), normal(0.004, 0.010), Math.max(0.01, crown));
        put(GROUND, normal(0, 0.002), normal(0, 0.002), normal(0, 0.002));
    }

    private void ownWay(Landmark landmark, double[] p) {
        double level =
                switch (landmark) {
                    case CROWN, GROUND, CLUB_HEAD -> 0.003;
                    case LEAD_HEEL, TRAIL_HEEL, LEAD_TOE, TRAIL_TOE -> SHOE_M;
                    default -> OWN_M;
                };
        double up =
                switch (landmark) {
                    case CROWN, GROUND, CLUB_HEAD -> 0.001;
                    case LEAD_HEEL, TRAIL_HEEL, LEAD_TOE, TRAIL_TOE -> SOLE_M;
                    default -> OWN_M;
                };
        p[0] += normal(0, level);
        p[1] += normal(0, level);
        p[2] += normal(0, up);
    }

    private double heading(Landmark from, Landmark to) {
        return Math.atan2(at(to)[1] - at(from)[1], at(to)[0] - at(from)[0]);
    }

    private double[] middle(Landmark a, Landmark b) {
        double[] p = at(a);
        double[] q = at(b);
        return new double[] {(p[0] + q[0]) / 2, (p[1] + q[1]) / 2, (p[2] + q[2]) / 2};
    }

    private void put(Landmark landmark, double t, double h, double u) {
        at.put(landmark, new double[] {t, h, u});
    }

    private static double square(double v) {
        return v * v;
    }

    private double normal(double mean, double sigma) {
        return mean + sigma * random.nextGaussian();
    }

    private double degrees(double mean, double sigma) {
        return Math.toRadians(normal(mean, sigma));
    }
}
