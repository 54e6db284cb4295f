package org.toeline.flight;

import java.util.Arrays;
import java.util.Optional;
import org.toeline.language.Sentences;

/**
 * The figures that can be measured of a shot. Directions are positive towards {@code h}, the left of the target line for
 * whoever looks along it (see the package description).
 *
 * <p>Each has the least and the most that a golf ball hit with a club can do, wide on purpose, and the smallest
 * difference between two setups that a coach would act on. Both are this project's own judgement (common practice), not
 * published figures.
 */
public enum ShotFigure {
    /** Speed of the club's head as it meets the ball. */
    CLUB_SPEED("club-speed", FigureUnit.METRES_PER_SECOND, 1, 75, 1),
    /** Speed of the ball as it leaves the club, [0, 108] m/s. */
    BALL_SPEED("ball-speed", FigureUnit.METRES_PER_SECOND, 1, 108, 1),
    /** Elevation of the first flight, from the horizontal, up. */
    LAUNCH_ANGLE("launch-angle", FigureUnit.DEGREE, -10, 75, 1),
    /** Heading of the first flight, from the target line towards {@code h}. */
    LAUNCH_DIRECTION("launch-direction", FigureUnit.DEGREE, -60, 60, 1),
    /** Rate of spin about its axis, never negative. */
    SPIN_RATE("spin-rate", FigureUnit.TURNS_PER_MINUTE, 0, 14000, 200),
    /** Tilt of the axis from the horizontal; positive bends the flight towards {@code h}. Square to the first flight. */
    SPIN_AXIS("spin-axis", FigureUnit.DEGREE, -90, 90, 2),
    /** Level distance from the ball to where it lands, as high as it lay. */
    CARRY("carry", FigureUnit.METRE, 0, 420, 5),
    /** Highest point above where the ball lay. */
    APEX("apex", FigureUnit.METRE, 0, 75, 2),
    /** Where the ball lands, from the target line towards {@code h}. */
    SIDE("side", FigureUnit.METRE, -200, 200, 4),
    /** Angle of the last flight below the horizontal. */
    DESCENT_ANGLE("descent-angle", FigureUnit.DEGREE, 0, 85, 2),
    /** From the club to the ground. */
    HANG_TIME("hang-time", FigureUnit.SECOND, 0, 12, 0.2),
    /** Level distance from the ball to where it lies in the end. */
    TOTAL("total", FigureUnit.METRE, 0, 500, 5),
    /** How the club's head comes to the ball: positive up. */
    ATTACK_ANGLE("attack-angle", FigureUnit.DEGREE, -25, 25, 1),
    /** Where the club's head goes at the ball, from the target line towards {@code h}. */
    CLUB_PATH("club-path", FigureUnit.DEGREE, -35, 35, 1),
    /** Where the face looks, from the club's path towards {@code h}. */
    FACE_TO_PATH("face-to-path", FigureUnit.DEGREE, -35, 35, 1),
    /** Loft of the face at the ball, from the upright. */
    DYNAMIC_LOFT("dynamic-loft", FigureUnit.DEGREE, -5, 75, 1),
    /** The ball's speed as a multiple of the club's. */
    SMASH_FACTOR("smash-factor", FigureUnit.TIMES, 0.3, 1.6, 0.03);

    private final String id;
    private final FigureUnit unit;
    private final double least;
    private final double most;
    private final double worthwhile;

    ShotFigure(String id, FigureUnit unit, double least, double most, double worthwhile) {
        this.id = id;
        this.unit = unit;
        this.least = unit.toInside(least);
        this.most = unit.toInside(most);
        this.worthwhile = unit.toInside(worthwhile);
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    /** The name in sentences, in the language of the person. */
    public String words() {
        return Sentences.of(ShotFigure.class).of("figure." + id);
    }

    public Quantity quantity() {
        return unit.quantity();
    }

    /** The unit it is printed in unless someone asks for another. */
    public FigureUnit shownUnit() {
        return unit;
    }

    /** Less than this no golf ball does; in the unit used inside. */
    public double least() {
        return least;
    }

    /** More than this no golf ball does; in the unit used inside. */
    public double most() {
        return most;
    }

    /** The smallest difference a coach would act on; in the unit used inside. */
    public double worthwhile() {
        return worthwhile;
    }

    /** Whether its sign says on which side of the target line. */
    public boolean sided() {
        return switch (this) {
            case LAUNCH_DIRECTION, SPIN_AXIS, SIDE, CLUB_PATH, FACE_TO_PATH -> true;
            default -> false;
        };
    }

    public static Optional<ShotFigure> of(String id) {
        return Arrays.stream(values()).filter(f -> f.id.equals(id)).findFirst();
    }
}
