package org.toeline.across;

import org.toeline.reading.Measured;

/**
 * The change of one figure from a lesson to a later one. It is real when it exceeds the smallest detectable change even with
 * the player's own spread as large as is plausible ({@link OwnSpread#plausibly()}): a spread learnt from few addresses that
 * came out small by luck would else be trusted most.
 *
 * @param difference         later − earlier, in the figures' unit
 * @param standardUncertainty √(u₁² + u₂² + 2·s²), above zero
 * @param smallestDetectable 1.96 of these: the smallest change that measuring the same twice would rarely give (the minimal
 *                           difference of Weir 2005, J. Strength Cond. Res. 19:231, with each figure's own uncertainty)
 * @param spread             the player's own spread s that went into it
 */
public record LessonChange(
        double difference, double standardUncertainty, double smallestDetectable, OwnSpread spread, ChangeCall call) {

    /** Two-sided 80 % of the normal distribution: below it, nothing is shown; from it to 95 %, it is too close to call. */
    static final double NEARLY = 1.2816;

    /** A pure function; any thread. Both figures in one unit, as is {@code spread}. */
    public static LessonChange between(Measured earlier, Measured later, OwnSpread spread) {
        double measuring = Math.pow(earlier.standardUncertainty(), 2) + Math.pow(later.standardUncertainty(), 2);
        double sigma = Math.sqrt(measuring + 2 * Math.pow(spread.standardDeviation(), 2));
        double plausibly = Math.sqrt(measuring + 2 * Math.pow(spread.plausibly(), 2));
        double difference = later.value() - earlier.value();
        return new LessonChange(difference, sigma, OwnSpread.SURE * sigma, spread, call(difference, sigma, plausibly));
    }

    /** @param plausibly the standard uncertainty when the player's own spread is as large as may well be */
    static ChangeCall call(double difference, double sigma, double plausibly) {
        double size = Math.abs(difference);
        return size > OwnSpread.SURE * plausibly
                ? ChangeCall.REAL
                : size > NEARLY * sigma ? ChangeCall.TOO_CLOSE : ChangeCall.NOT_SHOWN;
    }
}
