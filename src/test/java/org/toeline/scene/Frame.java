package org.toeline.scene;

/** A place and three unit axes square to each other, right-handed. */
record Frame(Vec origin, Vec x, Vec y, Vec z) {

    /** The frame whose x axis is {@code along} and whose z axis is as near as can be to {@code roughUp}. */
    static Frame along(Vec origin, Vec along, Vec roughUp) {
        Vec x = along.unit();
        Vec z = roughUp.squareTo(x);
        return new Frame(origin, x, z.cross(x), z);
    }

    Vec out(double lx, double ly, double lz) {
        return origin.plus(x.times(lx)).plus(y.times(ly)).plus(z.times(lz));
    }

    Vec out(Vec local) {
        return out(local.x(), local.y(), local.z());
    }

    Vec in(Vec world) {
        Vec d = world.minus(origin);
        return new Vec(d.dot(x), d.dot(y), d.dot(z));
    }

    /** Where a point that is fixed to this frame goes when this frame moves to {@code other}. */
    Vec carried(Vec world, Frame other) {
        return other.out(in(world));
    }
}
