package org.toeline.desk.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.Track;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Mark;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.ViewMarks;

/**
 * What is marked on a view, taken to another frame of it. A mark of the body or the ball that could not be followed is taken
 * away, to be placed anew; what lies on the ground or stands upright stays where it is, as the camera does.
 *
 * @param marks on the other frame
 * @param words of all views; those about what could not be followed stay where they are and off the still
 * @param lost  what has to be placed anew
 */
public record FollowedMarks(ViewMarks marks, List<PinnedWords> words, List<Item> lost) {

    public FollowedMarks {
        words = List.copyOf(words);
        lost = List.copyOf(lost);
    }

    /** The points to be followed: the marks of the body, then the points on the ground, then the ball, then what words are about. */
    public static List<ImagePoint> points(ViewMarks view, List<PinnedWords> words) {
        List<ImagePoint> points = new ArrayList<>();
        view.marks().forEach(m -> points.add(m.at()));
        view.floorMarks().forEach(m -> points.add(m.at()));
        view.ball().ifPresent(b -> points.add(b.centre()));
        words.stream().filter(w -> w.view() == view.view()).forEach(w -> points.add(w.at()));
        return points;
    }

    /** Nothing marked; the lens stays known. */
    public static ViewMarks none(ViewMarks view) {
        return ViewMarks.empty(view.view(), view.widthPx(), view.heightPx()).withLens(view.lens());
    }

    /** @param tracks of {@link #points}, in their order, up to the frame at {@code seconds} */
    public static FollowedMarks of(ViewMarks view, List<PinnedWords> words, List<Track> tracks, double seconds) {
        ViewMarks there = view;
        List<Item> lost = new ArrayList<>();
        int i = 0;
        for (Mark mark : view.marks()) {
            Track track = tracks.get(i++);
            Optional<ImagePoint> at = at(track, seconds);
            if (at.isPresent()) {
                there = there.withMark(
                        new Mark(mark.landmark(), at.get(), sigma(mark.sigmaPx(), track), mark.origin()));
            } else {
                there = there.withoutMark(mark.landmark());
                lost.add(new Item.OfLandmark(mark.landmark()));
            }
        }
        for (FloorMark mark : view.floorMarks()) {
            Track track = tracks.get(i++);
            Optional<ImagePoint> at = at(track, seconds);
            if (at.isPresent()) {
                there = there.withFloorMark(new FloorMark(mark.pointId(), at.get(), sigma(mark.sigmaPx(), track)));
            }
        }
        if (view.ball().isPresent()) {
            BallMark ball = view.ball().get();
            Track track = tracks.get(i);
            there = there.withBall(at(track, seconds)
                    .map(p ->
                            new BallMark(p, ball.diameterPx(), sigma(ball.sigmaPx(), track), ball.diameterSigmaPx())));
            if (there.ball().isEmpty()) {
                lost.add(Item.BALL);
            }
        }
        return new FollowedMarks(there, moved(view, words, tracks, seconds), lost);
    }

    private static List<PinnedWords> moved(
            ViewMarks view, List<PinnedWords> words, List<Track> tracks, double seconds) {
        int track = points(view, List.of()).size();
        List<PinnedWords> moved = new ArrayList<>();
        for (PinnedWords w : words) {
            moved.add(
                    w.view() == view.view()
                            ? at(tracks.get(track++), seconds)
                                    .map(to -> w.moved(to).within(view.widthPx(), view.heightPx()))
                                    .orElse(w.onStill(false))
                            : w);
        }
        return moved;
    }

    private static Optional<ImagePoint> at(Track track, double seconds) {
        return track.held()
                ? track.steps().stream()
                        .filter(s -> s.seconds() == seconds)
                        .map(Track.Step::at)
                        .findFirst()
                : Optional.empty();
    }

    /** Following adds what it cannot see. */
    private static double sigma(double sigmaPx, Track track) {
        return Math.hypot(sigmaPx, track.noisePx());
    }
}
