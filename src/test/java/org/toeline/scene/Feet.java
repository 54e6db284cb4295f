package org.toeline.scene;

/** Where the shoes stand. */
record Feet(Vec leadHeel, Vec leadToe, Vec leadAnkle, Vec trailHeel, Vec trailToe, Vec trailAnkle) {

    private static final double ANKLE_ALONG = 0.20;
    private static final double ANKLE_UP_M = 0.098;

    static Feet of(Build build, Address a) {
        double shoe = build.shoeM();
        Vec leadFoot = foot(Math.toRadians(a.leadFlareDeg())).times(shoe);
        Vec trailFoot = foot(-Math.toRadians(a.trailFlareDeg())).times(shoe);
        double heading = Math.toRadians(a.feetDeg());
        Vec line = new Vec(Math.cos(heading), Math.sin(heading), 0);
        double heelT = a.footOutsideM() - a.ballToLeadShoulderM();
        double toeT = heelT + leadFoot.x();
        Vec leadToe = new Vec(toeT, a.ballDistanceM() + Math.tan(heading) * toeT, 0);
        Vec leadHeel = leadToe.minus(leadFoot);
        // the trail toe lies q back along the toe line, such that the heels are the stance apart
        Vec gap = trailFoot.minus(leadFoot);
        double b = gap.dot(line);
        double q = -b + Math.sqrt(b * b - gap.dot(gap) + a.stanceM() * a.stanceM());
        Vec trailToe = leadToe.minus(line.times(q));
        Vec trailHeel = trailToe.minus(trailFoot);
        Vec up = Vec.UP.times(ANKLE_UP_M * build.scale());
        return new Feet(
                leadHeel,
                leadToe,
                leadHeel.plus(leadFoot.times(ANKLE_ALONG)).plus(up),
                trailHeel,
                trailToe,
                trailHeel.plus(trailFoot.times(ANKLE_ALONG)).plus(up));
    }

    /** Heel to toe: to the ball, turned to the target by the angle. */
    private static Vec foot(double outRad) {
        return new Vec(Math.sin(outRad), -Math.cos(outRad), 0);
    }
}
