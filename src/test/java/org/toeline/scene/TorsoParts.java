package org.toeline.scene;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.List;

/** The shirt with its sleeves and collar, and the hips of the trousers with the belt. */
final class TorsoParts {

    private static final double SLEEVE_SHARE = 0.66;

    private final Skeleton rest;
    private final Build build;
    private final Outfit outfit;
    private final double k;
    private final double g;
    private final double half;
    private final Frame trunk;
    private final Frame pelvis;

    TorsoParts(Skeleton rest, Build build, Outfit outfit) {
        this.rest = rest;
        this.build = build;
        this.outfit = outfit;
        this.k = build.scale();
        this.g = build.girth();
        this.half = build.biacromialM() / 2;
        this.trunk = rest.frame(Bone.TRUNK);
        this.pelvis = rest.frame(Bone.PELVIS);
    }

    List<Part> parts() {
        return List.of(shirt(), collar());
    }

    private Shape level(Bone bone, Frame f, double x, double y, double z, double r) {
        return Shape.rod(bone, f.out(-x, y, z), f.out(x, y, z), r);
    }

    private Part shirt() {
        List<Shape> s = new ArrayList<>();
        s.add(level(Bone.TRUNK, trunk, half - 0.056 * k, 0.008, -0.058 * k, 0.054 * k));
        s.add(level(Bone.TRUNK, trunk, half * 0.50, 0.012 * k, -0.150 * k, 0.106 * k * g));
        s.add(level(Bone.TRUNK, trunk, half * 0.42, 0.008 * k, -0.265 * k, 0.104 * k * g));
        s.add(level(Bone.TRUNK, trunk, half * 0.36, 0.0, -0.37 * k, 0.097 * k * g));
        s.add(level(Bone.PELVIS, pelvis, half * 0.40, 0.004, 0.105 * k, 0.095 * k * g));
        for (int side = -1; side <= 1; side += 2) {
            s.add(Shape.cone(
                    Bone.TRUNK,
                    trunk.out(side * 0.012, 0.034 * k, 0.012 * k),
                    0.050 * k,
                    trunk.out(side * (half - 0.075 * k), 0.015 * k, -0.050 * k),
                    0.046 * k));
            s.add(Shape.cone(
                    Bone.TRUNK,
                    trunk.out(side * half * 0.42, 0.050 * k, -0.14 * k),
                    0.082 * k * g,
                    trunk.out(side * half * 0.36, 0.030 * k, -0.25 * k),
                    0.080 * k * g));
            s.add(Shape.ball(Bone.TRUNK, trunk.out(side * (half - 0.024 * k), 0.001, -0.026 * k), 0.0345 * k));
            boolean lead = side > 0;
            Vec socket = lead ? rest.leadSocket : rest.trailSocket;
            Vec elbow = rest.at(lead ? LEAD_ELBOW : TRAIL_ELBOW);
            Vec end = socket.towards(elbow, SLEEVE_SHARE);
            Bone arm = lead ? Bone.LEAD_UPPER_ARM : Bone.TRAIL_UPPER_ARM;
            s.add(Shape.cone(arm, socket, 0.0585 * k, socket.towards(elbow, SLEEVE_SHARE + 0.2), 0.0560 * k * g)
                    .cut(end, elbow.minus(socket).unit()));
        }
        return new Part("shirt", s, 0.055 * k, 0.010, this::paintShirt);
    }

    private Part collar() {
        Vec low = trunk.out(0, 0.022 * k, 0.004 * k);
        Vec high = trunk.out(0, 0.010 * k, 0.062 * k);
        Vec axis = high.minus(low).unit();
        Shape ring = Shape.cone(Bone.TRUNK, low, 0.080 * k, high, 0.061 * k).cut(high.plus(axis.times(-0.006)), axis);
        Vec throat = trunk.out(0, -0.066 * k, 0.030 * k);
        Vec chest = trunk.out(0, -0.115 * k, -0.050 * k);
        Shape opening = Shape.cone(Bone.TRUNK, throat, 0.034 * k, chest, 0.008 * k);
        return new Part("collar", List.of(ring.without(opening)), 0.01, 0.005, Paint.plain(outfit.collar()));
    }

    /** Seams: shoulder seam from neck to bony tip, armhole seam through the tip, side seams, placket, hem of sleeves. */
    private void paintShirt(double x, double y, double z, double fine, Swatch swatch) {
        swatch.colour(outfit.shirt());
        Vec p = new Vec(x, y, z);
        Vec l = trunk.in(p);
        double side = Math.signum(l.x());
        Vec socket = side > 0 ? rest.leadSocket : rest.trailSocket;
        Vec tip = rest.at(side > 0 ? LEAD_SHOULDER : TRAIL_SHOULDER);
        Vec elbow = rest.at(side > 0 ? LEAD_ELBOW : TRAIL_ELBOW);
        Vec arm = elbow.minus(socket).unit();
        double along = p.minus(socket).dot(arm);
        double seams = 0;
        Vec across = arm.times(0.30).plus(trunk.x().times(side * 0.95)).unit();
        double armhole = p.minus(tip).dot(across);
        if (l.z() > -0.16 * k) {
            seams = Math.max(seams, Swatch.line(armhole, 0.0022, fine));
        }
        if (armhole < 0 && l.z() > -0.07 * k) {
            seams = Math.max(seams, Swatch.line(l.y() - 0.004, 0.0018, fine));
        }
        if (armhole < 0 && l.z() < -0.12 * k) {
            seams = Math.max(seams, 0.5 * Swatch.line(l.y() - 0.01, 0.0015, fine));
        }
        swatch.times(1 - 0.50 * seams);
        double sleeve = SLEEVE_SHARE * build.upperArmM();
        boolean onArm = along > 0.1 && p.minus(socket).minus(arm.times(along)).length() < 0.066 * k;
        double hem = onArm ? Swatch.line(along - sleeve + 0.022, 0.0012, fine) : 0;
        double cuff = onArm ? Swatch.inside(sleeve - 0.022 - along, fine) : 0;
        swatch.over(outfit.collar(), 0.75 * cuff);
        swatch.times(1 - 0.3 * hem);
        if (l.y() < 0 && l.z() > -0.2 * k && l.z() < 0.03) {
            swatch.times(1 - 0.28 * Swatch.line(Math.abs(l.x()) - 0.014, 0.0013, fine));
            double button = Math.hypot(l.x(), (l.z() + 0.04 - 0.05 * Math.round((l.z() + 0.04) / 0.05)));
            swatch.over(0xF2F0EA, 0.8 * Swatch.inside(button - 0.0045, fine));
        }
        folds(l, swatch);
    }

    /** Soft folds of cloth: wider at the waist, where a bent trunk gathers it. */
    private void folds(Vec l, Swatch swatch) {
        double low = Math.max(0, Math.min(1, (-l.z() - 0.18 * k) / 0.25));
        double wave = Math.sin(70 * l.z() + 9 * Math.sin(11 * l.x() + 2 * l.z()) + 14 * l.y());
        double slow = Math.sin(31 * l.x() + 23 * l.z() + 3 * Math.sin(17 * l.y()));
        swatch.times(1 + low * 0.055 * wave + 0.028 * slow);
    }
}
