package org.toeline.flight;

/**
 * How far the ball may bounce and roll on level turf: a rough estimate, apart from the flight and never added to a carry
 * without saying so. It is given as a span from soft to firm turf, and even that span knows nothing of slope, grain or
 * luck.
 *
 * <p>Bounces follow the manner of Penner 2001 (Am. J. Phys. 69:563, recalled from memory): turf gives way, as if it were
 * a hard slope leaning against the ball by 15.4°·(v / 18.6 m/s)·(θ / 44.4°), θ the angle of impact; restitution 0.510 −
 * 0.0375 w + 0.000903 w² for impacts w square to the slope up to 20 m/s, 0.120 above; the ball leaves rolling, or sliding
 * where friction (0.40) cannot make it roll. The rolling ball is slowed evenly by 2 m/s² on firm turf and 5 m/s² on soft
 * (this project's own choice: a ball let go at 1.83 m/s, as from the ramp that greens are measured with, rolls 0.84 m and
 * 0.33 m on the fairway).
 *
 * @param softM run on soft turf, metres along the last heading; below zero if the spin pulls the ball back
 * @param firmM run on firm turf
 */
public record RoughRun(double softM, double firmM) {

    private static final double SOFT_SLOWING = 5;
    private static final double FIRM_SLOWING = 2;
    private static final double SOFT_BOUNCE = 0.7;
    private static final double FRICTION = 0.40;
    /** A hop lower than this counts as rolling: upward speed in m/s, a hop of some 2 cm. */
    private static final double LAST_HOP = 0.6;

    /** The run after a flight. */
    public static RoughRun after(Flight flight) {
        FlightPoint landing = flight.landing();
        double level = landing.speedMps() * Math.cos(flight.descentRad());
        double down = landing.speedMps() * Math.sin(flight.descentRad());
        double back = landing.spinRadPerS() * Ball.RADIUS_M;
        return new RoughRun(run(level, down, back, SOFT_BOUNCE, SOFT_SLOWING), run(level, down, back, 1, FIRM_SLOWING));
    }

    /** @param back speed of the ball's skin from back spin, m/s */
    private static double run(double level, double down, double back, double liveliness, double slowing) {
        double far = 0;
        double v = level;
        double w = down;
        double spin = back;
        while (w > LAST_HOP) {
            double speed = Math.hypot(v, w);
            double angle = Math.atan2(w, Math.abs(v));
            double forward = v < 0 ? -1 : 1;
            double slope = Math.toRadians(15.4) * speed / 18.6 * Math.toDegrees(angle) / 44.4;
            double square = speed * Math.sin(Math.min(Math.PI / 2, angle + slope));
            double along = speed * Math.cos(Math.min(Math.PI / 2, angle + slope));
            double up = liveliness * restitution(square) * square;
            double slip = along + forward * spin;
            double most = FRICTION * (square + up);
            double lost = Math.copySign(Math.min(Math.abs(slip) * 2 / 7, most), slip);
            double after = along - lost;
            spin -= forward * lost * 5 / 2;
            v = forward * (after * Math.cos(slope) - up * Math.sin(slope));
            w = Math.min(after * Math.sin(slope) + up * Math.cos(slope), 0.9 * w);
            far += v * 2 * Math.max(0, w) / Trajectory.GRAVITY;
        }
        return far + v * Math.abs(v) / (2 * slowing);
    }

    private static double restitution(double square) {
        return square > 20 ? 0.120 : 0.510 - 0.0375 * square + 0.000903 * square * square;
    }
}
