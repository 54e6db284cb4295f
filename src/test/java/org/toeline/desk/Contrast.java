package org.toeline.desk;

import javafx.scene.paint.Color;

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
public final class Contrast {

    private Contrast() {}

    public static double of(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    /** A colour that lets through, seen on a ground. */
    public static Color over(Color colour, Color ground) {
        double a = colour.getOpacity();
        return Color.color(
                a * colour.getRed() + (1 - a) * ground.getRed(),
                a * colour.getGreen() + (1 - a) * ground.getGreen(),
                a * colour.getBlue() + (1 - a) * ground.getBlue());
    }
}
