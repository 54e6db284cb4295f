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
 * they are kept with they do not. Runs for a few seconds: never on the interface thread.
 */
public final class ShiftedFrame {

    /** That far a player who stands still does not move, pixels per 1000 px of the picture's height. */
    private static final double MOVED_PER_1000 = 12;

    /** A point counts by how far it leads away, up to that many times as far: a stray one does not decide. */
    private static final double MOST_COUNTED = 2;

    private static final int LEAST_MOVED = 2;

    /** That many times as much from the address as from the frame they are kept with. */
    private static final double CLEARLY_MORE = 1.5;

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
        List<Double> fromAddress = moved(clip, at, kept, points, progress);
        List<Double> fromKept = moved(clip, kept, at, points, progress);
        return fromAddress.size() >= LEAST_MOVED && sum(fromAddress) >= CLEARLY_MORE * sum(fromKept)
                ? Optional.of(clip.seconds(at))
                : Optional.empty();
    }

    private static double sum(List<Double> moved) {
        return moved.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** How far the points lead away from where they were, while they can be followed; of those that do. */
    private static List<Double> moved(Clip clip, int from, int to, List<ImagePoint> points, Progress progress)
            throws ClipException {
        double farPx = MOVED_PER_1000 * clip.info().height() / 1000;
        Optional<List<Track>> tracks = Follow.to(clip, from, to, points, progress);
        return tracks.stream()
                .flatMap(List::stream)
                .map(t -> farthestPx(t) / farPx)
                .filter(times -> times > 1)
                .map(times -> Math.min(MOST_COUNTED, times))
                .toList();
    }

    private static double farthestPx(Track track) {
        return track.steps().stream()
                .mapToDouble(s -> s.at().distancePx(track.mark()))
                .max()
                .orElse(0);
    }
}
