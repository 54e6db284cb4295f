package org.toeline.mark;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;
import org.toeline.language.Sentences;

/**
 * Two points on the picture of something that stands upright: a door post, a plumb line.
 *
 * @param sigmaPx standard deviation of each end across the line, pixels, above zero
 * @param origin whether somebody placed or accepted it
 */
public record VerticalMark(ImagePoint from, ImagePoint to, double sigmaPx, Mark.Origin origin) {

    /** A line shorter than this says nothing about its direction, pixels. */
    public static final double SHORTEST_PX = 8;

    public VerticalMark(ImagePoint from, ImagePoint to, double sigmaPx) {
        this(from, to, sigmaPx, Mark.Origin.PLACED);
    }

    public VerticalMark {
        Finite.requirePositive(sigmaPx, "sigmaPx");
        if (from.distancePx(to) < SHORTEST_PX) {
            throw new IllegalArgumentException(
                    Sentences.of(VerticalMark.class).of("vertical.short", (int) SHORTEST_PX));
        }
    }

    public VerticalMark accepted() {
        return new VerticalMark(from, to, sigmaPx);
    }
}
