package org.toeline.handout;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.paint.BodyPoints;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.PictureFrame;
import org.toeline.paint.StillOverlay;
import org.toeline.posture.Posture;
import org.toeline.reading.ReadingKind;

/** The picture of a still: the whole player, and what is drawn over it. */
record StillPicture(View view, PictureFrame picture, StillOverlay overlay) {

    /** How much of the picture is shown around the player, in the player's size. */
    private static final double AROUND = 1.16;
    /** From the shoulders to the top of a cap, in the height of the shoulders over the ground. */
    private static final double HEAD_OVER_SHOULDERS = 0.27;

    /** Lines shown when there is nothing to change. */
    private static final Set<Kind> WHEN_GOOD = EnumSet.of(Kind.SHOULDERS, Kind.TOES, Kind.PLUMB, Kind.GAP, Kind.CROWN);
    /** All that may be shown at once and still be told apart. */
    private static final Set<Kind> WHOLE_SET = EnumSet.of(
            Kind.SHOULDERS,
            Kind.LEVEL,
            Kind.TOES,
            Kind.HEELS,
            Kind.PLUMB,
            Kind.GAP,
            Kind.SPINE,
            Kind.SHAFT,
            Kind.CROWN);

    static StillPicture of(
            Assessment assessment,
            Words words,
            View view,
            BufferedImage picture,
            StillOptions options,
            List<PinnedWords> written,
            Rectangle2D frame) {
        BufferedImage covered = options.face().on(picture, assessment.posture(), view);
        Optional<Finding> first =
                assessment.advice().first().map(f -> f.finding()).filter(f -> isSeen(assessment, view, f));
        Set<Kind> kinds = options.lines() == StillOptions.Lines.ALL
                ? WHOLE_SET
                : first.isPresent() ? EnumSet.noneOf(Kind.class) : WHEN_GOOD;
        List<PinnedWords> pinned = written.stream()
                .filter(w ->
                        w.onStill() && w.view() == view && !Plain.line(w.text()).isBlank())
                .map(w -> w.saying(Plain.line(w.text())))
                .toList();
        Rectangle2D shown = shown(assessment, view, picture, first, pinned);
        double around = shown.getWidth() < picture.getWidth() ? AROUND : 1;
        PictureFrame placed = PictureFrame.of(part(shown, frame, around), frame, covered);
        return new StillPicture(view, placed, new StillOverlay(assessment, words, view, placed, first, kinds, pinned));
    }

    /** Whether the view has the line that shows a finding. */
    static boolean isSeen(Assessment assessment, View view, Finding finding) {
        return OverlayShapes.of(assessment, view).stream()
                .anyMatch(l -> l.kind() == OverlayShapes.shows(finding.kind()));
    }

    /** What must not be cut off: the player from cap to shoes as far as known, and the line that shows the first thing, what the coach wrote on it. */
    private static Rectangle2D shown(
            Assessment assessment,
            View view,
            BufferedImage picture,
            Optional<Finding> first,
            List<PinnedWords> pinned) {
        Rectangle2D whole = new Rectangle2D.Double(0, 0, picture.getWidth(), picture.getHeight());
        ViewMarks marks =
                assessment.sheet().view(view).orElse(ViewMarks.empty(view, picture.getWidth(), picture.getHeight()));
        Posture posture = assessment.posture();
        List<ImagePoint> points = new ArrayList<>(BodyPoints.of(posture, marks));
        boolean feet = posture.has(Landmark.LEAD_HEEL) || posture.has(Landmark.LEAD_TOE);
        boolean shoulders = posture.has(Landmark.LEAD_SHOULDER);
        if (points.isEmpty() || view != View.TEE && !(feet && shoulders)) {
            return whole;
        }
        first.ifPresent(f -> OverlayShapes.of(assessment, view).stream()
                .filter(l -> l.kind() != Kind.TARGET
                        && OverlayShapes.mattersFor(f.kind()).contains(l.kind()))
                .forEach(l -> points.addAll(l.points())));
        pinned.forEach(w -> points.addAll(List.of(w.at(), w.stand())));
        if (view != View.TEE && !posture.has(Landmark.HEAD_CENTRE)) {
            var shoulder = posture.at(Landmark.LEAD_SHOULDER);
            posture.seen(view, shoulder.plus(0, 0, shoulder.u() * HEAD_OVER_SHOULDERS))
                    .ifPresent(points::add);
        }
        return BodyPoints.box(points).createIntersection(whole);
    }

    /** A part in the frame's shape with room around what is shown; where the picture ends, it goes beyond. */
    private static Rectangle2D part(Rectangle2D shown, Rectangle2D frame, double around) {
        double shape = frame.getWidth() / frame.getHeight();
        double height = Math.max(shown.getHeight(), shown.getWidth() / shape) * around;
        return new Rectangle2D.Double(
                shown.getCenterX() - height * shape / 2, shown.getCenterY() - height / 2, height * shape, height);
    }

    /** Whether a gauge beside the picture has its lower end on the right, as what it tells of lies in the picture. */
    boolean turned(ReadingKind kind, Handedness handedness) {
        boolean right = handedness == Handedness.RIGHT;
        return switch (kind) {
            case BALL_TO_LEAD_SHOULDER,
                    BALL_IN_STANCE,
                    BALL_TO_LEAD_HEEL,
                    LEAD_FOOT_OUTSIDE_SHOULDER,
                    HEAD_TO_BALL,
                    SHAFT_LEAN -> view == View.FACE_ON && !right;
            case SIDE_BEND -> view == View.FACE_ON && right;
            case FEET_TO_TARGET, SHOULDERS_TO_TARGET, SHOULDERS_TO_FEET, BALL_DISTANCE ->
                view == View.DOWN_THE_LINE && right;
            case FORWARD_BEND -> view == View.DOWN_THE_LINE && !right;
            default -> false;
        };
    }

    void paint(Graphics2D g) {
        picture.paint(g);
        overlay.paint(g);
    }
}
