package org.toeline.posture;

import org.toeline.mark.Club;

/**
 * How a player usually stands to the ball with a club: means, metres.
 *
 * @param toeDistance h of the toe line from the ball: lead toe to ball of a teachers' federation article (driver 0.81
 *                    to 0.91, 5-iron 0.56 to 0.66, 9-iron 0.46 to 0.56; unreviewed), between those by interpolation
 * @param feet        t of the middle of the heels from the ball: the driver's ball off the lead heel, the 9-iron's some
 *                    7 cm farther back (same article), common practice
 * @param heels       distance of the heels: CaddieSet's stance over joint-centre breadth at address (driver 1.51, 7-iron
 *                    1.18, 9-iron 1.08) times some 0.31 m
 * @param clubLength  from the grip's end to the ground at the head: from memory of usual club lengths
 * @param teed        height of the ball's underside, mean: on the ground or a little above it, never below; common
 *                    practice
 * @param teedSigma   its standard deviation
 * @param bendDeg     forward bend, middle of the hips to middle of the shoulders against the vertical, degrees: trunk in
 *                    pictures down the line of eight golfers (CaddieSet: drivers 9 to 20, mean 16; long irons 25 to 38;
 *                    7-irons 23 to 29; 9-irons 30 to 34), moved towards the common practice of deeper bends where the
 *                    table is silent or its golfers few; the others between
 */
record ClubStance(
        double toeDistance,
        double feet,
        double heels,
        double clubLength,
        double teed,
        double teedSigma,
        double bendDeg) {

    static ClubStance of(Club club) {
        return switch (club) {
            case DRIVER -> new ClubStance(0.87, -0.20, 0.48, 1.13, 0.045, 0.019, 21);
            case FAIRWAY_WOOD -> new ClubStance(0.75, -0.15, 0.44, 1.07, 0.008, 0.007, 23);
            case HYBRID -> new ClubStance(0.68, -0.12, 0.42, 1.01, 0.006, 0.005, 25);
            case LONG_IRON -> new ClubStance(0.64, -0.09, 0.41, 0.98, 0.005, 0.004, 27);
            case MID_IRON -> new ClubStance(0.61, -0.06, 0.37, 0.94, 0.005, 0.004, 28);
            case SHORT_IRON -> new ClubStance(0.53, -0.03, 0.34, 0.91, 0.005, 0.004, 30);
            case WEDGE -> new ClubStance(0.47, -0.01, 0.32, 0.89, 0.003, 0.004, 32);
            case PUTTER -> new ClubStance(0.25, -0.06, 0.30, 0.87, 0.001, 0.002, 33);
        };
    }
}
