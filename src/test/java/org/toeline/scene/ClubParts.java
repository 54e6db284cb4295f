package org.toeline.scene;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.List;

/** Head, shaft and grip of the club as it is soled at address, the ball and the tee. */
final class ClubParts {

    private final Skeleton rest;
    private final ClubModel club;
    private final Vec foot;
    private final Vec end;
    private final Vec up;

    ClubParts(Skeleton rest, ClubModel club) {
        this.rest = rest;
        this.club = club;
        this.foot = rest.at(CLUB_HEAD);
        this.end = rest.at(GRIP_END);
        this.up = end.minus(foot).unit();
    }

    List<Part> parts() {
        List<Part> all = new ArrayList<>(List.of(shaft(), grip(), club.isWood() ? wood() : iron(), ball()));
        if (club.teeHeightM() > 0) {
            all.add(tee());
        }
        return all;
    }

    private Part shaft() {
        Vec low = foot.plus(up.times(0.062));
        Vec high = end.minus(up.times(0.24));
        boolean steel = !club.isWood();
        double thick = 0.0062;
        return new Part(
                "shaft",
                List.of(
                        Shape.cone(Bone.CLUB, low, 0.0045, high, thick),
                        Shape.cone(Bone.CLUB, foot.plus(up.times(0.05)), 0.0072, foot.plus(up.times(0.088)), 0.0056)),
                0.002,
                0.0032,
                (x, y, z, fine, swatch) -> {
                    double along = new Vec(x, y, z).minus(foot).dot(up);
                    swatch.colour(along < 0.09 ? 0x15161A : steel ? 0xB9BCC0 : 0x4A4F57);
                    swatch.gloss = steel ? 0.9 : 0.6;
                });
    }

    private Part grip() {
        return new Part(
                "grip",
                List.of(Shape.cone(Bone.CLUB, end.minus(up.times(0.265)), 0.0090, end.minus(up.times(0.0128)), 0.0128)),
                0.002,
                0.0035,
                (x, y, z, fine, swatch) -> {
                    swatch.colour(0x1E1F22);
                    double from = end.minus(new Vec(x, y, z)).dot(up);
                    double ring = from - 0.012 * Math.round(from / 0.012);
                    swatch.times(1 - 0.35 * Swatch.line(ring, 0.0015, fine));
                    swatch.over(0xD8D8D2, Swatch.inside(from - 0.006, fine));
                });
    }

    /** A wood's head: face just behind the ball, top line at the stated height, heel towards the shaft. */
    private Part wood() {
        double top = club.headM();
        double back = -ClubModel.BALL_M / 2 - 0.002;
        Frame body = new Frame(new Vec(back - 0.046, -0.006, top * 0.54), Vec.TARGET, Vec.PLAYER, Vec.UP);
        Shape bulge = squashed(body, 0.057, 0.061, top * 0.46, back, top);
        Vec neckLow = foot.plus(up.times(0.040));
        Vec neckHigh = foot.plus(up.times(0.075));
        Shape neck = Shape.cone(Bone.CLUB, neckLow, 0.0105, neckHigh, 0.0068);
        return new Part("head", List.of(bulge, neck), 0.010, 0.0026, (x, y, z, fine, swatch) -> {
            swatch.colour(0x23272E);
            swatch.gloss = 0.35;
            boolean face = x > back - 0.003;
            if (face) {
                swatch.colour(0x8E939A);
                double groove = z - 0.006 * Math.round(z / 0.006);
                swatch.times(1 - 0.35 * Swatch.line(groove, 0.0008, fine));
            }
            if (z < 0.012) {
                swatch.colour(0x7E858E);
            }
            if (z > top * 0.7 && Math.abs(y) < 0.0016 && x < back - 0.004 && x > back - 0.02) {
                swatch.colour(0xE8E8E2);
            }
        });
    }

    /**
     * A squircle in plan with a flat face, a domed top exactly {@code top} high above {@code y = 0} and a flat sole on
     * the ground.
     */
    private static Shape squashed(Frame f, double rx, double ry, double rz, double face, double top) {
        double middle = f.origin().z();
        return new Shape(Bone.CLUB) {
            @Override
            double distance(double x, double y, double z) {
                double ux = (x - f.origin().x()) / rx;
                double uy = (y - f.origin().y()) / ry;
                double rise = z > middle ? top - middle : middle + 0.006;
                double uz = (z - middle) / rise;
                double plan = Math.pow(Math.abs(ux), 2.4) + Math.pow(Math.abs(uy), 2.4);
                double m = Math.pow(plan + Math.pow(Math.abs(uz), 2.4), 1 / 2.4);
                double d = (m - 1) * Math.min(rz, 0.03);
                double ahead = x - face + 0.03 * (z - 0.02) * 0.5;
                return Math.max(Math.max(d, ahead), -z + 0.0005);
            }

            @Override
            double[] box() {
                return new double[] {
                    f.origin().x() - rx,
                    f.origin().y() - ry,
                    -0.001,
                    face + 0.006,
                    f.origin().y() + ry,
                    top + 0.001
                };
            }
        };
    }

    /** An iron's head: a blade leaning back, its top line at the stated height beside the ball. */
    private Part iron() {
        double top = club.headM();
        double face = -ClubModel.BALL_M / 2 - 0.003;
        Shape blade = new Shape(Bone.CLUB) {
            @Override
            double distance(double x, double y, double z) {
                double front = (x - face + 0.55 * z) * 0.876;
                double thick = z < 0.012 ? 0.018 : 0.008 + 0.010 * Math.max(0, 1 - (z - 0.012) / 0.02);
                double behind = -front - thick;
                double high = z - top - 0.16 * -y * (y < 0 ? 1 : 0.8) + (y < -0.036 ? 5 * square(y + 0.036) * 20 : 0);
                double toe = -y - 0.046;
                double heel = y - 0.034;
                double d = round(round(front, behind), round(high, round(toe, heel)));
                return round(d, 0.0003 - z);
            }

            @Override
            double[] box() {
                return new double[] {face - 0.075, -0.05, -0.001, face + 0.004, 0.04, top + 0.02};
            }
        };
        Shape neck = Shape.cone(Bone.CLUB, foot.plus(up.times(0.014)), 0.0085, foot.plus(up.times(0.072)), 0.0066);
        return new Part("head", List.of(blade, neck), 0.006, 0.0018, Paint.shiny(0xA4A8AD, 0.7));
    }

    /** The higher of two, the edge between them rounded. */
    private static double round(double a, double b) {
        double h = Math.max(0.004 - Math.abs(a - b), 0) / 0.004;
        return Math.max(a, b) + h * h * 0.001;
    }

    private static double square(double x) {
        return x * x;
    }

    private Part ball() {
        Vec c = Vec.of(club.ball());
        double r = ClubModel.BALL_M / 2;
        return new Part("ball", List.of(Shape.ball(Bone.GROUND, c, r)), 0.001, 0.0022, (x, y, z, fine, swatch) -> {
            swatch.colour(0xF4F4F0);
            swatch.gloss = 0.5;
            if (fine < 0.0016) {
                swatch.times(1 - 0.16 * dimple((x - c.x()) / r, (y - c.y()) / r, (z - c.z()) / r));
            }
        });
    }

    /** Nearness to the closest of a spiral of dimples. */
    private static double dimple(double x, double y, double z) {
        int n = 336;
        int near = (int) ((1 - z) / 2 * n);
        double best = 9;
        for (int i = Math.max(0, near - 22); i < Math.min(n, near + 23); i++) {
            double w = 1 - (2.0 * i + 1) / n;
            double ring = Math.sqrt(1 - w * w);
            double a = i * 2.399963;
            double dx = x - ring * Math.cos(a);
            double dy = y - ring * Math.sin(a);
            best = Math.min(best, dx * dx + dy * dy + (z - w) * (z - w));
        }
        return Math.max(0, 1 - Math.sqrt(best) / 0.085);
    }

    private Part tee() {
        Vec top = new Vec(0, 0, club.teeHeightM());
        return new Part(
                "tee",
                List.of(
                        Shape.cone(Bone.GROUND, new Vec(0, 0, 0.0026), 0.0026, top.plus(new Vec(0, 0, -0.012)), 0.0028),
                        Shape.cone(
                                        Bone.GROUND,
                                        top.plus(new Vec(0, 0, -0.012)),
                                        0.0028,
                                        top.plus(new Vec(0, 0, -0.001)),
                                        0.0060)
                                .cut(top.plus(new Vec(0, 0, 0.0015)), Vec.UP)),
                0.004,
                0.0016,
                Paint.shiny(0xE7C27A, 0.2));
    }

    /** The highest point of the soled head in the ball's vertical plane along the target line. */
    Vec crown(Part head) {
        Vec best = new Vec(-0.05, 0, 0);
        for (double x = -0.13; x < -ClubModel.BALL_M / 2; x += 0.0005) {
            double z = top(head, x);
            if (z > best.z()) {
                best = new Vec(x, 0, z);
            }
        }
        return best;
    }

    private double top(Part head, double x) {
        double z = 0.12;
        while (z > 0 && head.distance(x, 0, z) > 0) {
            z -= 0.0002;
        }
        return z;
    }
}
