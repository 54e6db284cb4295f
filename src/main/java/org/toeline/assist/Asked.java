package org.toeline.assist;

import java.util.List;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * In which picture the player is looked for, and what is known of it.
 *
 * @param view    only {@link View#FACE_ON} and {@link View#DOWN_THE_LINE} show a player
 * @param hints   marks already placed, such as the ball: where is looked first; may be empty
 * @param focalPx about the focal length, pixels
 */
public record Asked(Frame frame, View view, Handedness handedness, List<ImagePoint> hints, double focalPx) {

    public Asked {
        hints = List.copyOf(hints);
        Finite.requirePositive(focalPx, "focalPx");
    }
}
