package org.toeline.flight;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** A moment of a flight at which one part of the state falls through zero; it remembers the height there. */
final class Crossing implements ODEEventDetector {

    private static final double TIME_S = 1e-10;

    private final int part;
    private final Action then;
    private double heightM;

    private Crossing(int part, Action then) {
        this.part = part;
        this.then = then;
    }

    /** The ball begins to fall. */
    static Crossing apex() {
        return new Crossing(5, Action.CONTINUE);
    }

    /** The ball is down again; the flight ends. */
    static Crossing ground() {
        return new Crossing(2, Action.STOP);
    }

    /** The greatest height at which it happened; 0 if it did not. */
    double heightM() {
        return heightM;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return state.getPrimaryState()[part];
    }

    @Override
    public ODEEventHandler getHandler() {
        return (state, detector, increasing) -> {
            if (increasing) {
                return Action.CONTINUE;
            }
            heightM = Math.max(heightM, state.getPrimaryState()[2]);
            return then;
        };
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(0.5);
    }

    @Override
    public int getMaxIterationCount() {
        return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return new BracketingNthOrderBrentSolver(0, TIME_S, 0, 5);
    }
}
