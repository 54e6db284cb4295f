package org.toeline.scene;

import static org.toeline.mark.Landmark.*;

import org.toeline.mark.Landmark;

/** Works out where every joint is, at address and away from it, from an {@link Address} and a {@link Build}. */
final class Poser {

    private static final double HOLD_LEAD_M = 0.058;
    private static final double HOLD_TRAIL_M = 0.134;
    private static final double HOLD_TO_WRIST_M = 0.078;
    /** Share of the lead arm's full length between shoulder and wrist at address. */
    private static final double LEAD_ARM_REACH = 0.985;

    private static final double TRAIL_ARM_REACH = 0.992;

    private final Build build;
    private final ClubModel club;
    private final Feet feet;
    private final Vec midHips;
    private final Vec midShoulders;
    private final Vec hipLine;
    private final Vec shoulderLine;
    private final Vec trunkUp;
    private final Vec gripEnd;
    private final Vec shaft;

    Poser(Build build, Address address, ClubModel club) {
        this.build = build;
        this.club = club;
        this.feet = Feet.of(build, address);
        double heading = Math.toRadians(address.feetDeg() + address.shouldersToFeetDeg());
        double tilt = Math.toRadians(address.tiltDeg());
        shoulderLine = line(heading, tilt);
        hipLine = line(Math.toRadians(address.feetDeg() + 0.35 * address.shouldersToFeetDeg()), 0.2 * tilt);
        Vec spine = new Vec(
                        -Math.tan(Math.toRadians(address.sideBendDeg())),
                        -Math.tan(Math.toRadians(address.forwardBendDeg())),
                        1)
                .unit();
        trunkUp = spine;
        double shouldersT = -address.ballToLeadShoulderM() - shoulderLine.x() * build.biacromialM() / 2;
        midHips = hips(address, spine, shouldersT);
        midShoulders = midHips.plus(spine.times(build.trunkM()));
        shaft = shaftUp(Math.tan(Math.toRadians(address.shaftLeanDeg())));
        gripEnd = club.shaftFoot().plus(shaft.times(club.lengthM()));
    }

    private static Vec line(double headingRad, double elevationRad) {
        double c = Math.cos(elevationRad);
        return new Vec(c * Math.cos(headingRad), c * Math.sin(headingRad), Math.sin(elevationRad));
    }

    /** High enough that the trail knee is bent as asked. */
    private Vec hips(Address a, Vec spine, double shouldersT) {
        double t = shouldersT - spine.x() * build.trunkM();
        double h = (feet.leadToe().y() + feet.trailToe().y()) / 2 + a.hipsBehindToesM();
        double flex = Math.toRadians(a.kneeFlexDeg());
        double leg2 =
                square(build.thighM()) + square(build.shankM()) + 2 * build.thighM() * build.shankM() * Math.cos(flex);
        Vec half = hipLine.times(build.bitrochantericM() / 2);
        Vec ankle = feet.trailAnkle();
        double up = Math.sqrt(leg2 - square(t - half.x() - ankle.x()) - square(h - half.y() - ankle.y()));
        return new Vec(t, h, ankle.z() + up + half.z());
    }

    /** The slope of the shaft at which one arm hangs almost straight and the other bends. */
    private Vec shaftUp(double lean) {
        double flat = 2.2;
        double steep = 0.65;
        for (int i = 0; i < 60; i++) {
            double middle = (flat + steep) / 2;
            Vec direction = new Vec(lean, middle, 1).unit();
            Vec end = club.shaftFoot().plus(direction.times(club.lengthM()));
            boolean tooFar = reachM(1, end, direction, HOLD_LEAD_M) > LEAD_ARM_REACH * armM()
                    || reachM(-1, end, direction, HOLD_TRAIL_M) > TRAIL_ARM_REACH * armM();
            if (tooFar) {
                flat = middle;
            } else {
                steep = middle;
            }
        }
        return new Vec(lean, (flat + steep) / 2, 1).unit();
    }

    private double armM() {
        return build.upperArmM() + build.forearmM();
    }

    /** From a shoulder's joint to the wrist above the hold, at address. */
    private double reachM(int side, Vec end, Vec direction, double holdM) {
        Vec socket = trunk(Deviation.NONE).out(socketOffset(side));
        return socket.minus(end.minus(direction.times(holdM))).length() - HOLD_TO_WRIST_M;
    }

    private static double square(double x) {
        return x * x;
    }

    /** Shoulder joint against the middle of the shoulders, in the trunk's frame. */
    private Vec socketOffset(int side) {
        double k = build.scale();
        boolean lead = side > 0;
        // the lower arm reaches: its shoulder joint is drawn forwards, in and down
        double inwards = lead ? 0.030 : 0.055;
        return new Vec(
                side * (build.biacromialM() / 2 - inwards * k),
                lead ? 0.002 : -0.038 * k,
                (lead ? -0.045 : -0.063) * k);
    }

    private Frame trunk(Deviation d) {
        Vec up = trunkUp;
        Vec line = shoulderLine.turned(up, -d.turnRad());
        Vec origin = midShoulders.plus(new Vec(d.swayT() * 1.25, d.swayH() * 1.25, -d.dip()));
        return Frame.along(origin, line, up);
    }

    private Frame pelvis(Deviation d) {
        Vec line = hipLine.turned(Vec.UP, -0.3 * d.turnRad());
        return Frame.along(
                midHips.plus(new Vec(d.swayT(), d.swayH(), -d.dip())),
                line,
                Vec.UP.times(0.55).plus(trunkUp.times(0.45)));
    }

    /** The player and the club at a deviation from address. */
    Skeleton at(Deviation d) {
        Skeleton s = new Skeleton();
        Frame trunk = trunk(d);
        Frame pelvis = pelvis(d);
        s.bones.put(Bone.TRUNK, trunk);
        s.bones.put(Bone.PELVIS, pelvis);
        s.bones.put(Bone.GROUND, new Frame(Vec.ZERO, Vec.TARGET, Vec.PLAYER, Vec.UP));
        double halfShoulders = build.biacromialM() / 2;
        double halfHips = build.bitrochantericM() / 2;
        s.marks.put(LEAD_SHOULDER, trunk.out(halfShoulders, 0, 0));
        s.marks.put(TRAIL_SHOULDER, trunk.out(-halfShoulders, 0, 0));
        s.marks.put(LEAD_HIP, pelvis.out(halfHips, 0, 0));
        s.marks.put(TRAIL_HIP, pelvis.out(-halfHips, 0, 0));
        s.leadSocket = trunk.out(socketOffset(1));
        s.trailSocket = trunk.out(socketOffset(-1));
        head(s, trunk(new Deviation(d.swayT(), d.swayH(), d.dip(), 0, 0, 0)));
        s.marks.put(NECK, trunk.out(0, 0.055 * build.scale(), 0.028 * build.scale()));
        leg(s, 1);
        leg(s, -1);
        clubAndHands(s, d);
        return s;
    }

    private void head(Skeleton s, Frame trunk) {
        double k = build.scale();
        Vec centre = trunk.out(0, -0.062 * k, 0.205 * k);
        s.marks.put(HEAD_CENTRE, centre);
        Vec gaze = new Vec(0, -0.42, 0.42).minus(centre).unit();
        Vec side = trunk.x().times(0.5).plus(Vec.TARGET.times(0.5)).squareTo(gaze);
        s.bones.put(Bone.HEAD, new Frame(centre, side, gaze.times(-1), gaze.cross(side)));
    }

    private void leg(Skeleton s, int side) {
        boolean lead = side > 0;
        Vec heel = lead ? feet.leadHeel() : feet.trailHeel();
        Vec toe = lead ? feet.leadToe() : feet.trailToe();
        Vec ankle = lead ? feet.leadAnkle() : feet.trailAnkle();
        Vec hip = s.at(lead ? LEAD_HIP : TRAIL_HIP);
        Vec foot = toe.minus(heel).unit();
        Vec knee = Skeleton.bend(hip, ankle, build.thighM(), build.shankM(), foot.plus(new Vec(0, -0.6, 0)));
        put(s, lead ? LEAD_HEEL : TRAIL_HEEL, heel);
        put(s, lead ? LEAD_TOE : TRAIL_TOE, toe);
        put(s, lead ? LEAD_ANKLE : TRAIL_ANKLE, ankle);
        put(s, lead ? LEAD_KNEE : TRAIL_KNEE, knee);
        s.bones.put(lead ? Bone.LEAD_FOOT : Bone.TRAIL_FOOT, Frame.along(heel, foot, Vec.UP));
        s.bones.put(lead ? Bone.LEAD_THIGH : Bone.TRAIL_THIGH, Frame.along(hip, knee.minus(hip), foot));
        s.bones.put(lead ? Bone.LEAD_SHANK : Bone.TRAIL_SHANK, Frame.along(knee, ankle.minus(knee), foot));
    }

    private static void put(Skeleton s, Landmark landmark, Vec p) {
        s.marks.put(landmark, p);
    }

    private void clubAndHands(Skeleton s, Deviation d) {
        Vec pivot = gripEnd.minus(shaft.times((HOLD_LEAD_M + HOLD_TRAIL_M) / 2));
        Vec waggleAxis = shaft.cross(Vec.TARGET).unit();
        Vec head = club.shaftFoot().turnedAbout(pivot, waggleAxis, d.waggleRad());
        Vec end = gripEnd.turnedAbout(pivot, waggleAxis, d.waggleRad());
        Vec across = Vec.TARGET.turned(waggleAxis, d.waggleRad());
        head = swung(head, d);
        end = swung(end, d);
        Vec origin = swung(pivot, d);
        across = swung(pivot.plus(across), d).minus(origin);
        Vec up = end.minus(head).unit();
        put(s, CLUB_HEAD, head);
        put(s, GRIP_END, end);
        s.leadHold = end.minus(up.times(HOLD_LEAD_M));
        s.trailHold = end.minus(up.times(HOLD_TRAIL_M));
        s.bones.put(Bone.CLUB, Frame.along(end, up.times(-1), across));
        arm(s, 1, up);
        arm(s, -1, up);
    }

    private Vec swung(Vec p, Deviation d) {
        Vec lifted = p.turnedAbout(midShoulders, shoulderLine, -d.liftRad());
        return lifted.turnedAbout(midShoulders, trunkUp, -d.turnRad());
    }

    private void arm(Skeleton s, int side, Vec shaftUp) {
        boolean lead = side > 0;
        Vec socket = lead ? s.leadSocket : s.trailSocket;
        Vec hold = lead ? s.leadHold : s.trailHold;
        Vec wrist = hold.plus(socket.minus(hold).unit().times(HOLD_TO_WRIST_M));
        Frame trunk = s.frame(Bone.TRUNK);
        Vec pole = trunk.x()
                .times(0.6 * side)
                .plus(trunk.y().times(0.4))
                .plus(trunk.z().times(-0.5));
        Vec elbow = Skeleton.bend(socket, wrist, build.upperArmM(), build.forearmM(), pole);
        put(s, lead ? LEAD_WRIST : TRAIL_WRIST, wrist);
        put(s, lead ? LEAD_ELBOW : TRAIL_ELBOW, elbow);
        s.bones.put(
                lead ? Bone.LEAD_UPPER_ARM : Bone.TRAIL_UPPER_ARM, Frame.along(socket, elbow.minus(socket), trunk.y()));
        s.bones.put(lead ? Bone.LEAD_FOREARM : Bone.TRAIL_FOREARM, Frame.along(elbow, wrist.minus(elbow), trunk.y()));
        s.bones.put(lead ? Bone.LEAD_HAND : Bone.TRAIL_HAND, Frame.along(hold, shaftUp.times(-1), wrist.minus(hold)));
    }
}
