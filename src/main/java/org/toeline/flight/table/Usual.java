package org.toeline.flight.table;

import java.util.Arrays;
import java.util.List;
import org.toeline.flight.FigureUnit;

/**
 * Between which figures the shots of a table usually lie, from a child's wedge to the fastest drive: wide, and our own
 * judgement (common practice). A column whose figures lie elsewhere is not surely what its heading says.
 */
final class Usual {

    private static final double MOST = 0.9;

    private Usual() {}

    private static double[] ends(Meaning meaning) {
        return switch (meaning) {
            case CLUB_SPEED -> new double[] {8, 65};
            case BALL_SPEED -> new double[] {8, 98};
            case LAUNCH_ANGLE -> degrees(-5, 60);
            case LAUNCH_DIRECTION -> degrees(-40, 40);
            case SPIN_RATE, BACK_SPIN -> rpm(250, 13_500);
            case SIDE_SPIN -> rpm(-5000, 5000);
            case SPIN_AXIS -> degrees(-75, 75);
            case CARRY, TOTAL -> new double[] {4, 360};
            case APEX -> new double[] {0.3, 70};
            case SIDE -> new double[] {-130, 130};
            case DESCENT_ANGLE -> degrees(3, 80);
            case HANG_TIME -> new double[] {0.4, 10};
            case ATTACK_ANGLE -> degrees(-20, 20);
            case CLUB_PATH, FACE_TO_PATH -> degrees(-30, 30);
            case DYNAMIC_LOFT -> degrees(0, 70);
            case SMASH_FACTOR -> new double[] {0.6, 1.6};
        };
    }

    private static double[] degrees(double low, double high) {
        return new double[] {Math.toRadians(low), Math.toRadians(high)};
    }

    private static double[] rpm(double low, double high) {
        return new double[] {FigureUnit.TURNS_PER_MINUTE.toInside(low), FigureUnit.TURNS_PER_MINUTE.toInside(high)};
    }

    /** Whether most of the figures lie where such figures lie; they are in the unit used inside. */
    static boolean fits(Meaning meaning, double[] inside) {
        double[] ends = ends(meaning);
        long within =
                Arrays.stream(inside).filter(x -> x >= ends[0] && x <= ends[1]).count();
        return inside.length > 0 && within >= MOST * inside.length;
    }

    /** The units in which figures would make sense as what they are said to be. */
    static List<FigureUnit> units(Meaning meaning, double[] bare) {
        return FigureUnit.of(meaning.quantity()).stream()
                .filter(u -> fits(meaning, Arrays.stream(bare).map(u::toInside).toArray()))
                .filter(u -> u != FigureUnit.RADIAN || spreadLikeRadians(bare))
                .toList();
    }

    /** Degrees as small as radians could be are thinkable, radians as large as degrees are not. */
    private static boolean spreadLikeRadians(double[] bare) {
        return Arrays.stream(bare).allMatch(x -> Math.abs(x) < 1.6);
    }
}
