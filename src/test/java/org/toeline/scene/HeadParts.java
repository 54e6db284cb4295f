package org.toeline.scene;

import java.util.ArrayList;
import java.util.List;

/** Neck, head with ears (the middle of the head lies between them), hair and cap. Head frame: x lead, y back, z up. */
final class HeadParts {

    private final Frame head;
    private final Frame trunk;
    private final Outfit outfit;
    private final double k;

    HeadParts(Skeleton rest, Build build, Outfit outfit) {
        this.head = rest.frame(Bone.HEAD);
        this.trunk = rest.frame(Bone.TRUNK);
        this.outfit = outfit;
        this.k = 0.4 + 0.6 * build.scale();
    }

    List<Part> parts() {
        List<Part> all = new ArrayList<>(List.of(face(), ear(1), ear(-1), hair()));
        all.add(cap());
        all.add(brim());
        return all;
    }

    private Frame at(double x, double y, double z) {
        return new Frame(head.out(x * k, y * k, z * k), head.x(), head.y(), head.z());
    }

    private Part face() {
        List<Shape> s = new ArrayList<>();
        s.add(Shape.cone(
                Bone.TRUNK, trunk.out(0, 0.026 * k, 0.0), 0.060 * k, trunk.out(0, 0.006, 0.07 * k), 0.055 * k));
        s.add(Shape.cone(
                Bone.HEAD, trunk.out(0, 0.004, 0.07 * k), 0.054 * k, head.out(0, 0.035 * k, -0.03 * k), 0.058 * k));
        s.add(Shape.ellipsoid(Bone.HEAD, at(0, 0.004, 0.030), 0.0745 * k, 0.096 * k, 0.092 * k));
        s.add(Shape.ellipsoid(Bone.HEAD, at(0, -0.040, -0.035), 0.056 * k, 0.055 * k, 0.078 * k));
        s.add(Shape.ball(Bone.HEAD, head.out(0, -0.076 * k, -0.093 * k), 0.022 * k));
        s.add(Shape.cone(
                Bone.HEAD,
                head.out(0, -0.090 * k, 0.002 * k),
                0.009 * k,
                head.out(0, -0.108 * k, -0.030 * k),
                0.0135 * k));
        return new Part("face", s, 0.022, 0.006, this::paintFace);
    }

    private void paintFace(double x, double y, double z, double fine, Swatch swatch) {
        swatch.colour(outfit.skin());
        Vec l = head.in(new Vec(x, y, z)).times(1 / k);
        if (l.y() < -0.03) {
            double ax = Math.abs(l.x());
            double eye = Math.hypot((ax - 0.031) / 0.014, (l.z() + 0.002) / 0.0065) - 1;
            swatch.over(0x2C2723, 0.85 * Swatch.inside(eye * 0.007, fine));
            double brow = Math.hypot((ax - 0.032) / 0.019, (l.z() - 0.019) / 0.0045) - 1;
            swatch.over(outfit.hair(), 0.7 * Swatch.inside(brow * 0.005, fine));
            double mouth = Math.hypot(l.x() / 0.024, (l.z() + 0.065) / 0.004) - 1;
            swatch.over(0x7C4A42, 0.6 * Swatch.inside(mouth * 0.004, fine));
        }
    }

    private Part ear(int side) {
        Shape ear = Shape.ellipsoid(Bone.HEAD, at(side * 0.077, 0.012, -0.002), 0.0095 * k, 0.018 * k, 0.032 * k);
        return new Part("ear", List.of(ear), 0.01, 0.003, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.skin());
            Vec l = head.in(new Vec(x, y, z)).times(1 / k);
            double hollow = Math.hypot((l.y() - 0.007) / 0.008, l.z() / 0.017) - 1;
            swatch.times(1 - 0.3 * Swatch.inside(hollow * 0.008, fine));
        });
    }

    private Part hair() {
        Vec front = head.out(0, -0.045 * k, 0.05 * k);
        Vec cut = head.y().times(-0.80).plus(head.z().times(-0.60)).unit();
        Shape cap = Shape.ellipsoid(Bone.HEAD, at(0, 0.010, 0.034), 0.0795 * k, 0.100 * k, 0.096 * k)
                .cut(head.out(0, -0.002 * k, -0.028 * k), cut);
        Shape nape = Shape.ellipsoid(Bone.HEAD, at(0, 0.055, -0.018), 0.060 * k, 0.048 * k, 0.055 * k)
                .cut(front, head.y().times(-1));
        return new Part("hair", List.of(cap, nape), 0.02, 0.005, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.hair());
            Vec l = head.in(new Vec(x, y, z));
            swatch.times(1 + 0.12 * Grain.at(l.x() / 0.003, l.z() / 0.012 + l.y() / 0.02));
            swatch.gloss = 0.08;
        });
    }

    private Part cap() {
        Vec band = head.out(0, 0.0, 0.034 * k);
        Vec down = head.z().times(-0.96).plus(head.y().times(-0.10)).unit();
        Shape dome = Shape.ellipsoid(Bone.HEAD, at(0, 0.006, 0.040), 0.0845 * k, 0.106 * k, 0.096 * k)
                .cut(band, down);
        return new Part("cap", List.of(dome), 0.01, 0.005, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.cap());
            Vec l = head.in(new Vec(x, y, z));
            double a = Math.atan2(l.x(), -l.y());
            double panel = (a - Math.round(a / 1.0472) * 1.0472) * 0.08;
            swatch.times(1 - 0.25 * Swatch.line(panel, 0.001, fine));
            swatch.times(1 - 0.25 * Swatch.line(l.z() - 0.052 * k, 0.001, fine));
        });
    }

    private Part brim() {
        Frame tipped = new Frame(
                head.out(0, -0.115 * k, 0.036 * k),
                head.x(),
                head.y().turned(head.x(), 0.16),
                head.z().turned(head.x(), 0.16));
        Shape brim = Shape.ellipsoid(Bone.HEAD, tipped, 0.077 * k, 0.075 * k, 0.0085 * k);
        return new Part("brim", List.of(brim), 0.01, 0.004, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.cap());
            swatch.times(0.9);
        });
    }
}
