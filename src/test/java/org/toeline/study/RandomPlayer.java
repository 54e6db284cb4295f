package org.toeline.study;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;

/**
 * A person at address, drawn joint by joint: stature and breadths from ANSUR II (both sexes alike often), one in five of
 * any size between a child's and a giant's, stance and ball by club. Three in twenty stand 16 to 30° open, one in five
 * bends by anything between 8 and 45°, hips are what the coach takes them for (trochanters, what is pictured, or the
 * joints within), and half of the players have arms that a body can have: both of one length, the elbows where two
 * bones meet. The arms of the others are drawn as loosely as joints of a picture's model come. It shares no table with
 * the estimator's own idea of how people stand.
 */
final class RandomPlayer {

    /** What no two people have alike, metres. */
    private static final double OWN_M = 0.008;
    /** The same of a shoe's ends, level and in height. */
    private static final double SHOE_M = 0.004;

    private static final double SOLE_M = 0.003;
    /** The joint centres of the shoulders, as a share of stature: 0.342 m in a man measured by four cameras. */
    private static final double JOINTS_APART = 0.195;
    /** Trochanters, what is pictured, joint centres: shares of stature. */
    private static final double[] HIPS_APART = {0.190, 0.155, 0.125};

    private final SplittableRandom random;
    private final Map<Landmark, WorldPoint> at = new EnumMap<>(Landmark.class);
    private final double stature;
    private final double breadth;
    private final Club club;
    private final Build build;

    /**
     * What is known of the player beforehand; the rest is drawn.
     *
     * @param bendDeg     forward bend
     * @param tiltDeg     lead shoulder higher
     * @param stanceRatio heels apart over the joint centres of the shoulders apart
     */
    record Build(OptionalDouble bendDeg, OptionalDouble tiltDeg, OptionalDouble stanceRatio) {
        static final Build ANY = new Build(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    RandomPlayer(SplittableRandom random, Club club, Build build) {
        this.build = build;
        this.random = random;
        this.club = club;
        boolean man = random.nextBoolean();
        this.stature = random.nextInt(5) == 0
                ? random.nextDouble(1.15, 2.05)
                : man ? normal(1.7562, 0.0686) : normal(1.6285, 0.0642);
        this.breadth = stature * (man ? normal(0.23682, 0.00984) : normal(0.22445, 0.0096));
        draw();
        at.replaceAll((landmark, p) -> switch (landmark) {
            case LEAD_HEEL, TRAIL_HEEL, LEAD_TOE, TRAIL_TOE ->
                p.plus(normal(0, SHOE_M), normal(0, SHOE_M), normal(0, SOLE_M));
            case CLUB_HEAD -> p;
            default -> p.plus(normal(0, OWN_M), normal(0, OWN_M), normal(0, OWN_M));
        });
    }

    /** Against a usual stature: hands hang as far from a child as a child's arms reach. */
    private double size() {
        return stature / 1.70;
    }

    RandomScene.Player player() {
        return new RandomScene.Player(at, stature);
    }

    /** Ball to toe line (small people have shorter clubs), middle of the heels from the ball, distance of the heels; metres. */
    private double[] stance() {
        double far = 0.5 + 0.3 * stature;
        return switch (club) {
            case DRIVER -> new double[] {normal(0.86 * far, 0.08), normal(-0.20, 0.08), breadth + normal(0.09, 0.065)};
            case MID_IRON -> new double[] {normal(0.60 * far, 0.07), normal(-0.06, 0.075), breadth + normal(0, 0.065)};
            default -> new double[] {normal(0.52 * far, 0.07), normal(-0.03, 0.075), breadth + normal(-0.04, 0.06)};
        };
    }

    private void draw() {
        double[] stance = stance();
        double open = degrees(0, 5);
        double foot = 0.152 * stature + normal(0.02, 0.008);
        double half = build.stanceRatio().orElse(stance[2] / (JOINTS_APART * stature)) * JOINTS_APART * stature / 2;
        double heelsH = stance[0] + foot * 0.95;
        put(Landmark.LEAD_HEEL, stance[1] + half * Math.cos(open), heelsH + half * Math.sin(open), 0);
        put(Landmark.TRAIL_HEEL, stance[1] - half * Math.cos(open), heelsH - half * Math.sin(open), 0);
        foot(Landmark.LEAD_HEEL, Landmark.LEAD_TOE, foot, degrees(18, 10));
        foot(Landmark.TRAIL_HEEL, Landmark.TRAIL_TOE, foot, -degrees(8, 10));
        double hipU = 0.52 * stature - Math.abs(normal(0.02, 0.015));
        double hipsH = heelsH + normal(0.02, 0.04);
        double hipsT = stance[1] + normal(0.01, 0.04);
        double toeLine = Math.atan2(
                at(Landmark.LEAD_TOE).h() - at(Landmark.TRAIL_TOE).h(),
                at(Landmark.LEAD_TOE).t() - at(Landmark.TRAIL_TOE).t());
        line(
                Landmark.LEAD_HIP,
                Landmark.TRAIL_HIP,
                hipsT,
                hipsH,
                hipU,
                HIPS_APART[random.nextInt(HIPS_APART.length)] * stature,
                toeLine + degrees(2, 7),
                degrees(1, 3));
        double trunk = normal(0.288, 0.008) * stature;
        double lean = bend();
        double side = degrees(4, 4);
        double shouldersU = hipU + trunk * Math.cos(lean) * Math.cos(side);
        double turn = random.nextInt(20) < 3 ? Math.toRadians(random.nextDouble(16, 30)) : toeLine + degrees(2, 8);
        line(
                Landmark.LEAD_SHOULDER,
                Landmark.TRAIL_SHOULDER,
                hipsT - trunk * Math.sin(side),
                hipsH - trunk * Math.sin(lean),
                shouldersU,
                breadth,
                turn,
                Math.toRadians(build.tiltDeg().orElse(normal(8, 5))));
        legs();
        if (random.nextBoolean()) {
            arms();
        } else {
            looseArms();
        }
        head(lean);
        club();
    }

    /** Forward bend: some 16° with a driver, 25° with irons (CaddieSet, trunk in pictures), and now and then anything. */
    private double bend() {
        if (build.bendDeg().isPresent()) {
            return Math.toRadians(build.bendDeg().getAsDouble());
        }
        if (random.nextInt(5) == 0) {
            return Math.toRadians(random.nextDouble(8, 45));
        }
        double usual = club == Club.DRIVER ? 17 : club == Club.MID_IRON ? 27 : 31;
        return Math.toRadians(Math.min(45, Math.max(8, normal(usual, 6))));
    }

    private void foot(Landmark heel, Landmark toe, double length, double flare) {
        WorldPoint p = at(heel);
        put(toe, p.t() + length * Math.sin(flare), p.h() - length * Math.cos(flare), 0);
    }

    private void line(
            Landmark lead, Landmark trail, double t, double h, double u, double length, double heading, double tilt) {
        double dt = length / 2 * Math.cos(tilt) * Math.cos(heading);
        double dh = length / 2 * Math.cos(tilt) * Math.sin(heading);
        double du = length / 2 * Math.sin(tilt);
        put(lead, t + dt, h + dh, u + du);
        put(trail, t - dt, h - dh, u - du);
    }

    private void legs() {
        leg(Landmark.LEAD_HIP, Landmark.LEAD_KNEE, Landmark.LEAD_ANKLE, Landmark.LEAD_HEEL, Landmark.LEAD_TOE);
        leg(Landmark.TRAIL_HIP, Landmark.TRAIL_KNEE, Landmark.TRAIL_ANKLE, Landmark.TRAIL_HEEL, Landmark.TRAIL_TOE);
    }

    private void leg(Landmark hip, Landmark knee, Landmark ankle, Landmark heel, Landmark toe) {
        WorldPoint a = at(heel);
        WorldPoint b = at(toe);
        double share = normal(0.24, 0.05);
        put(ankle, a.t() + share * (b.t() - a.t()), a.h() + share * (b.h() - a.h()), 0.05 * stature);
        WorldPoint top = at(hip);
        WorldPoint low = at(ankle);
        double bend = Math.abs(normal(0.065, 0.03));
        put(
                knee,
                (top.t() + low.t()) / 2 + normal(0, 0.025),
                (top.h() + low.h()) / 2 - bend,
                low.u() + 0.48 * (top.u() - low.u()));
    }

    /** Both hands on the grip, lifted until both arms reach, and elbows where upper arm and forearm meet. */
    private void arms() {
        WorldPoint lead = at(Landmark.LEAD_SHOULDER);
        WorldPoint trail = at(Landmark.TRAIL_SHOULDER);
        double upper = 0.172 * stature * (1 + normal(0, 0.04));
        double fore = 0.153 * stature * (1 + normal(0, 0.04));
        double t = (lead.t() + trail.t()) / 2 + size() * normal(0.05, 0.05);
        double h = (lead.h() + trail.h()) / 2 - size() * Math.abs(normal(0.17, 0.06));
        WorldPoint apart = new WorldPoint(-normal(0.06, 0.015), normal(-0.015, 0.015), -normal(0.05, 0.015));
        double reach = upper + fore;
        double low = lead.u() - 0.99 * reach;
        WorldPoint hands = new WorldPoint(t, h, low);
        double straight = 1 - Math.abs(normal(0, 0.02));
        while (distance(lead, hands) > straight * reach
                || distance(trail, hands.plus(apart.t(), apart.h(), apart.u())) > 0.995 * reach) {
            hands = hands.plus(0, 0.001, 0.004);
        }
        put(Landmark.LEAD_WRIST, hands.t(), hands.h(), hands.u());
        put(Landmark.TRAIL_WRIST, hands.t() + apart.t(), hands.h() + apart.h(), hands.u() + apart.u());
        bent(Landmark.LEAD_SHOULDER, Landmark.LEAD_ELBOW, Landmark.LEAD_WRIST, upper, fore, random.nextDouble(-40, 80));
        bent(
                Landmark.TRAIL_SHOULDER,
                Landmark.TRAIL_ELBOW,
                Landmark.TRAIL_WRIST,
                upper,
                fore,
                random.nextDouble(-80, 60));
    }

    /** The elbow of two bones, to the body's side, turned about the line from shoulder to wrist by so many degrees. */
    private void bent(Landmark shoulder, Landmark elbow, Landmark wrist, double upper, double fore, double turnDeg) {
        WorldPoint a = at(shoulder);
        WorldPoint b = at(wrist);
        double chord = distance(a, b);
        double along = (upper * upper - fore * fore + chord * chord) / (2 * chord);
        double out = Math.sqrt(Math.max(0, upper * upper - along * along));
        double[] w = {(b.t() - a.t()) / chord, (b.h() - a.h()) / chord, (b.u() - a.u()) / chord};
        double dot = w[1];
        double[] back = {-dot * w[0], 1 - dot * w[1], -dot * w[2]};
        double size = Math.sqrt(square(back[0]) + square(back[1]) + square(back[2]));
        double[] aside = {
            (w[1] * back[2] - w[2] * back[1]) / size,
            (w[2] * back[0] - w[0] * back[2]) / size,
            (w[0] * back[1] - w[1] * back[0]) / size
        };
        double c = out * Math.cos(Math.toRadians(turnDeg)) / size;
        double s = out * Math.sin(Math.toRadians(turnDeg));
        put(
                elbow,
                a.t() + along * w[0] + c * back[0] + s * aside[0],
                a.h() + along * w[1] + c * back[1] + s * aside[1],
                a.u() + along * w[2] + c * back[2] + s * aside[2]);
    }

    private static double distance(WorldPoint a, WorldPoint b) {
        return Math.sqrt(square(a.t() - b.t()) + square(a.h() - b.h()) + square(a.u() - b.u()));
    }

    /** As a picture's model of joints may have them: the trail arm as long as it comes. */
    private void looseArms() {
        WorldPoint lead = at(Landmark.LEAD_SHOULDER);
        WorldPoint trail = at(Landmark.TRAIL_SHOULDER);
        double arm = 0.325 * stature;
        double handsT = (lead.t() + trail.t()) / 2 + size() * normal(0.06, 0.05);
        double handsH = (lead.h() + trail.h()) / 2 - size() * Math.abs(normal(0.17, 0.055));
        double leadU = lead.u()
                - Math.sqrt(
                        Math.max(square(0.15), square(arm) - square(lead.t() - handsT) - square(lead.h() - handsH)));
        double apart = normal(0.09, 0.012);
        double down = normal(0.045, 0.02);
        put(Landmark.LEAD_WRIST, handsT + 0.02, handsH, leadU);
        put(
                Landmark.TRAIL_WRIST,
                handsT + 0.02 - Math.sqrt(Math.max(0.0004, square(apart) - square(down))) * 0.7,
                handsH - 0.02,
                leadU - down);
        elbow(Landmark.LEAD_SHOULDER, Landmark.LEAD_ELBOW, Landmark.LEAD_WRIST, normal(0.01, 0.01));
        elbow(Landmark.TRAIL_SHOULDER, Landmark.TRAIL_ELBOW, Landmark.TRAIL_WRIST, normal(0.05, 0.02));
    }

    private void elbow(Landmark shoulder, Landmark elbow, Landmark wrist, double outH) {
        WorldPoint a = at(shoulder);
        WorldPoint b = at(wrist);
        put(
                elbow,
                a.t() + 0.55 * (b.t() - a.t()),
                a.h() + 0.55 * (b.h() - a.h()) + outH,
                a.u() + 0.55 * (b.u() - a.u()));
    }

    private void head(double lean) {
        WorldPoint lead = at(Landmark.LEAD_SHOULDER);
        WorldPoint trail = at(Landmark.TRAIL_SHOULDER);
        double t = (lead.t() + trail.t()) / 2;
        double h = (lead.h() + trail.h()) / 2;
        double u = (lead.u() + trail.u()) / 2;
        put(Landmark.NECK, t + normal(0, 0.01), h + normal(0.02, 0.02), u + normal(0.05, 0.015));
        double up = 0.135 * stature;
        double nod = lean + degrees(8, 9);
        put(Landmark.HEAD_CENTRE, t + normal(-0.02, 0.025), h - up * Math.sin(nod), u + up * Math.cos(nod));
    }

    private void club() {
        WorldPoint hands = at(Landmark.LEAD_WRIST);
        put(Landmark.CLUB_HEAD, normal(-0.05, 0.01), normal(0.02, 0.01), normal(0.008, 0.004));
        put(
                Landmark.GRIP_END,
                hands.t() + normal(0, 0.015),
                hands.h() + normal(0.025, 0.015),
                hands.u() + normal(-0.035, 0.02));
    }

    private WorldPoint at(Landmark landmark) {
        WorldPoint p = at.get(landmark);
        if (p == null) {
            throw new IllegalStateException(landmark + " is drawn later");
        }
        return p;
    }

    private void put(Landmark landmark, double t, double h, double u) {
        at.put(landmark, new WorldPoint(t, h, u));
    }

    private double normal(double mean, double sigma) {
        return mean + sigma * random.nextGaussian();
    }

    private double degrees(double mean, double sigma) {
        return Math.toRadians(normal(mean, sigma));
    }

    private static double square(double v) {
        return v * v;
    }
}
