package org.toeline.desk.across;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.toeline.camera.Camera;
import org.toeline.desk.records.LessonFrames;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.paint.BallPlane;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;

/**
 * Where a lesson's address frame comes from: out of its clip, else out of what was kept of it. Reads files and decodes; off the
 * interface thread.
 *
 * @param place where copied clips and kept frames are
 */
record StillSource(KeptLesson kept, List<Take> takes, LedgerPlace.Folder place) {

    private static final double PX_PER_M = 400;

    /**
     * What there is of a lesson to look at.
     *
     * @param picture brought into the plane
     * @param remark  why there is no picture, or whence it is; empty when all is well
     * @param missing the clip, when it is not where it was
     */
    record Still(
            int lessonId,
            BallPlane plane,
            Optional<Posture> figure,
            Optional<BufferedImage> picture,
            String remark,
            Optional<Take> missing) {}

    Still of(View view) {
        BallPlane plane = new BallPlane(view, kept.lesson().sheet().handedness(), PX_PER_M);
        Optional<ViewMarks> marks = kept.lesson().sheet().view(view);
        Posture posture = PostureEstimator.estimate(kept.lesson().sheet());
        Optional<Camera> camera = posture.camera(view);
        if (marks.isEmpty() || camera.isEmpty()) {
            return new Still(
                    kept.id(),
                    plane,
                    Optional.empty(),
                    Optional.empty(),
                    Texts.of("across.still.unmarked"),
                    Optional.empty());
        }
        if (!posture.hasBall()) {
            return new Still(
                    kept.id(),
                    plane,
                    Optional.empty(),
                    Optional.empty(),
                    Texts.of("across.still.no-ball"),
                    Optional.empty());
        }
        LessonFrames.Found frame = new LessonFrames(kept, takes, place).of(marks.get());
        return new Still(
                kept.id(),
                plane,
                Optional.of(posture),
                frame.picture().map(p -> plane.warp(p, camera.get())),
                frame.remark(),
                frame.missing());
    }
}
