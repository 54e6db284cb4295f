package org.toeline.flight;

/**
 * Drag and lift coefficients of a golf ball, by the Reynolds number Re = 2rv/ν and the spin ratio S = ωr/v. A figure
 * that comes out of a flight names the model it comes from, since they differ by tens of metres.
 */
public interface Aerodynamics {

    /** The model's name, as it stands beside each figure. */
    String words();

    double drag(double reynolds, double spinRatio);

    double lift(double reynolds, double spinRatio);

    /** Whether the model was published for such a flight; elsewhere it is carried on, and the flight says how long. */
    boolean covers(double reynolds, double spinRatio);

    /**
     * The share k of dω/dt = −k·ωv/r, by which the air slows the spin: 2.0e-5 (Smits and Smith 1994, Science and Golf
     * II, 340–347).
     */
    default double spinDecay() {
        return 2.0e-5;
    }
}
