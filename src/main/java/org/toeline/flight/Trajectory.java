package org.toeline.flight;

import java.util.ArrayList;
import java.util.List;
import org.toeline.geometry.Finite;
import org.toeline.geometry.WorldPoint;

/**
 * The equation of motion of a spinning ball: gravity, drag against the flight through the air, lift square to it and to
 * the spin axis, spin slowed by the air; the axis keeps its direction. Integrated by the classical fourth-order method of
 * Runge and Kutta in even steps; apex and landing are found on the cubic through both ends of a step and their slopes.
 *
 * @param stepS the step in seconds, (0, 0.1]; a flight that is over in a few of them is flown in smaller ones
 */
public record Trajectory(Air air, Aerodynamics aerodynamics, double stepS) {

    /** m/s², as in Penner 2001 (Am. J. Phys. 69:563). */
    public static final double GRAVITY = 9.81;

    private static final double USUAL_STEP_S = 0.05;
    /** A flight has at least so many steps. */
    private static final int LEAST_STEPS = 20;
    /** No flight lasts as long as that: the integration gives up. */
    static final double LONGEST_S = 120;

    private static final int SIZE = 7;
    private static final int HEIGHT = 2;
    private static final int CLIMB = 5;

    public Trajectory {
        if (!(Finite.requirePositive(stepS, "stepS") <= 0.1)) {
            throw new IllegalArgumentException("stepS is " + stepS + "; at most 0.1 is allowed");
        }
    }

    public Trajectory(Air air, Aerodynamics aerodynamics) {
        this(air, aerodynamics, USUAL_STEP_S);
    }

    /** The flight of a ball that leaves at the height at which it lands. */
    public Flight fly(Launch launch) {
        return new Motion(launch).flown(Kept.ALL);
    }

    /** The same flight with its two ends only, for those who need its figures and no curve. */
    public Flight land(Launch launch) {
        return new Motion(launch).flown(Kept.ENDS);
    }

    /** Which points of a flight are kept. */
    private enum Kept {
        ALL,
        ENDS
    }

    private static FlightPoint point(double timeS, double[] y) {
        return new FlightPoint(
                timeS, new WorldPoint(y[0], y[1], y[2]), Math.sqrt(y[3] * y[3] + y[4] * y[4] + y[5] * y[5]), y[6]);
    }

    /** A state on the cubic between two states, at a share of the step. */
    private static double[] between(double[] y0, double[] d0, double[] y1, double[] d1, double step, double share) {
        double s = share;
        double a = (1 + 2 * s) * (1 - s) * (1 - s);
        double b = s * (1 - s) * (1 - s) * step;
        double c = s * s * (3 - 2 * s);
        double d = s * s * (s - 1) * step;
        double[] out = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            out[i] = a * y0[i] + b * d0[i] + c * y1[i] + d * d1[i];
        }
        return out;
    }

    /** The equation: three places, three speeds, the rate of spin. */
    private final class Motion {

        private final Launch launch;
        private final double step;
        private final double[] at = new double[SIZE];
        private final double[] k2 = new double[SIZE];
        private final double[] k3 = new double[SIZE];
        private final double[] k4 = new double[SIZE];
        private final double[] axis;

        Motion(Launch launch) {
            this.launch = launch;
            axis = launch.axis();
            double up = 2 * launch.speedMps() * Math.sin(launch.angleRad()) / GRAVITY;
            step = Math.min(stepS, up / LEAST_STEPS);
        }

        Flight flown(Kept kept) {
            double[] v = launch.velocity();
            double[] y = {0, 0, 0, v[0], v[1], v[2], launch.spinRadPerS()};
            double[] slope = new double[SIZE];
            slope(y, slope);
            double[] next = new double[SIZE];
            double[] nextSlope = new double[SIZE];
            List<FlightPoint> points = new ArrayList<>();
            points.add(point(0, y));
            double apex = 0;
            int outside = covered(y) ? 0 : 1;
            int steps = 1;
            while (steps * step < LONGEST_S) {
                advance(y, slope, next);
                slope(next, nextSlope);
                if (y[CLIMB] > 0 && next[CLIMB] <= 0) {
                    apex = Math.max(apex, crossing(y, slope, next, nextSlope, CLIMB)[HEIGHT]);
                }
                if (next[HEIGHT] <= 0) {
                    break;
                }
                outside += covered(next) ? 0 : 1;
                if (kept == Kept.ALL) {
                    points.add(point(steps * step, next));
                }
                steps++;
                System.arraycopy(next, 0, y, 0, SIZE);
                System.arraycopy(nextSlope, 0, slope, 0, SIZE);
            }
            double share = share(y, slope, next, nextSlope, HEIGHT);
            double[] end = between(y, slope, next, nextSlope, step, share);
            end[HEIGHT] = 0;
            points.add(point((steps - 1 + share) * step, end));
            return new Flight(
                    aerodynamics.words(),
                    points,
                    apex,
                    Math.atan2(-end[5], Math.hypot(end[3], end[4])),
                    outside / (double) steps);
        }

        private void advance(double[] y, double[] k1, double[] out) {
            moved(y, k1, step / 2);
            slope(at, k2);
            moved(y, k2, step / 2);
            slope(at, k3);
            moved(y, k3, step);
            slope(at, k4);
            for (int i = 0; i < SIZE; i++) {
                out[i] = y[i] + step / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
            }
        }

        private void moved(double[] y, double[] k, double by) {
            for (int i = 0; i < SIZE; i++) {
                at[i] = y[i] + by * k[i];
            }
        }

        private double[] crossing(double[] y0, double[] d0, double[] y1, double[] d1, int part) {
            return between(y0, d0, y1, d1, step, share(y0, d0, y1, d1, part));
        }

        /** At which share of a step a part of the state falls through zero, by halving. */
        private double share(double[] y0, double[] d0, double[] y1, double[] d1, int part) {
            double low = 0;
            double high = 1;
            for (int i = 0; i < 40; i++) {
                double s = (low + high) / 2;
                double value = (1 + 2 * s) * (1 - s) * (1 - s) * y0[part]
                        + s * (1 - s) * (1 - s) * step * d0[part]
                        + s * s * (3 - 2 * s) * y1[part]
                        + s * s * (s - 1) * step * d1[part];
                if (value > 0 || s == 0) {
                    low = s;
                } else {
                    high = s;
                }
            }
            return (low + high) / 2;
        }

        private void slope(double[] y, double[] out) {
            double vt = y[3] - air.windTMps();
            double vh = y[4] - air.windHMps();
            double vu = y[5];
            double v = Math.sqrt(vt * vt + vh * vh + vu * vu);
            out[0] = y[3];
            out[1] = y[4];
            out[2] = y[5];
            out[3] = 0;
            out[4] = 0;
            out[5] = -GRAVITY;
            out[6] = 0;
            if (v == 0) {
                return;
            }
            // What of the spin is square to the flight is what lifts.
            double lt = axis[1] * vu - axis[2] * vh;
            double lh = axis[2] * vt - axis[0] * vu;
            double lu = axis[0] * vh - axis[1] * vt;
            double square = Math.sqrt(lt * lt + lh * lh + lu * lu) / v;
            double reynolds = reynolds(v);
            double spinRatio = y[6] * square * Ball.RADIUS_M / v;
            double k = 0.5 * air.densityKgPerM3() * Ball.SECTION_M2 * v / Ball.MASS_KG;
            double drag = k * aerodynamics.drag(reynolds, spinRatio);
            double lift = square == 0 ? 0 : k * aerodynamics.lift(reynolds, spinRatio) / square;
            out[3] = lift * lt - drag * vt;
            out[4] = lift * lh - drag * vh;
            out[5] = lift * lu - drag * vu - GRAVITY;
            out[6] = -aerodynamics.spinDecay() * y[6] * v / Ball.RADIUS_M;
        }

        boolean covered(double[] y) {
            double v = Math.max(
                    1e-9,
                    Math.sqrt(Math.pow(y[3] - air.windTMps(), 2) + Math.pow(y[4] - air.windHMps(), 2) + y[5] * y[5]));
            return aerodynamics.covers(reynolds(v), y[6] * Ball.RADIUS_M / v);
        }

        private double reynolds(double speed) {
            return 2 * Ball.RADIUS_M * speed / air.viscosityM2PerS();
        }
    }
}
