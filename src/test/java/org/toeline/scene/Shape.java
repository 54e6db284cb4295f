package org.toeline.scene;

/**
 * A solid piece hung on a bone, as a field that is negative inside and grows about as fast as the distance outside.
 * Formulas of the cones: the exact signed distance of a rounded cone.
 */
abstract class Shape {

    final Bone bone;

    Shape(Bone bone) {
        this.bone = bone;
    }

    abstract double distance(double x, double y, double z);

    /** Lowest and highest corner of a box around it: minimum x, y, z, then maximum x, y, z. */
    abstract double[] box();

    /** Without what lies beyond a plane, the rim rounded by a few millimetres. */
    Shape cut(Vec point, Vec outwards) {
        return cut(point, outwards, 0.008);
    }

    Shape cut(Vec point, Vec outwards, double roundM) {
        Shape whole = this;
        return new Shape(bone) {
            @Override
            double distance(double x, double y, double z) {
                double beyond = (x - point.x()) * outwards.x()
                        + (y - point.y()) * outwards.y()
                        + (z - point.z()) * outwards.z();
                double d = whole.distance(x, y, z);
                double h = Math.max(roundM - Math.abs(d - beyond), 0) / roundM;
                return Math.max(d, beyond) + h * h * roundM * 0.25;
            }

            @Override
            double[] box() {
                return whole.box();
            }
        };
    }

    /** Without what another shape fills. */
    Shape without(Shape hole) {
        Shape whole = this;
        return new Shape(bone) {
            @Override
            double distance(double x, double y, double z) {
                return Math.max(whole.distance(x, y, z), -hole.distance(x, y, z));
            }

            @Override
            double[] box() {
                return whole.box();
            }
        };
    }

    static Shape ball(Bone bone, Vec centre, double r) {
        return cone(bone, centre, r, centre.plus(new Vec(0, 0, 1e-5)), r);
    }

    static Shape rod(Bone bone, Vec a, Vec b, double r) {
        return cone(bone, a, r, b, r);
    }

    /** Two balls and what their common tangents enclose. */
    static Shape cone(Bone bone, Vec a, double ra, Vec b, double rb) {
        Vec ba = b.minus(a);
        double l2 = ba.dot(ba);
        double rr = ra - rb;
        double a2 = l2 - rr * rr;
        double il2 = 1 / l2;
        return new Shape(bone) {
            @Override
            double distance(double x, double y, double z) {
                double px = x - a.x();
                double py = y - a.y();
                double pz = z - a.z();
                double yy = px * ba.x() + py * ba.y() + pz * ba.z();
                double zz = yy - l2;
                double ex = px * l2 - ba.x() * yy;
                double ey = py * l2 - ba.y() * yy;
                double ez = pz * l2 - ba.z() * yy;
                double x2 = ex * ex + ey * ey + ez * ez;
                double y2 = yy * yy * l2;
                double z2 = zz * zz * l2;
                double k = Math.signum(rr) * rr * rr * x2;
                if (Math.signum(zz) * a2 * z2 > k) {
                    return Math.sqrt(x2 + z2) * il2 - rb;
                }
                if (Math.signum(yy) * a2 * y2 < k) {
                    return Math.sqrt(x2 + y2) * il2 - ra;
                }
                return (Math.sqrt(x2 * a2 * il2) + yy * rr) * il2 - ra;
            }

            @Override
            double[] box() {
                return new double[] {
                    Math.min(a.x() - ra, b.x() - rb),
                    Math.min(a.y() - ra, b.y() - rb),
                    Math.min(a.z() - ra, b.z() - rb),
                    Math.max(a.x() + ra, b.x() + rb),
                    Math.max(a.y() + ra, b.y() + rb),
                    Math.max(a.z() + ra, b.z() + rb)
                };
            }
        };
    }

    /** An ellipsoid with half axes along the axes of a frame. */
    static Shape ellipsoid(Bone bone, Frame f, double rx, double ry, double rz) {
        double r = Math.max(rx, Math.max(ry, rz));
        return new Shape(bone) {
            @Override
            double distance(double x, double y, double z) {
                Vec l = f.in(new Vec(x, y, z));
                double ux = l.x() / rx;
                double uy = l.y() / ry;
                double uz = l.z() / rz;
                double k0 = Math.sqrt(ux * ux + uy * uy + uz * uz);
                double k1 = Math.sqrt(ux * ux / (rx * rx) + uy * uy / (ry * ry) + uz * uz / (rz * rz));
                return k1 < 1e-9 ? -Math.min(rx, Math.min(ry, rz)) : k0 * (k0 - 1) / k1;
            }

            @Override
            double[] box() {
                return around(f.origin(), r);
            }
        };
    }

    /** A box with rounded edges, half sizes along the axes of a frame. */
    static Shape slab(Bone bone, Frame f, double hx, double hy, double hz, double round) {
        return new Shape(bone) {
            @Override
            double distance(double x, double y, double z) {
                Vec l = f.in(new Vec(x, y, z));
                double qx = Math.abs(l.x()) - hx + round;
                double qy = Math.abs(l.y()) - hy + round;
                double qz = Math.abs(l.z()) - hz + round;
                double ox = Math.max(qx, 0);
                double oy = Math.max(qy, 0);
                double oz = Math.max(qz, 0);
                return Math.sqrt(ox * ox + oy * oy + oz * oz) + Math.min(Math.max(qx, Math.max(qy, qz)), 0) - round;
            }

            @Override
            double[] box() {
                return around(f.origin(), Math.sqrt(hx * hx + hy * hy + hz * hz));
            }
        };
    }

    private static double[] around(Vec c, double r) {
        return new double[] {c.x() - r, c.y() - r, c.z() - r, c.x() + r, c.y() + r, c.z() + r};
    }
}
