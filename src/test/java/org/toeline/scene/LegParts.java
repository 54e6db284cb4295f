package org.toeline.scene;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.List;

/** Trousers or shorts with the belt, bare legs where they show, ankles and shoes. */
final class LegParts {

    private final Skeleton rest;
    private final Build build;
    private final Outfit outfit;
    private final double k;
    private final double g;
    private final Frame pelvis;
    private final double beltTop;

    LegParts(Skeleton rest, Build build, Outfit outfit) {
        this.rest = rest;
        this.build = build;
        this.outfit = outfit;
        this.k = build.scale();
        this.g = build.girth();
        this.pelvis = rest.frame(Bone.PELVIS);
        this.beltTop = 0.118 * k;
    }

    List<Part> parts() {
        List<Part> all = new ArrayList<>();
        all.add(trousers());
        for (int side = -1; side <= 1; side += 2) {
            if (outfit.legs() == Outfit.Legs.SHORT) {
                all.add(bareLeg(side > 0));
            }
            all.add(ankle(side > 0));
            all.addAll(new ShoeParts(rest, build, outfit, side > 0).parts());
        }
        return all;
    }

    private Part trousers() {
        double w = build.bitrochantericM() / 2;
        List<Shape> s = new ArrayList<>();
        s.add(Shape.rod(
                        Bone.PELVIS,
                        pelvis.out(-w * 0.47, 0.006, 0.075 * k),
                        pelvis.out(w * 0.47, 0.006, 0.075 * k),
                        0.112 * k * g)
                .cut(pelvis.out(0, 0, beltTop), pelvis.z()));
        for (int side = -1; side <= 1; side += 2) {
            s.add(Shape.ball(Bone.PELVIS, pelvis.out(side * w * 0.46, 0.050 * k, -0.012 * k), 0.093 * k * g));
            s.add(Shape.ball(Bone.PELVIS, pelvis.out(side * (w - 0.083 * k), 0, -0.005), 0.092 * k));
            leg(s, side > 0);
        }
        return new Part("trousers", s, 0.05 * k, 0.010, this::paintTrousers);
    }

    private Vec hipJoint(boolean lead) {
        double w = build.bitrochantericM() / 2 - 0.085 * k;
        return pelvis.out(lead ? w : -w, 0.0, -0.012 * k);
    }

    private void leg(List<Shape> s, boolean lead) {
        Vec hip = hipJoint(lead);
        Vec knee = rest.at(lead ? LEAD_KNEE : TRAIL_KNEE);
        Vec ankle = rest.at(lead ? LEAD_ANKLE : TRAIL_ANKLE);
        Bone thigh = lead ? Bone.LEAD_THIGH : Bone.TRAIL_THIGH;
        Bone shank = lead ? Bone.LEAD_SHANK : Bone.TRAIL_SHANK;
        if (outfit.legs() == Outfit.Legs.SHORT) {
            Vec end = hip.towards(knee, 0.86);
            s.add(Shape.cone(thigh, hip, 0.094 * k * g, hip.towards(knee, 1.1), 0.084 * k)
                    .cut(end, knee.minus(hip).unit()));
            return;
        }
        s.add(Shape.cone(thigh, hip, build.thighRadiusM(0), knee, build.thighRadiusM(1)));
        Vec calf = rest.frame(shank).out(build.shankM() * 0.33, 0, -0.020 * k);
        s.add(Shape.cone(shank, knee, 0.066 * k, calf, 0.066 * k * g));
        Vec hem = ankle.plus(new Vec(0, 0, 0.024));
        s.add(Shape.cone(shank, calf, 0.066 * k * g, ankle.plus(new Vec(0, 0, -0.05)), 0.057 * k)
                .cut(hem, new Vec(0, 0, -1)));
    }

    private Part bareLeg(boolean lead) {
        Vec hip = hipJoint(lead);
        Vec knee = rest.at(lead ? LEAD_KNEE : TRAIL_KNEE);
        Vec ankle = rest.at(lead ? LEAD_ANKLE : TRAIL_ANKLE);
        Bone thigh = lead ? Bone.LEAD_THIGH : Bone.TRAIL_THIGH;
        Bone shank = lead ? Bone.LEAD_SHANK : Bone.TRAIL_SHANK;
        Frame f = rest.frame(shank);
        List<Shape> s = new ArrayList<>();
        s.add(Shape.cone(thigh, hip.towards(knee, 0.6), 0.068 * k * g, knee, 0.054 * k));
        s.add(Shape.ball(shank, f.out(0.012, 0, 0.014 * k), 0.043 * k));
        s.add(Shape.cone(shank, knee, 0.052 * k, f.out(build.shankM() * 0.32, 0, -0.016 * k), 0.055 * k * g));
        s.add(Shape.cone(shank, f.out(build.shankM() * 0.32, 0, -0.016 * k), 0.055 * k * g, ankle, 0.036 * k));
        return new Part("leg", s, 0.03, 0.007, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.skin());
            Vec l = f.in(new Vec(x, y, z));
            swatch.times(1 - 0.16 * Swatch.line(l.x() - 0.036 * k, 0.004, fine) * (l.z() > 0 ? 1 : 0));
        });
    }

    /** The sock, with a line at the middle of the ankle bones. */
    private Part ankle(boolean lead) {
        Vec ankle = rest.at(lead ? LEAD_ANKLE : TRAIL_ANKLE);
        Bone shank = lead ? Bone.LEAD_SHANK : Bone.TRAIL_SHANK;
        Frame f = rest.frame(shank);
        Frame foot = rest.frame(lead ? Bone.LEAD_FOOT : Bone.TRAIL_FOOT);
        Shape leg = Shape.cone(shank, f.out(build.shankM() - 0.09 * k, 0, 0), 0.041 * k, ankle, 0.038 * k)
                .cut(f.out(build.shankM() - 0.055 * k, 0, 0), f.x().times(-1));
        Shape down = Shape.cone(
                lead ? Bone.LEAD_FOOT : Bone.TRAIL_FOOT,
                ankle,
                0.037 * k,
                foot.origin().plus(foot.x().times(0.2 * build.shoeM())).plus(new Vec(0, 0, 0.045)),
                0.034 * k);
        return new Part("ankle", List.of(leg, down), 0.02, 0.006, (x, y, z, fine, swatch) -> {
            swatch.colour(Outfit.SOCK);
            swatch.times(1 - 0.35 * Swatch.line(z - ankle.z(), 0.0025, fine));
        });
    }

    /** Belt and loops, side seam and pocket at the hip, crease down the leg, folds behind and above the knee. */
    private void paintTrousers(double x, double y, double z, double fine, Swatch swatch) {
        swatch.colour(outfit.trousers());
        Vec p = new Vec(x, y, z);
        Vec l = pelvis.in(p);
        double belt = beltTop - 0.038;
        boolean lead = l.x() > 0;
        Vec knee = rest.at(lead ? LEAD_KNEE : TRAIL_KNEE);
        Frame thigh = rest.frame(lead ? Bone.LEAD_THIGH : Bone.TRAIL_THIGH);
        Frame shank = rest.frame(lead ? Bone.LEAD_SHANK : Bone.TRAIL_SHANK);
        Vec t = thigh.in(p);
        Vec s = shank.in(p);
        boolean below = s.x() > 0;
        double outward = (lead ? 1 : -1);
        if (l.z() < belt) {
            double forwards = below ? s.z() : t.z();
            double across = outward * (below ? s.y() : t.y());
            double seam = across * -1 > 0.02 || l.z() > -0.1
                    ? Swatch.line(l.z() > -0.02 ? l.y() : forwards, 0.0018, fine)
                    : 0;
            swatch.times(1 - 0.36 * seam);
            if (forwards > 0 && l.z() < -0.1) {
                swatch.times(1 - 0.12 * Swatch.line(across, 0.002, fine));
            }
            double pocket = Swatch.line(l.y() + 0.055 - 0.45 * (l.z() - 0.03), 0.0016, fine);
            if (Math.abs(l.x()) > 0.06 && l.z() > -0.05) {
                swatch.times(1 - 0.32 * pocket);
            }
            creases(p, knee, s, swatch);
        } else {
            double across = l.z() - belt;
            swatch.over(outfit.belt(), Swatch.inside(-across, fine));
            double angle = Math.atan2(l.y(), l.x());
            double loop = Math.abs(angle - Math.round(angle / 0.7854) * 0.7854) * 0.13;
            swatch.over(outfit.trousers(), Swatch.line(loop, 0.005, fine));
            if (Math.abs(l.x()) < 0.022 && l.y() < 0) {
                swatch.over(0xC9C6BC, 1);
                swatch.gloss = 0.5;
            }
        }
    }

    private void creases(Vec p, Vec knee, Vec s, Swatch swatch) {
        double near = Math.exp(-square((p.z() - knee.z()) / 0.06));
        double wave = Math.sin(150 * s.x() + 3 * Math.sin(40 * s.y()) + 25 * s.z());
        double hem = Math.exp(-square((s.x() - build.shankM() + 0.06) / 0.05));
        double slow = Math.sin(26 * p.z() + 31 * s.y() + 2 * Math.sin(21 * p.z()));
        swatch.times(1 + 0.07 * near * wave + 0.05 * hem * Math.sin(120 * s.x() + 20 * s.z()) + 0.03 * slow);
    }

    private static double square(double x) {
        return x * x;
    }
}
