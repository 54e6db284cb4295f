package org.toeline.desk.records;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;

/**
 * The address frames of a lesson of the ledger: out of its clips, else out of what was kept of them. Reads files and decodes;
 * off the interface thread.
 *
 * @param place where copied clips and kept frames are
 */
public record LessonFrames(KeptLesson kept, List<Take> takes, LedgerPlace.Folder place) {

    /** A frame is decoded once: nothing is to be kept beside it. */
    private static final long CACHE_BYTES = 1L << 20;

    public LessonFrames {
        takes = List.copyOf(takes);
    }

    /**
     * A view's address frame.
     *
     * @param remark  why there is none; empty when all is well
     * @param missing the clip, when it is not where it was
     */
    public record Found(Optional<BufferedImage> picture, String remark, Optional<Take> missing) {}

    /** The frames that are found. */
    public Map<View, BufferedImage> pictures() {
        Map<View, BufferedImage> found = new EnumMap<>(View.class);
        for (ViewMarks marks : kept.lesson().sheet().views()) {
            of(marks).picture().ifPresent(p -> found.put(marks.view(), p));
        }
        return found;
    }

    /** The frame that a view was marked on. */
    public Found of(ViewMarks marks) {
        Optional<Take> take =
                takes.stream().filter(t -> t.view() == marks.view()).findFirst();
        try {
            return found(take, marks);
        } catch (IOException e) {
            return new Found(
                    Optional.empty(), Texts.of("across.still.unreadable", String.valueOf(e.getMessage())), take);
        }
    }

    private Found found(Optional<Take> take, ViewMarks marks) throws IOException {
        Optional<Path> clip =
                take.isEmpty() ? Optional.empty() : new Media(place.media()).locate(take.get(), place.folder());
        String trouble = Texts.of("across.still.missing");
        if (clip.isPresent()) {
            try {
                BufferedImage picture = decoded(clip.get(), take.get());
                if (fits(picture, marks)) {
                    return new Found(Optional.of(picture), "", Optional.empty());
                }
                trouble = Texts.of("across.still.other", clip.get().getFileName());
            } catch (ClipException e) {
                trouble = e.getMessage();
            }
        }
        Optional<BufferedImage> left =
                AddressFrames.read(place, kept.id(), marks.view()).filter(p -> fits(p, marks));
        return new Found(
                left,
                left.isPresent() ? "" : Objects.requireNonNull(trouble),
                clip.isPresent() ? Optional.empty() : take);
    }

    private static BufferedImage decoded(Path file, Take take) throws ClipException {
        try (Clip clip = Clip.open(file, CACHE_BYTES)) {
            return clip.frameAt(take.seconds().orElse(clip.info().startSeconds()))
                    .toImage();
        }
    }

    private static boolean fits(BufferedImage picture, ViewMarks marks) {
        return picture.getWidth() == marks.widthPx() && picture.getHeight() == marks.heightPx();
    }
}
