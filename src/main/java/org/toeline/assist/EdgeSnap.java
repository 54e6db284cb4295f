package org.toeline.assist;

import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.assist.LineSearch.Found;
import org.toeline.assist.LineSearch.Kind;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/**
 * Brings a rough drag onto the straight edge it was meant for: a rod, the shaft, a door post, the side of a mat. Where
 * two opposite edges lie close together it is the middle between them that is meant: always of a thin bar, of a broader
 * one when the drag is nearer to its middle than to its edges. Colour counts, not brightness alone: an orange rod is as
 * bright as grass. Answers in some milliseconds; any thread.
 */
public final class EdgeSnap {

    /** How far a drag may lie off its line, pixels per 1000 px of the picture's longer side. */
    private static final double DRAG_REACH_PER_1000 = 12;
    /** Up to this width a bar is thin, and up to that it is one at all. */
    private static final double THIN_BAR_PER_1000 = 6;

    private static final double WIDEST_BAR_PER_1000 = 16;
    /** Around a drag, pixels: rods may go on beyond it. */
    private static final double AROUND_PX = 112;

    private static final double SHORTEST_DRAG_PX = 12;
    /** What coding leaves uncertain, pixels: seen on the sample clips. */
    private static final double FLOOR_PX = 0.1;
    /** A round bar narrower than this is seen as its darker side alone: its sheen is lost in the ground. */
    private static final double UNRESOLVED_PX = 2.8;

    private static final double UNRESOLVED_FLOOR_PX = 0.45;

    private final double per1000;
    private final Colours colours;
    private final LineSearch search;

    private EdgeSnap(Frame frame, ImagePoint from, ImagePoint to) {
        per1000 = Math.max(0.8, Math.max(frame.width(), frame.height()) / 1000.0);
        double margin = AROUND_PX + 2 * WIDEST_BAR_PER_1000 * per1000;
        colours = new Colours(
                frame,
                Math.min(from.xPx(), to.xPx()) - margin,
                Math.min(from.yPx(), to.yPx()) - margin,
                Math.max(from.xPx(), to.xPx()) + margin,
                Math.max(from.yPx(), to.yPx()) + margin);
        search = new LineSearch(colours, WIDEST_BAR_PER_1000 * per1000);
    }

    /** The line along a drag, as far as it lies in the picture; empty when there is none, or when the drag is shorter than 12 px. */
    public static Optional<SnappedLine> along(Frame frame, ImagePoint from, ImagePoint to) {
        return new EdgeSnap(frame, from, to).drag(from, to).flatMap(l -> l.within(frame.width(), frame.height()));
    }

    /** A rod's axis and both its ends from one drag along it; empty when no bar is there or it has no end near. */
    public static Optional<SnappedRod> rod(Frame frame, ImagePoint from, ImagePoint to) {
        return new EdgeSnap(frame, from, to).ends(from, to);
    }

    private Optional<SnappedLine> drag(ImagePoint from, ImagePoint to) {
        return search(from, to, 0, Optional.empty()).map(f -> {
            double a = f.line().place(from).s();
            double b = f.line().place(to).s();
            return line(f, (a + b) / 2, a, b);
        });
    }

    private Optional<SnappedRod> ends(ImagePoint from, ImagePoint to) {
        Optional<Found> found = search(from, to, 0.08, Optional.of(Kind.BAR));
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Found f = found.get();
        double a = f.line().place(from).s();
        double b = f.line().place(to).s();
        double margin = 0.15 * (b - a);
        RodEnds ends = new RodEnds(colours, f.line(), f.width(), a + margin, b - margin);
        double reach = Math.min(0.4 * (b - a), 2 * DRAG_REACH_PER_1000 * per1000 + 0.05 * (b - a));
        Optional<SnappedRod.End> first = ends.near(f.line(), a, -1, reach);
        Optional<SnappedRod.End> last = ends.near(f.line(), b, 1, reach);
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        double sigma = Math.hypot(FLOOR_PX, Math.max(f.fit().sigma(a), f.fit().sigma(b)));
        return Optional.of(new SnappedRod(first.get(), last.get(), sigma, f.width()));
    }

    private Optional<Found> search(ImagePoint from, ImagePoint to, double leftOut, Optional<Kind> only) {
        double length = from.distancePx(to);
        if (length < SHORTEST_DRAG_PX) {
            return Optional.empty();
        }
        double reach = Math.min(DRAG_REACH_PER_1000 * per1000, length / 3);
        double turn = Math.min(0.3, 2 * reach / length);
        StraightLine rough = StraightLine.through(from, to);
        double a = leftOut * length;
        double b = (1 - leftOut) * length;
        return only.isPresent()
                ? search.find(only.get(), rough, a, b, reach, turn)
                : meant(rough, from, to, a, b, reach, turn);
    }

    /** A thin bar; of a broad bar and an edge, the one nearer to where the hand was. */
    private Optional<Found> meant(
            StraightLine rough, ImagePoint from, ImagePoint to, double a, double b, double reach, double turn) {
        Optional<Found> bar = search.find(Kind.BAR, rough, a, b, reach, turn);
        if (bar.isPresent()
                && (bar.get().width() <= THIN_BAR_PER_1000 * per1000
                        || off(bar.get(), from, to) < bar.get().width() / 4)) {
            return bar;
        }
        Optional<Found> edge = search.find(Kind.EDGE, rough, a, b, reach, turn);
        return edge.isPresent() ? edge : bar;
    }

    private static double off(Found f, ImagePoint from, ImagePoint to) {
        return Math.abs(f.line().place(from).t() + f.line().place(to).t()) / 2;
    }

    private static SnappedLine line(Found f, double at, double from, double to) {
        double end = Math.max(f.fit().sigma(from), f.fit().sigma(to));
        double floor = f.kind() == Kind.BAR && f.width() < UNRESOLVED_PX ? UNRESOLVED_FLOOR_PX : FLOOR_PX;
        return new SnappedLine(
                f.line().at(at, 0),
                f.line().at(from, 0),
                f.line().at(to, 0),
                Math.hypot(floor, f.fit().sigma(at)),
                Math.hypot(floor, end),
                f.kind() == Kind.BAR ? OptionalDouble.of(f.width()) : OptionalDouble.empty());
    }
}
