package org.toeline.scene;

import org.toeline.geometry.WorldPoint;

/** A vector of the world frame, metres: x along the target line, y to the player's side, z up. */
record Vec(double x, double y, double z) {

    static final Vec ZERO = new Vec(0, 0, 0);
    static final Vec TARGET = new Vec(1, 0, 0);
    static final Vec PLAYER = new Vec(0, 1, 0);
    static final Vec UP = new Vec(0, 0, 1);

    static Vec of(WorldPoint p) {
        return new Vec(p.t(), p.h(), p.u());
    }

    WorldPoint world() {
        return new WorldPoint(x, y, z);
    }

    Vec plus(Vec o) {
        return new Vec(x + o.x, y + o.y, z + o.z);
    }

    Vec minus(Vec o) {
        return new Vec(x - o.x, y - o.y, z - o.z);
    }

    Vec times(double s) {
        return new Vec(x * s, y * s, z * s);
    }

    double dot(Vec o) {
        return x * o.x + y * o.y + z * o.z;
    }

    Vec cross(Vec o) {
        return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    Vec unit() {
        return times(1 / length());
    }

    Vec towards(Vec o, double share) {
        return plus(o.minus(this).times(share));
    }

    /** This without its part along a unit vector, made a unit vector. */
    Vec squareTo(Vec axis) {
        return minus(axis.times(dot(axis))).unit();
    }

    /** Turned about a unit axis through the origin, right-hand rule (Rodrigues). */
    Vec turned(Vec axis, double angleRad) {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return times(c).plus(axis.cross(this).times(s)).plus(axis.times(axis.dot(this) * (1 - c)));
    }

    Vec turnedAbout(Vec centre, Vec axis, double angleRad) {
        return minus(centre).turned(axis, angleRad).plus(centre);
    }
}
