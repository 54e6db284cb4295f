package org.toeline.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/**
 * The club's shaft: a thin bar that comes out of the hands and leads down to the ground before the feet. A crease of
 * trousers is an edge and no bar, a post passes the hands by. Shares are of the span from nose to soles.
 */
final class ShaftSearch {

    /**
     * A shaft.
     *
     * @param hands   the place on it nearest to the middle of the hands
     * @param low     as far down as it is seen
     * @param sigmaPx of its line where it leaves the hands, across it
     * @param rival   whether another bar could be it
     */
    record Shaft(ImagePoint hands, ImagePoint low, double sigmaPx, boolean rival) {

        double lengthPx() {
            return hands.distancePx(low);
        }

        /** The place on its line at a height of the picture. */
        ImagePoint atRow(double yPx) {
            double share = (yPx - hands.yPx()) / (low.yPx() - hands.yPx());
            return new ImagePoint(hands.xPx() + share * (low.xPx() - hands.xPx()), yPx);
        }
    }

    /** @param seenPx how much of it is seen: a rod that lies in line with the hands begins far below them */
    private record Bar(Shaft shaft, double seenPx) {}

    private static final double PAST_THE_HANDS = 0.045;
    private static final double SHORTEST = 0.13;
    private static final double REACHES_DOWN = 0.28;
    /** A shaft may go on in line with an arm above the hands. */
    private static final double ARMS_IN_LINE = 0.35;
    /** Hands and grip hide so much of it at most; the edge of a mat that points at the hands is further off. */
    private static final double BEGINS_WITHIN = 0.4;

    private static final double ENDS_WITHIN = 1.1;
    private static final double LEAST_STEEPNESS_RAD = Math.toRadians(22);
    /** The widest that a shaft or its grip is drawn. */
    private static final double WIDEST = 0.022;

    private static final int MOST_TRIED = 8;
    private static final double OTHER_RAD = Math.toRadians(3);

    private final Frame frame;
    private final ImagePoint hands;
    private final double span;

    ShaftSearch(Frame frame, Seen seen) {
        this.frame = frame;
        this.span = PoseSearch.span(seen);
        this.hands = hands(seen);
    }

    /** The middle of both hands. */
    static ImagePoint hands(Seen seen) {
        double x = 0;
        double y = 0;
        for (int i = 15; i <= 20; i++) { // wrists, then the knuckles of the small and of the index finger
            x += seen.points()[i].xPx() / 6;
            y += seen.points()[i].yPx() / 6;
        }
        return new ImagePoint(x, y);
    }

    Optional<Shaft> in(List<Stroke> strokes) {
        List<Stroke> likely = strokes.stream()
                .filter(this::leadsDownFromTheHands)
                .sorted(Comparator.comparingDouble(Stroke::lengthPx).reversed())
                .limit(MOST_TRIED)
                .toList();
        List<Bar> bars = new ArrayList<>();
        for (Stroke stroke : likely) {
            bar(stroke).ifPresent(bars::add);
        }
        if (bars.isEmpty()) {
            return Optional.empty();
        }
        Bar best = bars.stream().max(Comparator.comparingDouble(Bar::seenPx)).orElseThrow();
        boolean rival =
                bars.stream().anyMatch(b -> angle(best.shaft, b.shaft) > OTHER_RAD && b.seenPx > 0.8 * best.seenPx);
        return Optional.of(new Shaft(best.shaft.hands, best.shaft.low, best.shaft.sigmaPx, rival));
    }

    /** The same one in another frame. */
    Optional<Shaft> again(Shaft shaft) {
        return bar(new Stroke(shaft.hands(), shaft.low())).map(Bar::shaft);
    }

    private boolean leadsDownFromTheHands(Stroke stroke) {
        StraightLine line = StraightLine.through(stroke.upper(), stroke.lower());
        StraightLine.Place at = line.place(hands);
        return stroke.lengthPx() > SHORTEST * span
                && stroke.steepnessRad() > LEAST_STEEPNESS_RAD
                && Math.abs(at.t()) < PAST_THE_HANDS * span
                && stroke.lower().yPx() - hands.yPx() > REACHES_DOWN * span
                && stroke.upper().yPx() - hands.yPx() > -ARMS_IN_LINE * span
                && stroke.upper().distancePx(hands) < BEGINS_WITHIN * span
                && stroke.lower().distancePx(hands) < ENDS_WITHIN * span;
    }

    private Optional<Bar> bar(Stroke stroke) {
        StraightLine line = StraightLine.through(stroke.upper(), stroke.lower());
        double from = Math.max(0, line.place(hands).s() + 0.1 * span);
        return EdgeSnap.along(frame, line.at(from, 0), stroke.lower())
                .filter(l -> l.barWidthPx().isPresent() && l.barWidthPx().getAsDouble() < Math.max(3, WIDEST * span))
                .map(l -> {
                    StraightLine found = StraightLine.through(l.from(), l.to());
                    ImagePoint high = found.at(found.place(hands).s(), 0);
                    return new Bar(
                            new Shaft(high, l.to(), l.endSigmaPx(), false),
                            l.from().distancePx(l.to()));
                });
    }

    private static double angle(Shaft a, Shaft b) {
        double turn = StraightLine.through(a.hands, a.low).angleRad()
                - StraightLine.through(b.hands, b.low).angleRad();
        return Math.abs(turn);
    }
}
