package org.toeline.advice.page;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.toeline.advice.Advice;
import org.toeline.advice.Finding;
import org.toeline.advice.Range;
import org.toeline.geometry.GolfBall;
import org.toeline.reading.ReadingKind;

/**
 * How far to move, in what a player has at hand: widths of the ball, the foot, the hand. From the reading to half way between
 * the limit it passed and the aim, in half widths, and never more than one can try at once.
 *
 * @param lengthM how far it is all in all; what is said may be less
 */
record Dose(Measure measure, double lengthM) {

    /** What it is counted in. */
    enum Measure {
        BALL(GolfBall.LEAST_DIAMETER_M, 6),
        /** A shoe's breadth, about; foot breadth 92 to 102 mm in ANSUR II (2012), and the shoe. */
        FOOT(0.105, 2),
        /** A hand's breadth with the thumb, about: common measure. */
        HAND(0.09, 4);

        private final double widthM;
        private final int mostHalves;

        Measure(double widthM, int mostHalves) {
            this.widthM = widthM;
            this.mostHalves = mostHalves;
        }
    }

    /** Empty where nothing can be counted: angles, and shares of something that was not measured. */
    static Optional<Dose> of(Finding finding, Advice advice) {
        Range range = finding.range().orElseThrow();
        double value = finding.reading().value();
        double limit = value < range.low() ? range.low() : range.high();
        double off = Math.abs(value - (limit + range.aim()) / 2);
        Function<Measure, Optional<Dose>> length = m -> Optional.of(new Dose(m, off));
        return switch (finding.kind()) {
            case BALL_ABOVE_CROWN -> Optional.of(new Dose(Measure.BALL, off * Measure.BALL.widthM));
            case TEE_HEIGHT, BALL_TO_LEAD_SHOULDER, BALL_TO_LEAD_HEEL -> length.apply(Measure.BALL);
            case BALL_IN_STANCE -> times(Measure.BALL, off, value(advice, ReadingKind.STANCE_WIDTH));
            case LEAD_FOOT_OUTSIDE_SHOULDER, STANCE_WIDTH -> length.apply(Measure.FOOT);
            case STANCE_TO_SHOULDER_WIDTH -> times(Measure.FOOT, off, shoulders(advice));
            case FEET_TO_TARGET -> times(Measure.FOOT, Math.tan(off), value(advice, ReadingKind.STANCE_WIDTH));
            case HEAD_TO_BALL, BALL_DISTANCE -> length.apply(Measure.HAND);
            default -> Optional.empty();
        };
    }

    private static Optional<Dose> times(Measure measure, double share, OptionalDouble lengthM) {
        return lengthM.isEmpty() ? Optional.empty() : Optional.of(new Dose(measure, share * lengthM.getAsDouble()));
    }

    private static OptionalDouble value(Advice advice, ReadingKind kind) {
        return advice.finding(kind)
                .map(f -> OptionalDouble.of(f.reading().value()))
                .orElse(OptionalDouble.empty());
    }

    /** The width of the shoulders, from the two readings of the stance. */
    private static OptionalDouble shoulders(Advice advice) {
        OptionalDouble width = value(advice, ReadingKind.STANCE_WIDTH);
        OptionalDouble ratio = value(advice, ReadingKind.STANCE_TO_SHOULDER_WIDTH);
        return width.isEmpty() || ratio.isEmpty() || ratio.getAsDouble() <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(width.getAsDouble() / ratio.getAsDouble());
    }

    /** The key of the phrase. */
    String key() {
        long halves = halves();
        String name = measure.name().toLowerCase(Locale.ROOT);
        return halves == 0 ? "amount.little" : "amount." + name + "." + (isCapped() ? "most" : Long.toString(halves));
    }

    /** Whether it is more than anybody should change at once, so that less is said. */
    boolean isCapped() {
        return halves() > measure.mostHalves;
    }

    private long halves() {
        long halves = Math.round(lengthM / measure.widthM * 2);
        return halves > 4 ? 2 * Math.round(lengthM / measure.widthM) : halves;
    }
}
