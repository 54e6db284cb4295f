package org.toeline.desk.across;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.toeline.camera.Camera;
import org.toeline.desk.Texts;
import org.toeline.desk.records.AddressFrames;
import org.toeline.handout.BallPlane;
import org.toeline.ledger.store.KeptLesson;
import org.toeline.ledger.store.LedgerPlace;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.Take;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;

/**
 * Where a lesson's address frame comes from: out of its clip, else out of what was kept of it. Reads files and decodes; off the
 * interface thread.
 *
 * @param place where copied clips and kept frames are
 */
record StillSource(KeptLesson kept, List<Take> takes, LedgerPlace.Folder place) {

    /** A frame is decoded once: nothing is to be kept beside it. */
    private static final long CACHE_BYTES = 1L << 20;
    private static final double PX_PER_M = 400;

    /**
     * What there is of a lesson to look at.
     *
     * @param picture brought into the plane
     * @param remark  why there is no picture, or whence it is; empty when all is well
     * @param missing the clip, when it is not where it was
     */
    record Still(int lessonId, BallPlane plane, Optional<Posture> figure, Optional<BufferedImage> picture, String remark,
                 Optional<Take> missing) {
    }

    /** A picture in its own shape, and what is to be said of it. */
    private record Frame(Optional<BufferedImage> picture, String remark, Optional<Take> missing) {
    }

    Still of(View view) {
        BallPlane plane = new BallPlane(view, kept.lesson().sheet().handedness(), PX_PER_M);
        Optional<ViewMarks> marks = kept.lesson().sheet().view(view);
        Posture posture = PostureEstimator.estimate(kept.lesson().sheet());
        Optional<Camera> camera = posture.camera(view);
        if (marks.isEmpty() || camera.isEmpty()) {
            return new Still(kept.id(), plane, Optional.empty(), Optional.empty(), Texts.of("across.still.unmarked"),
                    Optional.empty());
        }
        if (!posture.hasBall()) {
            return new Still(kept.id(), plane, Optional.empty(), Optional.empty(), Texts.of("across.still.no-ball"),
                    Optional.empty());
        }
        Frame frame = frame(view, marks.get());
        return new Still(kept.id(), plane, Optional.of(posture), frame.picture.map(p -> plane.warp(p, camera.get())),
                frame.remark, frame.missing);
    }

    private Frame frame(View view, ViewMarks marks) {
        Optional<Take> take = takes.stream().filter(t -> t.view() == view).findFirst();
        try {
            return frame(take, marks);
        } catch (IOException e) {
            return new Frame(Optional.empty(), Texts.of("across.still.unreadable", String.valueOf(e.getMessage())), take);
        }
    }

    private Frame frame(Optional<Take> take, ViewMarks marks) throws IOException {
        Optional<Path> clip = take.isEmpty() ? Optional.empty()
                : new Media(place.media()).locate(take.get(), place.folder());
        String trouble = Texts.of("across.still.missing");
        if (clip.isPresent()) {
            try {
                BufferedImage picture = decoded(clip.get(), take.get());
                if (fits(picture, marks)) {
                    return new Frame(Optional.of(picture), "", Optional.empty());
                }
                trouble = Texts.of("across.still.other", clip.get().getFileName());
            } catch (ClipException e) {
                trouble = e.getMessage();
            }
        }
        Optional<BufferedImage> left = AddressFrames.read(place, kept.id(), marks.view()).filter(p -> fits(p, marks));
        return new Frame(left, left.isPresent() ? "" : trouble, clip.isPresent() ? Optional.empty() : take);
    }

    private static BufferedImage decoded(Path file, Take take) throws ClipException {
        try (Clip clip = Clip.open(file, CACHE_BYTES)) {
            return clip.frameAt(take.seconds().orElse(clip.info().startSeconds())).toImage();
        }
    }

    private static boolean fits(BufferedImage picture, ViewMarks marks) {
        return picture.getWidth() == marks.widthPx() && picture.getHeight() == marks.heightPx();
    }
}
