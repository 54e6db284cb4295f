package org.toeline.flight;

import java.util.List;

/**
 * Means by club of the professional tours of men and women, as they were published over the years around 2015 to 2020: ball
 * speed in mph, launch in degrees, spin in turns a minute, carry in yards, height in yards. From memory (only the men's driver
 * is near what the rule makers' distance report of 2015 has, 167.7 mph, 10.8°, 2599 turns): they choose between models and are
 * never shown to anyone as fact. They are said to be normalised to still air at sea level and 25 °C (77 °F).
 */
record PublishedMeans(
        String who, String club, double mph, double launchDeg, double rpm, double carryYd, double heightYd) {

    static final List<PublishedMeans> ALL = List.of(
            new PublishedMeans("men", "driver", 167, 10.9, 2686, 275, 32),
            new PublishedMeans("men", "3-wood", 158, 9.2, 3655, 243, 30),
            new PublishedMeans("men", "5-wood", 152, 9.4, 4350, 230, 31),
            new PublishedMeans("men", "hybrid", 146, 10.2, 4437, 225, 29),
            new PublishedMeans("men", "3-iron", 142, 10.4, 4630, 212, 27),
            new PublishedMeans("men", "4-iron", 137, 11.0, 4836, 203, 28),
            new PublishedMeans("men", "5-iron", 132, 12.1, 5361, 194, 31),
            new PublishedMeans("men", "6-iron", 127, 14.1, 6231, 183, 30),
            new PublishedMeans("men", "7-iron", 120, 16.3, 7097, 172, 32),
            new PublishedMeans("men", "8-iron", 115, 18.1, 7998, 160, 31),
            new PublishedMeans("men", "9-iron", 109, 20.4, 8647, 148, 30),
            new PublishedMeans("men", "wedge", 102, 24.2, 9304, 136, 29),
            new PublishedMeans("women", "driver", 140, 13.2, 2611, 218, 25),
            new PublishedMeans("women", "3-wood", 132, 11.2, 2704, 195, 23),
            new PublishedMeans("women", "5-wood", 128, 12.1, 4501, 185, 26),
            new PublishedMeans("women", "4-iron", 116, 14.3, 4801, 169, 24),
            new PublishedMeans("women", "5-iron", 112, 14.8, 5081, 161, 23),
            new PublishedMeans("women", "6-iron", 109, 17.1, 5943, 152, 25),
            new PublishedMeans("women", "7-iron", 104, 19.0, 6699, 141, 26),
            new PublishedMeans("women", "8-iron", 100, 20.8, 7494, 130, 25),
            new PublishedMeans("women", "9-iron", 93, 23.9, 7589, 119, 26),
            new PublishedMeans("women", "wedge", 86, 25.6, 8403, 107, 23));

    /** The air they are said to be normalised to; half damp is supposed. */
    static final Air AIR = Air.atAltitude(25, 0, 0.5);

    Launch launch() {
        return Launch.straight(FigureUnit.MILES_PER_HOUR.toInside(mph), launchDeg, rpm);
    }

    /** How far a model's carry is off, as a share. */
    double carryOff(Aerodynamics model) {
        return FigureUnit.YARD.fromInside(
                                new Trajectory(AIR, model).land(launch()).carryM())
                        / carryYd
                - 1;
    }

    double heightOff(Aerodynamics model) {
        return FigureUnit.YARD.fromInside(
                                new Trajectory(AIR, model).land(launch()).apexM())
                        / heightYd
                - 1;
    }

    /** The root mean square of what a model's carries are off. */
    static double rms(Aerodynamics model, String who) {
        return Math.sqrt(ALL.stream()
                .filter(m -> who.isEmpty() || m.who.equals(who))
                .mapToDouble(m -> m.carryOff(model) * m.carryOff(model))
                .average()
                .orElseThrow());
    }
}
