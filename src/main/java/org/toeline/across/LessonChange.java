package org.toeline.across;

import org.toeline.reading.Measured;

/**
 * The change of one figure from a lesson to a later one.
 *
 * @param difference          later − earlier, in the figures' unit
 * @param standardUncertainty √(u₁² + u₂² + 2·s²), above zero
 * @param smallestDetectable  Student's t of these, for the readings that are looked at together: a change is real when it exceeds
 *                            it (the minimal difference of Weir 2005, J. Strength Cond. Res. 19:231, with each figure's own
 *                            uncertainty)
 * @param spread              the player's own spread s that went into it
 */
public record LessonChange(
        double difference, double standardUncertainty, double smallestDetectable, OwnSpread spread, ChangeCall call) {

    /** A reading alone would be called real at 80 %: below it, nothing is shown; from it, it is too close to call. */
    private static final double NEARLY = 0.2;

    /**
     * A pure function; any thread. Both figures in one unit, as is {@code spread}.
     *
     * @param family the readings that are compared together
     */
    public static LessonChange between(Measured earlier, Measured later, OwnSpread spread, Family family) {
        double measuring = Math.pow(earlier.standardUncertainty(), 2) + Math.pow(later.standardUncertainty(), 2);
        double sigma = Math.sqrt(measuring + 2 * Math.pow(spread.standardDeviation(), 2));
        double freedom = spread.freedomOf(measuring, 2);
        double difference = later.value() - earlier.value();
        double smallest = smallest(sigma, freedom, family);
        return new LessonChange(difference, sigma, smallest, spread, call(difference, smallest, sigma, freedom));
    }

    static double smallest(double sigma, double freedom, Family family) {
        return OwnSpread.exceeded(family.each(), freedom) * sigma;
    }

    static ChangeCall call(double difference, double smallest, double sigma, double freedom) {
        double size = Math.abs(difference);
        return size > smallest
                ? ChangeCall.REAL
                : size > OwnSpread.exceeded(NEARLY, freedom) * sigma ? ChangeCall.TOO_CLOSE : ChangeCall.NOT_SHOWN;
    }
}
