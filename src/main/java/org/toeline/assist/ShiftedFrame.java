package org.toeline.assist;

import java.util.List;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Progress;

/**
 * Whether marks were placed on another frame than the one they are kept with. Placed at address and kept with a frame of the
 * swing, the marks of hands and club lie there on what is behind: followed from the address they move, followed from the frame
 * they are kept with they do not. What is lost in the blur before it has moved far, counts where it leaves its place bare: unlike
 * the address, and ever since the takeaway what the frame they are kept with shows there. Runs for a few seconds: never on the
 * interface thread.
 */
public final class ShiftedFrame {

    /** That far a player who stands still does not move, pixels per 1000 px of the picture's height. */
    private static final double MOVED_PER_1000 = 12;

    /** A point counts by how far it leads away, up to that many times as far: a stray one does not decide. */
    private static final double MOST_COUNTED = 2;

    private static final int LEAST_MOVED = 2;

    /** That many times as much from the address as from the frame they are kept with. */
    private static final double CLEARLY_MORE = 1.5;

    /** A place that something left looks the same from then on: before hands and club have reached where they go. */
    private static final double LEFT_WITHIN_S = 0.35;

    /** Longer than anything of the player rests in a swing. */
    private static final double BARE_S = 0.2;

    /** Where nothing of the player lies any more: that says more than any point that leads away. */
    private static final double BARE_COUNTED = 3;

    private static final double ALIKE = 0.8;
    private static final double UNLIKE = 0.5;

    private ShiftedFrame() {}

    /**
     * The address frame, where the marks rather belong; empty where they do not, or where it cannot be told.
     *
     * @param keptS  the frame they are kept with
     * @param points of the body, where they are marked
     */
    public static Optional<Double> belongsTo(
            Clip clip, double keptS, List<StillSpan> moments, List<ImagePoint> points, Progress progress)
            throws ClipException {
        boolean still = moments.stream().anyMatch(m -> m.startSeconds() <= keptS && keptS <= m.endSeconds());
        // of several swings, the one that the frame is nearest to
        Optional<StillSpan> address = moments.stream()
                .min((a, b) ->
                        Double.compare(Math.abs(a.addressSeconds() - keptS), Math.abs(b.addressSeconds() - keptS)));
        if (still || address.isEmpty() || points.size() < LEAST_MOVED) {
            return Optional.empty();
        }
        int kept = clip.indexAt(keptS);
        int at = clip.indexAt(address.get().addressSeconds());
        double farPx = MOVED_PER_1000 * clip.info().height() / 1000;
        List<Track> tracks = tracks(clip, at, kept, points, progress);
        List<Double> fromAddress = moved(tracks, farPx);
        List<Double> fromKept = moved(tracks(clip, kept, at, points, progress), farPx);
        List<ImagePoint> lost = tracks.stream()
                .filter(t -> t.outcome() == Track.Outcome.LOST && farthestPx(t) <= farPx)
                .map(Track::mark)
                .toList();
        int bare = bare(clip, at, address.get().endSeconds(), kept, lost, progress);
        return fromAddress.size() + bare >= LEAST_MOVED
                        && sum(fromAddress) + BARE_COUNTED * bare >= CLEARLY_MORE * sum(fromKept)
                ? Optional.of(clip.seconds(at))
                : Optional.empty();
    }

    private static double sum(List<Double> moved) {
        return moved.stream().mapToDouble(Double::doubleValue).sum();
    }

    private static List<Track> tracks(Clip clip, int from, int to, List<ImagePoint> points, Progress progress)
            throws ClipException {
        return Follow.to(clip, from, to, points, progress).orElse(List.of());
    }

    /** How far the points lead away from where they were, while they can be followed; of those that do. */
    private static List<Double> moved(List<Track> tracks, double farPx) {
        return tracks.stream()
                .map(t -> farthestPx(t) / farPx)
                .filter(times -> times > 1)
                .map(times -> Math.min(MOST_COUNTED, times))
                .toList();
    }

    /** How many of the points were left bare in the takeaway, and are so until the frame they are kept with. */
    private static int bare(Clip clip, int at, double takeawayS, int kept, List<ImagePoint> points, Progress progress)
            throws ClipException {
        double slowed = clip.slowMotion().factor();
        double fromS = takeawayS + LEFT_WITHIN_S * slowed;
        if (clip.seconds(kept) - fromS < BARE_S * slowed) {
            return 0;
        }
        Grey there = Grey.of(clip.frame(kept));
        Grey address = Grey.of(clip.frame(at));
        List<ImagePoint> bare = points.stream()
                .filter(p -> address.likeness(p, there, p) < UNLIKE)
                .toList();
        int from = clip.indexAt(fromS);
        int count = Math.min(Follow.MOST_FRAMES, kept - from);
        for (int k = 0; k < count && !bare.isEmpty(); k++) {
            if (progress.at((double) k / count) == Progress.Step.STOP) {
                return 0;
            }
            Grey before = Grey.of(clip.frame(from + (int) ((long) (kept - from) * k / count)));
            bare = bare.stream()
                    .filter(p -> before.likeness(p, there, p) >= ALIKE)
                    .toList();
        }
        return bare.size();
    }

    private static double farthestPx(Track track) {
        return track.steps().stream()
                .mapToDouble(s -> s.at().distancePx(track.mark()))
                .max()
                .orElse(0);
    }
}
