package org.toeline.scene;

import static org.toeline.mark.Landmark.*;

import java.util.LinkedHashMap;
import java.util.Map;
import org.toeline.camera.Camera;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/**
 * What a perfect measurement of a scenario would find. The readings are worked out here from the landmarks with plain
 * school formulas, on purpose without the program's own, so that they check those.
 */
public final class Truth {

    private final Scenario scenario;
    private final Map<Landmark, WorldPoint> body;

    private Truth(Scenario scenario, Map<Landmark, WorldPoint> body) {
        this.scenario = scenario;
        this.body = body;
    }

    /** The truth at address, without sway. */
    public static Truth of(Scenario scenario) {
        return new Truth(scenario, scenario.landmarks());
    }

    /** The truth at a moment of the clips. */
    public static Truth at(Scenario scenario, double timeS) {
        return new Truth(scenario, scenario.landmarks(timeS));
    }

    public Map<Landmark, WorldPoint> landmarks() {
        return Map.copyOf(body);
    }

    /** A reading's value and the unit it is written in. */
    public record Value(double value, String unit) {}

    /** The pixel of a world point in the picture as shown: not mirrored, whatever the handedness. */
    public static ImagePoint pixel(Scenario scenario, View view, WorldPoint point) {
        ImagePoint p = scenario.camera(view)
                .project(point)
                .orElseThrow(() -> new IllegalArgumentException(point + " lies behind the " + view.id() + " camera"));
        return scenario.handedness() == Handedness.LEFT ? p.mirrored(Scenario.WIDTH) : p;
    }

    /** The ball's outline in a picture. */
    public record Outline(ImagePoint centre, double diameterPx) {}

    /** Middle and mean diameter of the ball's outline in the picture as shown. */
    public static Outline ball(Scenario scenario, View view) {
        Camera camera = scenario.camera(view);
        Vec eye = Vec.of(camera.pose().position());
        Vec centre = Vec.of(scenario.ball());
        double r = ClubModel.BALL_M / 2;
        Vec to = eye.minus(centre);
        double away = to.length();
        Vec axis = to.unit();
        Vec a = Vec.UP.squareTo(axis);
        Vec b = axis.cross(a);
        Vec middle = centre.plus(axis.times(r * r / away));
        double ring = r * Math.sqrt(1 - r * r / (away * away));
        int n = 360;
        double x = 0;
        double y = 0;
        double width = 0;
        for (int i = 0; i < n; i++) {
            double turn = 2 * Math.PI * i / n;
            Vec edge = a.times(ring * Math.cos(turn)).plus(b.times(ring * Math.sin(turn)));
            ImagePoint p = pixel(scenario, view, middle.plus(edge).world());
            x += p.xPx() / n;
            y += p.yPx() / n;
            width += p.distancePx(pixel(scenario, view, middle.minus(edge).world())) / n;
        }
        return new Outline(new ImagePoint(x, y), width);
    }

    /** Every reading, by its id in documents. */
    public Map<String, Value> readings() {
        Map<String, Value> all = new LinkedHashMap<>();
        ball(all);
        feet(all);
        upperBody(all);
        return all;
    }

    private void ball(Map<String, Value> all) {
        double top = scenario.ball().u() + ClubModel.BALL_M / 2;
        WorldPoint leadHeel = at(LEAD_HEEL);
        WorldPoint trailHeel = at(TRAIL_HEEL);
        all.put("ball-above-crown", new Value(100 * (top - at(CROWN).u()) / ClubModel.BALL_M, "percent"));
        all.put("tee-height", new Value(1000 * (scenario.ball().u() - ClubModel.BALL_M / 2), "mm"));
        all.put("ball-to-lead-shoulder", centimetres(-at(LEAD_SHOULDER).t()));
        all.put("ball-in-stance", new Value(-100 * trailHeel.t() / (leadHeel.t() - trailHeel.t()), "percent"));
        all.put("ball-to-lead-heel", centimetres(-leadHeel.t()));
    }

    private void feet(Map<String, Value> all) {
        WorldPoint leadHeel = at(LEAD_HEEL);
        WorldPoint trailHeel = at(TRAIL_HEEL);
        double stance = Math.hypot(leadHeel.t() - trailHeel.t(), leadHeel.h() - trailHeel.h());
        all.put(
                "lead-foot-outside-shoulder",
                centimetres(leadHeel.t() - at(LEAD_SHOULDER).t()));
        all.put("stance-width", centimetres(stance));
        all.put(
                "stance-to-shoulder-width",
                new Value(stance / at(LEAD_SHOULDER).distance(at(TRAIL_SHOULDER)), "ratio"));
        double feet = heading(TRAIL_TOE, LEAD_TOE);
        double shoulders = heading(TRAIL_SHOULDER, LEAD_SHOULDER);
        all.put("feet-to-target", degrees(feet));
        all.put("shoulders-to-target", degrees(shoulders));
        all.put("shoulders-to-feet", degrees(shoulders - feet));
    }

    private void upperBody(Map<String, Value> all) {
        WorldPoint shoulders = at(LEAD_SHOULDER).minus(at(TRAIL_SHOULDER));
        all.put("shoulder-tilt", degrees(Math.asin(shoulders.u() / shoulders.distance(WorldPoint.ORIGIN))));
        all.put(
                "trail-hand-lower",
                centimetres(at(LEAD_WRIST).u() - at(TRAIL_WRIST).u()));
        WorldPoint spine = middle(LEAD_SHOULDER, TRAIL_SHOULDER).minus(middle(LEAD_HIP, TRAIL_HIP));
        all.put("side-bend", degrees(-Math.atan(spine.t() / spine.u())));
        all.put("head-to-ball", centimetres(at(HEAD_CENTRE).t()));
        WorldPoint shaft = at(GRIP_END).minus(at(CLUB_HEAD));
        all.put("shaft-lean", degrees(Math.atan(shaft.t() / shaft.u())));
        all.put("forward-bend", degrees(-Math.atan(spine.h() / spine.u())));
        all.put("knee-flex", degrees(kneeFlex()));
        WorldPoint toes = at(LEAD_TOE).minus(at(TRAIL_TOE));
        all.put("ball-distance", centimetres(at(TRAIL_TOE).h() - at(TRAIL_TOE).t() * toes.h() / toes.t()));
        all.put("hands-to-body", centimetres(handsToBody()));
        WorldPoint leadFoot = at(LEAD_TOE).minus(at(LEAD_HEEL));
        WorldPoint trailFoot = at(TRAIL_TOE).minus(at(TRAIL_HEEL));
        all.put("lead-foot-flare", degrees(Math.atan(leadFoot.t() / -leadFoot.h())));
        all.put("trail-foot-flare", degrees(Math.atan(-trailFoot.t() / -trailFoot.h())));
    }

    /** By the law of cosines in the triangle hip, knee, ankle. */
    private double kneeFlex() {
        double thigh = at(TRAIL_HIP).distance(at(TRAIL_KNEE));
        double shank = at(TRAIL_KNEE).distance(at(TRAIL_ANKLE));
        double across = at(TRAIL_HIP).distance(at(TRAIL_ANKLE));
        return Math.PI - Math.acos((thigh * thigh + shank * shank - across * across) / (2 * thigh * shank));
    }

    /** Level from the grip's end to the front of the trail thigh, which is a cone from hip to knee as thick as the scene has it. */
    private double handsToBody() {
        WorldPoint hip = at(TRAIL_HIP);
        WorldPoint knee = at(TRAIL_KNEE);
        WorldPoint thigh = knee.minus(hip);
        double down = (at(GRIP_END).u() - hip.u()) / thigh.u();
        double middleH = hip.h() + down * thigh.h();
        double lean = Math.atan(thigh.h() / -thigh.u());
        return middleH
                - scenario.build().thighRadiusM(down) / Math.cos(lean)
                - at(GRIP_END).h();
    }

    private double heading(Landmark from, Landmark to) {
        WorldPoint d = at(to).minus(at(from));
        return Math.atan2(d.h(), d.t());
    }

    private WorldPoint middle(Landmark a, Landmark b) {
        return new WorldPoint((at(a).t() + at(b).t()) / 2, (at(a).h() + at(b).h()) / 2, (at(a).u() + at(b).u()) / 2);
    }

    private WorldPoint at(Landmark landmark) {
        WorldPoint p = body.get(landmark);
        if (p == null) {
            throw new IllegalStateException("the scene lacks " + landmark.id());
        }
        return p;
    }

    private static Value centimetres(double metres) {
        return new Value(100 * metres, "cm");
    }

    private static Value degrees(double radians) {
        return new Value(Math.toDegrees(radians), "deg");
    }
}
