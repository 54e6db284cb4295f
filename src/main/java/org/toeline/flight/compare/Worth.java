package org.toeline.flight.compare;

import java.util.List;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * The smallest difference a coach would act on ({@link ShotFigure#worthwhile()}), for the club and the speed at hand: lengths
 * grow with the ball's speed, spin with the spin itself. The figures of the enumeration are those of a drive of 67 m/s and
 * 2600 turns a minute; all of it is this project's own judgement (common practice).
 */
final class Worth {

    private static final double SPEED_MPS = 67;
    private static final double SPIN_RAD_PER_S = 2600 * Math.PI / 30;
    private static final double LEAST = 0.35;
    private static final double MOST_SPIN = 3;

    private final double speed;
    private final double spin;

    private Worth(double speed, double spin) {
        this.speed = speed;
        this.spin = spin;
    }

    static Worth of(List<Shot> shots) {
        return new Worth(
                share(shots, ShotFigure.BALL_SPEED, SPEED_MPS, 1.2),
                share(shots, ShotFigure.SPIN_RATE, SPIN_RAD_PER_S, MOST_SPIN));
    }

    private static double share(List<Shot> shots, ShotFigure figure, double usual, double most) {
        double[] sorted = shots.stream()
                .flatMapToDouble(s -> s.figure(figure).stream())
                .sorted()
                .toArray();
        return sorted.length == 0 ? 1 : Math.max(LEAST, Math.min(most, sorted[sorted.length / 2] / usual));
    }

    double of(ShotFigure figure) {
        return figure.worthwhile()
                * switch (figure) {
                    case CARRY, APEX, SIDE, TOTAL, BALL_SPEED, CLUB_SPEED, HANG_TIME -> speed;
                    case SPIN_RATE -> spin;
                    default -> 1;
                };
    }
}
