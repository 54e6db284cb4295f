package org.toeline.geometry;

/**
 * A point in the world frame, in metres: {@code t} towards the target, {@code h} from the ball to the player's side,
 * {@code u} up; the origin is the ground under the ball (see the package description). Always finite.
 */
public record WorldPoint(double t, double h, double u) {

    public static final WorldPoint ORIGIN = new WorldPoint(0, 0, 0);

    public WorldPoint {
        Finite.require(t, "t");
        Finite.require(h, "h");
        Finite.require(u, "u");
    }

    public WorldPoint plus(double dt, double dh, double du) {
        return new WorldPoint(t + dt, h + dh, u + du);
    }

    public WorldPoint minus(WorldPoint other) {
        return new WorldPoint(t - other.t, h - other.h, u - other.u);
    }

    public double distance(WorldPoint other) {
        double dt = t - other.t;
        double dh = h - other.h;
        double du = u - other.u;
        return Math.sqrt(dt * dt + dh * dh + du * du);
    }
}
