package org.toeline.flight;

import java.util.Locale;
import org.toeline.geometry.Finite;

/** Coefficients that never change: for checks, not for golf. The lift is there even without spin, the axis says where. */
public record ConstantCoefficients(double drag, double lift) implements Aerodynamics {

    public ConstantCoefficients {
        Finite.requireNotNegative(drag, "drag");
        Finite.requireNotNegative(lift, "lift");
    }

    @Override
    public String words() {
        return String.format(Locale.ROOT, "constant C_D %.3g, C_L %.3g", drag, lift);
    }

    @Override
    public double drag(double reynolds, double spinRatio) {
        return drag;
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        return lift;
    }

    @Override
    public boolean covers(double reynolds, double spinRatio) {
        return true;
    }
}
