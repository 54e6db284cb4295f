package org.toeline.study;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.toeline.geometry.GolfBall;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.reading.ReadingKind;

/**
 * What a protractor and a ruler laid on the pictures read: no camera, no depth. Across is taken for the target line in
 * the face-on picture and for the ball line in the down-the-line picture, and an alignment is how far the lead point stands
 * aside of the trail point, over the width read face-on. The ruler is the ball's own width (42.67 mm), or where the ball's
 * outline is not marked the rod that lies from the ball to the feet. Inside units.
 */
final class PictureReadings {

    private static final double BALL_M = GolfBall.LEAST_DIAMETER_M;

    private final MarkSheet sheet;

    PictureReadings(MarkSheet sheet) {
        this.sheet = sheet;
    }

    Map<ReadingKind, Double> all() {
        Map<ReadingKind, Double> read = new EnumMap<>(ReadingKind.class);
        double tiltAcross = across(View.FACE_ON, Landmark.TRAIL_SHOULDER, Landmark.LEAD_SHOULDER);
        double tiltUp = y(View.FACE_ON, Landmark.TRAIL_SHOULDER) - y(View.FACE_ON, Landmark.LEAD_SHOULDER);
        read.put(ReadingKind.SHOULDER_TILT, Math.atan2(tiltUp, tiltAcross));
        double ruler = ruler(View.FACE_ON);
        double ballX = ballX(View.FACE_ON);
        read.put(ReadingKind.BALL_TO_LEAD_SHOULDER, (ballX - x(View.FACE_ON, Landmark.LEAD_SHOULDER)) * ruler);
        double heels = across(View.FACE_ON, Landmark.TRAIL_HEEL, Landmark.LEAD_HEEL);
        read.put(ReadingKind.BALL_IN_STANCE, (ballX - x(View.FACE_ON, Landmark.TRAIL_HEEL)) / heels);
        read.put(ReadingKind.STANCE_WIDTH, heels * ruler);
        read.put(ReadingKind.STANCE_TO_SHOULDER_WIDTH, heels / Math.hypot(tiltAcross, tiltUp));
        double toes = across(View.FACE_ON, Landmark.TRAIL_TOE, Landmark.LEAD_TOE) * ruler;
        double side = ruler(View.DOWN_THE_LINE);
        double shoulders = Math.atan2(
                -across(View.DOWN_THE_LINE, Landmark.TRAIL_SHOULDER, Landmark.LEAD_SHOULDER) * side,
                tiltAcross * ruler);
        double feet = Math.atan2(-across(View.DOWN_THE_LINE, Landmark.TRAIL_TOE, Landmark.LEAD_TOE) * side, toes);
        read.put(ReadingKind.FEET_TO_TARGET, feet);
        read.put(ReadingKind.SHOULDERS_TO_TARGET, shoulders);
        read.put(ReadingKind.SHOULDERS_TO_FEET, shoulders - feet);
        return read;
    }

    private double across(View view, Landmark from, Landmark to) {
        return x(view, to) - x(view, from);
    }

    private double x(View view, Landmark landmark) {
        ViewMarks v = marks(view);
        return rightHanded(v, v.mark(landmark).orElseThrow().at()).xPx();
    }

    private double y(View view, Landmark landmark) {
        return marks(view).mark(landmark).orElseThrow().at().yPx();
    }

    private double ballX(View view) {
        ViewMarks v = marks(view);
        return rightHanded(v, v.ball().orElseThrow().centre()).xPx();
    }

    private ImagePoint rightHanded(ViewMarks v, ImagePoint p) {
        return sheet.handedness() == Handedness.LEFT ? p.mirrored(v.widthPx()) : p;
    }

    /** Metres a pixel. */
    private double ruler(View view) {
        OptionalDouble diameter = marks(view).ball().map(BallMark::diameterPx).orElse(OptionalDouble.empty());
        return diameter.isPresent() ? BALL_M / diameter.getAsDouble() : crossRod(marks(view));
    }

    /** The rod that lies from the ball to the feet: its true length over its drawn one. */
    private double crossRod(ViewMarks v) {
        FloorReference ball = sheet.floor().point("cross-ball").orElseThrow();
        FloorReference feet = sheet.floor().point("cross-feet").orElseThrow();
        return Math.hypot(feet.t() - ball.t(), feet.h() - ball.h())
                / v.floorMark(ball.id())
                        .orElseThrow()
                        .at()
                        .distancePx(v.floorMark(feet.id()).orElseThrow().at());
    }

    private ViewMarks marks(View view) {
        return sheet.view(view).orElseThrow();
    }
}
