package org.toeline.flight;

/** No air at all. */
public record Vacuum() implements Aerodynamics {

    @Override
    public String words() {
        return "vacuum";
    }

    @Override
    public double drag(double reynolds, double spinRatio) {
        return 0;
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        return 0;
    }

    @Override
    public boolean covers(double reynolds, double spinRatio) {
        return true;
    }

    @Override
    public double spinDecay() {
        return 0;
    }
}
