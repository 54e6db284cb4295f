package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.assist.ViewSuggestion.Upright;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/** Rods on the ground by their colour, and uprights that agree with one another. Shares are of the span. */
final class LineFinder {

    private static final double SHORTEST_ROD = 0.22;
    private static final int MOST_ROD_STROKES = 14;
    private static final double ONE_ROD_PX = 6;
    /** Ends are looked for again where the rod was seen to stop, so that a stroke that fell short does no harm. */
    private static final double SHORTEST_UPRIGHT = 0.35;

    private static final double PLUMB_RAD = Math.toRadians(9);
    private static final int MOST_UPRIGHT_STROKES = 10;
    /** Uprights lean together: what leans by more from the others' course is a rope, an arm, a slope. */
    private static final double AGREE_RAD = Math.toRadians(0.6);

    private final Frame frame;
    private final double span;
    private final double left;
    private final double right;
    private final double knees;

    LineFinder(Frame frame, Seen seen) {
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
        knees = Standing.middle(seen, 25).yPx();
    }

    /** Coloured bars below the knees, both ends on open ground. */
    List<SnappedRod> rods(List<Stroke> coloured) {
        List<SnappedRod> rods = new ArrayList<>();
        coloured.stream()
                .filter(s -> s.lengthPx() > SHORTEST_ROD * span && s.upper().yPx() > knees)
                .limit(MOST_ROD_STROKES)
                .forEach(s -> EdgeSnap.rod(frame, s.from(), s.to())
                        .filter(r -> r.from().at().distancePx(r.to().at()) > SHORTEST_ROD * span)
                        .filter(r -> rods.stream().noneMatch(o -> same(o, r)))
                        .ifPresent(rods::add));
        return rods;
    }

    private static boolean same(SnappedRod a, SnappedRod b) {
        StraightLine line = StraightLine.through(a.from().at(), a.to().at());
        return Math.abs(line.place(b.from().at()).t()) < ONE_ROD_PX + a.widthPx()
                && Math.abs(line.place(b.to().at()).t()) < ONE_ROD_PX + a.widthPx();
    }

    /** Two at least that lean alike: one alone may be anything. */
    List<Upright> uprights(List<Stroke> strokes) {
        List<Upright> all = new ArrayList<>();
        strokes.stream()
                .filter(s -> s.lengthPx() > SHORTEST_UPRIGHT * span
                        && s.steepnessRad() > Math.PI / 2 - PLUMB_RAD
                        && !(middleX(s) > left && middleX(s) < right))
                .limit(MOST_UPRIGHT_STROKES)
                .forEach(s -> EdgeSnap.along(frame, s.upper(), s.lower())
                        .filter(l -> all.stream().noneMatch(o -> near(o, l)))
                        .ifPresent(l -> all.add(new Upright(l.from(), l.to(), l.endSigmaPx()))));
        return agreeing(all);
    }

    private static double middleX(Stroke s) {
        return (s.from().xPx() + s.to().xPx()) / 2;
    }

    private static boolean near(Upright a, SnappedLine b) {
        StraightLine line = StraightLine.through(a.from(), a.to());
        return Math.abs(line.place(b.at()).t()) < ONE_ROD_PX;
    }

    /** The lean of uprights changes evenly across the picture; the pair that most others agree with tells how. */
    private static List<Upright> agreeing(List<Upright> all) {
        List<Upright> best = List.of();
        for (Upright a : all) {
            for (Upright b : all) {
                double apart = x(b) - x(a);
                if (apart < 1) {
                    continue;
                }
                double slope = apart < 100 ? 0 : (lean(b) - lean(a)) / apart;
                if (Math.abs(slope) * 1000 > Math.toRadians(20) || Math.abs(lean(b) - lean(a)) > PLUMB_RAD) {
                    continue;
                }
                List<Upright> with = all.stream()
                        .filter(u -> Math.abs(lean(u) - lean(a) - slope * (x(u) - x(a))) < AGREE_RAD)
                        .toList();
                if (with.size() > best.size()) {
                    best = with;
                }
            }
        }
        return best.size() < 2 || all.size() > 2 && best.size() == 2 ? List.of() : best;
    }

    private static double x(Upright u) {
        return (u.from().xPx() + u.to().xPx()) / 2;
    }

    private static double lean(Upright u) {
        ImagePoint low = u.from().yPx() > u.to().yPx() ? u.from() : u.to();
        ImagePoint high = low == u.from() ? u.to() : u.from();
        return Math.atan2(high.xPx() - low.xPx(), low.yPx() - high.yPx());
    }
}
