package org.toeline.assist;

import java.util.List;

/**
 * How a camera turns light into the levels of a picture: by a power, as for a screen (IEC 61966-2-1, ITU-R BT.709), and with
 * bright light held back before it, since cameras keep white from clipping. Where a white rim covers half a pixel it shows how
 * much: the brighter that pixel for what the white shows as, the more was held back.
 *
 * @param gamma the exponent
 * @param knee  the light from which on it is held back, 0 to 1; 1 for a camera that clips
 */
record Encoding(double gamma, double knee) {

    /** What is thought first. */
    static final Encoding USUAL = new Encoding(2.2, 1);
    static final List<Encoding> ALL = List.of(new Encoding(1.9, 1), USUAL, new Encoding(2.5, 1), new Encoding(2.2, 0.7),
            new Encoding(2.2, 0.4));

    private static final double LEAST = 1e-5;
    /** Of what is held back the last bit would be any light. */
    private static final double MOST = 0.96;

    /** The light that shows as a level of 0 to 255. */
    double light(double level) {
        double shown = Math.pow(Math.max(level, 1) / 255, gamma);
        if (shown <= knee || knee >= 1) {
            return shown;
        }
        double part = Math.min(MOST, (shown - knee) / (1 - knee));
        return knee + (1 - knee) * part / (1 - part);
    }

    double level(double light) {
        return 255 * Math.pow(Math.max(held(light), LEAST), 1 / gamma);
    }

    /** Levels per light. */
    double rate(double light) {
        double more = light <= knee || knee >= 1 ? 0 : (light - knee) / (1 - knee);
        return 255 / gamma * Math.pow(Math.max(held(light), LEAST), 1 / gamma - 1) / ((1 + more) * (1 + more));
    }

    private double held(double light) {
        if (light <= knee || knee >= 1) {
            return light;
        }
        double more = (light - knee) / (1 - knee);
        return knee + (1 - knee) * more / (1 + more);
    }
}
