package org.toeline.scene;

import static org.toeline.mark.Landmark.*;

import java.util.List;

/** A shoe: a flat sole whose outline starts at the heel landmark and ends at the toe landmark, and the upper. */
final class ShoeParts {

    private static final double SOLE_M = 0.024;
    /** How round the edge of the sole is. */
    private static final double EDGE_M = 0.005;

    private final Frame foot;
    private final Bone bone;
    private final double length;
    private final double k;
    private final Outfit outfit;
    private final Vec ankle;
    private final int side;

    ShoeParts(Skeleton rest, Build build, Outfit outfit, boolean lead) {
        this.bone = lead ? Bone.LEAD_FOOT : Bone.TRAIL_FOOT;
        this.foot = rest.frame(bone);
        this.length = build.shoeM();
        this.k = length / 0.30;
        this.outfit = outfit;
        this.ankle = rest.at(lead ? LEAD_ANKLE : TRAIL_ANKLE);
        this.side = lead ? 1 : -1;
    }

    List<Part> parts() {
        return List.of(sole(), upper());
    }

    /** y of the foot's frame points to the target side for neither foot: it is up × along. */
    private Vec at(double along, double outwards, double up) {
        Vec out = foot.x().cross(Vec.UP).times(-side);
        return foot.origin()
                .plus(foot.x().times(along))
                .plus(out.times(outwards))
                .plus(Vec.UP.times(up));
    }

    private Part sole() {
        Shape heel = upright(at(0.037 * k, 0, 0), 0.037 * k, at(length * 0.66, 0.004, 0), 0.050 * k);
        Shape front = upright(at(length * 0.66, 0.004, 0), 0.050 * k, at(length - 0.038 * k, -0.004, 0), 0.038 * k);
        return new Part("sole", List.of(heel, front), 0.01, 0.0036, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.sole());
            swatch.times(1 - 0.35 * Swatch.line(z - 0.013, 0.0012, fine));
        });
    }

    /** A flat plate whose outline is that of two discs and their tangents. */
    private Shape upright(Vec a, double ra, Vec b, double rb) {
        Shape outline = Shape.cone(bone, a, ra, b, rb);
        return new Shape(bone) {
            @Override
            double distance(double x, double y, double z) {
                double flat = outline.distance(x, y, 0);
                double high = Math.abs(z - SOLE_M / 2) - SOLE_M / 2;
                double h = Math.max(EDGE_M - Math.abs(flat - high), 0) / EDGE_M;
                return Math.max(flat, high) + h * h * EDGE_M * 0.25;
            }

            @Override
            double[] box() {
                double[] box = outline.box();
                box[2] = -0.002;
                box[5] = SOLE_M + 0.002;
                return box;
            }
        };
    }

    private Part upper() {
        Vec down = new Vec(0, 0, -1);
        Vec floor = at(0, 0, 0.015);
        Shape heel = Shape.cone(bone, at(0.046 * k, 0, 0.022), 0.040 * k, at(0.052 * k, 0, 0.062 * k), 0.037 * k)
                .cut(floor, down);
        Shape vamp = Shape.cone(bone, at(0.10 * k, 0, 0.045 * k), 0.043 * k, at(length * 0.66, 0.003, 0.022), 0.046 * k)
                .cut(floor, down);
        Shape toe = Shape.cone(
                        bone,
                        at(length * 0.62, 0.003, 0.022),
                        0.045 * k,
                        at(length - 0.042 * k, -0.003, 0.018),
                        0.036 * k)
                .cut(floor, down);
        return new Part("upper", List.of(heel, vamp, toe), 0.025, 0.0045, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.shoe());
            swatch.gloss = 0.12;
            Vec l = foot.in(new Vec(x, y, z));
            swatch.times(1 - 0.3 * Swatch.line(l.x() - length * 0.72, 0.0014, fine));
            swatch.times(1 - 0.3 * Swatch.line(l.x() - 0.075 * k - 0.3 * (l.z() - 0.03), 0.0014, fine));
            if (Math.abs(l.y()) < 0.02 && l.x() > 0.40 * length && l.x() < 0.62 * length && l.z() > 0.05) {
                double lace = l.x() - 0.016 * Math.round(l.x() / 0.016);
                swatch.over(0xF1F0EB, 0.9 * Swatch.line(lace, 0.0028, fine));
            }
        });
    }
}
