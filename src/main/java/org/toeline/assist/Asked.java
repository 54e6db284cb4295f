package org.toeline.assist;

import java.util.List;
import java.util.Optional;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * In which picture the player is looked for, and what is known of it.
 *
 * @param view    only {@link View#FACE_ON} and {@link View#DOWN_THE_LINE} show a whole player
 * @param hints   marks already placed, such as the ball: where is looked first; may be empty
 * @param focalPx about the focal length, pixels
 * @param ball    as somebody marked it: at the tee the rest is looked for around it
 * @param still   other frames in which the player stands as in this one, to see whether things are there again; may be empty
 */
public record Asked(
        Frame frame,
        View view,
        Handedness handedness,
        List<ImagePoint> hints,
        double focalPx,
        Optional<BallMark> ball,
        List<Frame> still) {

    /** Of a picture alone, without a ball that is known. */
    public Asked(Frame frame, View view, Handedness handedness, List<ImagePoint> hints, double focalPx) {
        this(frame, view, handedness, hints, focalPx, Optional.empty(), List.of());
    }

    /** With other frames of the still span. */
    public Asked with(List<Frame> others) {
        return new Asked(frame, view, handedness, hints, focalPx, ball, others);
    }

    public Asked {
        hints = List.copyOf(hints);
        still = List.copyOf(still);
        for (Frame other : still) {
            if (other.width() != frame.width() || other.height() != frame.height()) {
                throw new IllegalArgumentException("frames of one clip are of one size");
            }
        }
        Finite.requirePositive(focalPx, "focalPx");
    }
}
