package org.toeline.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Mark;
import org.toeline.mark.VerticalMark;
import org.toeline.video.Frame;

/** Edges of posts and the like beside the player that agree with one another. Shares are of the span. */
final class UprightSearch {

    private static final double ONE_EDGE_PX = 6;
    private static final double SHORTEST_UPRIGHT = 0.35;

    private static final double PLUMB_RAD = Math.toRadians(9);
    private static final int MOST_UPRIGHT_STROKES = 10;
    /** Uprights lean together: what leans by more from the others' course is a rope, an arm, a slope. */
    private static final double AGREE_RAD = Math.toRadians(0.6);

    /** How far frames and posts are from plumb and their edges from straight, pixels: measured on drawn ones. */
    private static final double EDGE_PX = 0.3;

    private final Frame frame;
    private final double span;
    private final double left;
    private final double right;

    UprightSearch(Frame frame, Seen seen) {
        this.frame = frame;
        this.span = PoseSearch.span(seen);
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int i = 0; i < 33; i++) {
            least = Math.min(least, seen.points()[i].xPx());
            most = Math.max(most, seen.points()[i].xPx());
        }
        left = least - 0.08 * span;
        right = most + 0.08 * span;
    }

    /** Two at least that lean alike: one alone may be anything. */
    List<VerticalMark> in(List<Stroke> strokes) {
        List<VerticalMark> all = new ArrayList<>();
        strokes.stream()
                .filter(s -> s.lengthPx() > SHORTEST_UPRIGHT * span
                        && s.steepnessRad() > Math.PI / 2 - PLUMB_RAD
                        && !(middleX(s) > left && middleX(s) < right))
                .limit(MOST_UPRIGHT_STROKES)
                .forEach(s -> EdgeSnap.along(frame, s.upper(), s.lower())
                        .filter(l -> all.stream().noneMatch(o -> near(o, l)))
                        .ifPresent(l -> all.add(new VerticalMark(
                                l.from(), l.to(), Math.hypot(EDGE_PX, l.endSigmaPx()), Mark.Origin.SUGGESTED))));
        return agreeing(all);
    }

    private static double middleX(Stroke s) {
        return (s.from().xPx() + s.to().xPx()) / 2;
    }

    private static boolean near(VerticalMark a, SnappedLine b) {
        StraightLine line = StraightLine.through(a.from(), a.to());
        return Math.abs(line.place(b.at()).t()) < ONE_EDGE_PX;
    }

    /** The lean of uprights changes evenly across the picture; the pair that most others agree with tells how. */
    private static List<VerticalMark> agreeing(List<VerticalMark> all) {
        List<VerticalMark> best = List.of();
        for (VerticalMark a : all) {
            for (VerticalMark b : all) {
                double apart = x(b) - x(a);
                if (apart < 1) {
                    continue;
                }
                double slope = apart < 100 ? 0 : (lean(b) - lean(a)) / apart;
                if (Math.abs(slope) * 1000 > Math.toRadians(20) || Math.abs(lean(b) - lean(a)) > PLUMB_RAD) {
                    continue;
                }
                List<VerticalMark> with = all.stream()
                        .filter(u -> Math.abs(lean(u) - lean(a) - slope * (x(u) - x(a))) < AGREE_RAD)
                        .toList();
                if (with.size() > best.size()) {
                    best = with;
                }
            }
        }
        return best.size() < 2 || all.size() > 2 && best.size() == 2 ? List.of() : farApart(best);
    }

    /** Two are enough to be looked at: the longest, and the one furthest from it. */
    private static List<VerticalMark> farApart(List<VerticalMark> agreeing) {
        VerticalMark longest = agreeing.stream()
                .max(Comparator.comparingDouble(u -> u.from().distancePx(u.to())))
                .orElseThrow();
        VerticalMark other = agreeing.stream()
                .max(Comparator.comparingDouble(u -> Math.abs(x(u) - x(longest))))
                .orElseThrow();
        return List.of(longest, other);
    }

    private static double x(VerticalMark u) {
        return (u.from().xPx() + u.to().xPx()) / 2;
    }

    private static double lean(VerticalMark u) {
        ImagePoint low = u.from().yPx() > u.to().yPx() ? u.from() : u.to();
        ImagePoint high = low == u.from() ? u.to() : u.from();
        return Math.atan2(high.xPx() - low.xPx(), low.yPx() - high.yPx());
    }
}
