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
        List<Shaft> bars = new ArrayList<>();
        for (Stroke stroke : likely) {
            bar(stroke).ifPresent(bars::add);
        }
        if (bars.isEmpty()) {
            return Optional.empty();
        }
        Shaft best =
                bars.stream().max(Comparator.comparingDouble(Shaft::lengthPx)).orElseThrow();
        boolean rival = bars.stream().anyMatch(b -> angle(best, b) > OTHER_RAD && b.lengthPx() > 0.8 * best.lengthPx());
        return Optional.of(new Shaft(best.hands, best.low, best.sigmaPx, rival));
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

    private Optional<Shaft> bar(Stroke stroke) {
        StraightLine line = StraightLine.through(stroke.upper(), stroke.lower());
        double from = Math.max(0, line.place(hands).s() + 0.1 * span);
        ImagePoint high = line.at(from, 0);
        return EdgeSnap.along(frame, high, stroke.lower())
                .filter(l -> l.barWidthPx().isPresent() && l.barWidthPx().getAsDouble() < Math.max(3, WIDEST * span))
                .map(l -> {
                    StraightLine found = StraightLine.through(l.from(), l.to());
                    return new Shaft(found.at(found.place(hands).s(), 0), l.to(), l.endSigmaPx(), false);
                });
    }

    private static double angle(Shaft a, Shaft b) {
        double turn = StraightLine.through(a.hands, a.low).angleRad()
                - StraightLine.through(b.hands, b.low).angleRad();
        return Math.abs(turn);
    }
}
