package org.toeline.flight;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.StepNormalizer;
import org.hipparchus.ode.sampling.StepNormalizerBounds;
import org.toeline.geometry.Finite;
import org.toeline.geometry.WorldPoint;

/**
 * The equation of motion of a spinning ball: gravity, drag against the flight through the air, lift square to it and to
 * the spin axis, spin slowed by the air; the axis keeps its direction. Integrated by Dormand and Prince's 8(5,3) method
 * with steps of its own choosing; apex and landing are found as events, not between points.
 *
 * @param toleranceM error allowed in a step, in metres and metres a second; (0, 0.01]
 */
public record Trajectory(Air air, Aerodynamics aerodynamics, double toleranceM) {

    /** m/s², as in Penner 2001 (Am. J. Phys. 69:563). */
    public static final double GRAVITY = 9.81;

    private static final double USUAL_TOLERANCE_M = 1e-7;
    private static final double POINTS_EVERY_S = 0.05;
    /** No flight lasts as long as that: the integration gives up. */
    static final double LONGEST_S = 120;

    public Trajectory {
        if (!(Finite.requirePositive(toleranceM, "toleranceM") <= 0.01)) {
            throw new IllegalArgumentException("toleranceM is " + toleranceM + "; at most 0.01 is allowed");
        }
    }

    public Trajectory(Air air, Aerodynamics aerodynamics) {
        this(air, aerodynamics, USUAL_TOLERANCE_M);
    }

    /** The flight of a ball that leaves at the height at which it lands. */
    public Flight fly(Launch launch) {
        Motion motion = new Motion(launch);
        double[] v = launch.velocity();
        double[] start = {0, 0, 0, v[0], v[1], v[2], launch.spinRadPerS()};
        ODEIntegrator integrator = new DormandPrince853Integrator(1e-9, 1.0, toleranceM, 0);
        List<FlightPoint> points = new ArrayList<>();
        int[] outside = new int[1];
        integrator.addStepHandler(new StepNormalizer(
                POINTS_EVERY_S,
                (state, last) -> {
                    points.add(point(state));
                    outside[0] += motion.covered(state.getPrimaryState()) ? 0 : 1;
                },
                StepNormalizerBounds.BOTH));
        Crossing apex = Crossing.apex();
        integrator.addEventDetector(apex);
        integrator.addEventDetector(Crossing.ground());
        ODEStateAndDerivative end = integrator.integrate(motion, new ODEState(0, start), LONGEST_S);
        double[] y = end.getPrimaryState();
        return new Flight(
                aerodynamics.words(),
                points,
                apex.heightM(),
                Math.atan2(-y[5], Math.hypot(y[3], y[4])),
                outside[0] / (double) points.size());
    }

    private static FlightPoint point(ODEStateAndDerivative state) {
        double[] y = state.getPrimaryState();
        return new FlightPoint(
                state.getTime(),
                new WorldPoint(y[0], y[1], y[2]),
                Math.sqrt(y[3] * y[3] + y[4] * y[4] + y[5] * y[5]),
                y[6]);
    }

    /** The equation: three places, three speeds, the rate of spin. */
    private final class Motion implements OrdinaryDifferentialEquation {

        private final double[] axis;

        Motion(Launch launch) {
            axis = launch.axis();
        }

        @Override
        public int getDimension() {
            return 7;
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            double vt = y[3] - air.windTMps();
            double vh = y[4] - air.windHMps();
            double vu = y[5];
            double v = Math.sqrt(vt * vt + vh * vh + vu * vu);
            double[] out = {y[3], y[4], y[5], 0, 0, -GRAVITY, 0};
            if (v == 0) {
                return out;
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
            return out;
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
