package org.toeline.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.Track.Outcome;
import org.toeline.assist.Track.Step;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;
import org.toeline.video.Progress;

/**
 * Follows marks through the span in which the player stands still. Every frame is compared with the marked one itself,
 * not with its neighbour, so errors do not add up; a mark is given up when following it back does not end where it
 * began, when what it shows no longer looks alike, or when there is nothing to hold on to. Runs for a second or so:
 * never on the interface thread.
 */
public final class Follow {

    /** Frames looked at, at most, spread evenly over the span. */
    static final int MOST_FRAMES = 48;
    /** How far there and back may miss the mark, pixels. */
    private static final double MOST_GAP_PX = 0.5;
    /** The least correlation of what lies around the mark between the two frames. */
    private static final double LEAST_LIKENESS = 0.75;
    /** Farther than this a player who stands still does not move, pixels per 1000 px of the picture's height. */
    private static final double MOST_MOVE_PER_1000 = 40;
    /** One bad frame in this many is passed over. */
    private static final int FRAMES_PER_MISS = 8;

    /** Frames by their place. */
    private interface Source {
        Frame frame(int place) throws ClipException;
    }

    private final Source source;
    private final Grey marked;
    private final List<ImagePoint> marks;
    private final Outcome[] outcome;
    private final int[] misses;
    private final double[] gaps;
    private final List<List<Step>> steps = new ArrayList<>();

    private Follow(Source source, Frame marked, List<ImagePoint> marks) {
        this.source = source;
        this.marked = Grey.of(marked);
        this.marks = marks;
        this.outcome = new Outcome[marks.size()];
        this.misses = new int[marks.size()];
        this.gaps = new double[marks.size()];
        for (int i = 0; i < marks.size(); i++) {
            outcome[i] = inside(marks.get(i)) ? Outcome.HELD : Outcome.OUTSIDE;
            steps.add(new ArrayList<>(List.of(new Step(marked.seconds(), marks.get(i)))));
        }
    }

    /**
     * Follows marks of one frame through the still span around it.
     *
     * @param markedSeconds the frame the marks were placed on
     * @param progress      may stop the work: the answer is then empty
     * @return a track for each mark, in the same order
     */
    public static Optional<List<Track>> through(
            Clip clip, StillSpan span, double markedSeconds, List<ImagePoint> marks, Progress progress)
            throws ClipException {
        int at = clip.indexAt(markedSeconds);
        int from = Math.min(at, clip.indexAt(span.startSeconds()));
        int to = Math.max(at, clip.indexAt(span.endSeconds()));
        int stride = Math.max(1, (to - from + MOST_FRAMES - 1) / MOST_FRAMES);
        Follow follow = new Follow(clip::frame, clip.frame(at), marks);
        return follow.both(at, from, to, stride, progress);
    }

    /**
     * Follows marks of one frame to another, earlier or later, which is looked at in any case.
     *
     * @param from     the frame the marks were placed on
     * @param progress may stop the work: the answer is then empty
     * @return a track for each mark, in the same order
     */
    public static Optional<List<Track>> to(Clip clip, int from, int to, List<ImagePoint> marks, Progress progress)
            throws ClipException {
        Follow follow = new Follow(clip::frame, clip.frame(from), marks);
        int count = Math.min(MOST_FRAMES, Math.abs(to - from));
        List<ImagePoint> guesses = marks;
        for (int k = 1; k <= count; k++) {
            if (progress.at((double) k / count) == Progress.Step.STOP) {
                return Optional.empty();
            }
            guesses = follow.step(clip.frame(from + (int) ((long) (to - from) * k / count)), guesses);
        }
        return Optional.of(follow.tracks(count));
    }

    /** The same over a list of frames in the order of time. */
    static List<Track> through(List<Frame> frames, int marked, List<ImagePoint> marks) throws ClipException {
        return new Follow(frames::get, frames.get(marked), marks)
                .both(marked, 0, frames.size() - 1, 1, Progress.NONE)
                .orElseThrow();
    }

    /** How much the marks moved that were held to the end; empty when there is none. */
    public static Optional<Sway> sway(List<Track> tracks) {
        List<Track> held =
                tracks.stream().filter(t -> t.held() && t.steps().size() > 1).toList();
        if (held.isEmpty()) {
            return Optional.empty();
        }
        double across = 0;
        double up = 0;
        for (Track t : held) {
            double noise = t.noisePx() * t.noisePx() / 4;
            across += Math.pow(t.spreadXPx().orElseThrow(), 2) - noise;
            up += Math.pow(t.spreadYPx().orElseThrow(), 2) - noise;
        }
        return Optional.of(new Sway(
                Math.sqrt(Math.max(0, across / held.size())), Math.sqrt(Math.max(0, up / held.size())), held.size()));
    }

    private Optional<List<Track>> both(int at, int from, int to, int stride, Progress progress) throws ClipException {
        int all = Math.max(1, (to - from) / stride);
        int done = 0;
        for (int way = -1; way <= 1; way += 2) {
            List<ImagePoint> guesses = marks;
            for (int i = at + way * stride; i >= from && i <= to; i += way * stride) {
                if (progress.at(Math.min(1, (double) done++ / all)) == Progress.Step.STOP) {
                    return Optional.empty();
                }
                guesses = step(source.frame(i), guesses);
            }
        }
        return Optional.of(tracks(done));
    }

    /** One frame more; where each mark was, as the next frame's guess. */
    private List<ImagePoint> step(Frame frame, List<ImagePoint> guesses) {
        Grey other = Grey.of(frame);
        List<Flow.To> there = Flow.follow(marked, other, marks, guesses);
        List<Flow.To> back =
                Flow.follow(other, marked, there.stream().map(Flow.To::at).toList(), marks);
        List<ImagePoint> next = new ArrayList<>(guesses);
        for (int i = 0; i < marks.size(); i++) {
            ImagePoint at = there.get(i).at();
            double gap = back.get(i).at().distancePx(marks.get(i));
            if (outcome[i] != Outcome.HELD) {
                continue;
            }
            if (!there.get(i).seen()) {
                outcome[i] = inside(at) ? Outcome.NOTHING_TO_HOLD : Outcome.OUTSIDE;
            } else if (!inside(at)) {
                outcome[i] = Outcome.OUTSIDE;
            } else if (believable(i, other, at, gap) && back.get(i).seen()) {
                steps.get(i).add(new Step(frame.seconds(), at));
                gaps[i] += gap * gap;
                next.set(i, at);
            } else {
                misses[i]++;
            }
        }
        return next;
    }

    private boolean believable(int i, Grey other, ImagePoint at, double gap) {
        return gap <= MOST_GAP_PX
                && at.distancePx(marks.get(i)) <= MOST_MOVE_PER_1000 * marked.height() / 1000
                && marked.likeness(marks.get(i), other, at) >= LEAST_LIKENESS;
    }

    private boolean inside(ImagePoint p) {
        double edge = Flow.WINDOW / 4.0;
        return p.xPx() > edge && p.yPx() > edge && p.xPx() < marked.width() - edge && p.yPx() < marked.height() - edge;
    }

    private List<Track> tracks(int frames) {
        List<Track> tracks = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            List<Step> own = steps.get(i);
            own.sort(Comparator.comparingDouble(Step::seconds));
            Outcome how =
                    outcome[i] == Outcome.HELD && misses[i] > frames / FRAMES_PER_MISS ? Outcome.LOST : outcome[i];
            tracks.add(new Track(marks.get(i), how, own, Math.sqrt(gaps[i] / Math.max(1, own.size() - 1))));
        }
        return tracks;
    }
}
