package org.toeline.desk.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.ViewMarks;

/**
 * A coach's own click spread, from marking one frame twice. Two clicks of standard deviation σ in each direction lie
 * apart by a Rayleigh variable of parameter √2·σ, whose median is √(2 ln 2) times that: σ = median / (2·√(ln 2)). The
 * median, since one mark put elsewhere the second time is a mistake and not a spread.
 */
public final class ClickSpread {

    /** With fewer marks placed twice the spread is not known to a third of itself. */
    public static final int LEAST = 6;
    /** Below this nobody clicks, pixels. */
    private static final double STEADIEST_PX = 0.3;

    private ClickSpread() {}

    /** The spread in pixels; empty with too few marks that both have. */
    public static OptionalDouble of(ViewMarks first, ViewMarks again) {
        List<Double> apart = new ArrayList<>();
        for (Mark mark : again.marks()) {
            first.mark(mark.landmark())
                    .filter(m -> isClicked(m, mark.sigmaPx()))
                    .ifPresent(m -> apart.add(m.at().distancePx(mark.at())));
        }
        for (FloorMark mark : again.floorMarks()) {
            first.floorMark(mark.pointId())
                    .filter(m -> isClicked(m, mark.sigmaPx()))
                    .ifPresent(m -> apart.add(m.at().distancePx(mark.at())));
        }
        if (apart.size() < LEAST) {
            return OptionalDouble.empty();
        }
        apart.sort(null);
        int n = apart.size();
        double median = (apart.get((n - 1) / 2) + apart.get(n / 2)) / 2;
        return OptionalDouble.of(Math.max(STEADIEST_PX, median / (2 * Math.sqrt(Math.log(2)))));
    }

    /** Whether marking an item a second time tells anything: it was clicked the first time, neither suggested nor found. */
    static boolean learnsFrom(ViewMarks first, Item item, double clickSigmaPx) {
        return item instanceof Item.OfLandmark l
                ? first.mark(l.landmark())
                        .filter(m -> isClicked(m, clickSigmaPx))
                        .isPresent()
                : item instanceof Item.OfFloor f
                        && first.floorMark(f.pointId())
                                .filter(m -> isClicked(m, clickSigmaPx))
                                .isPresent();
    }

    /** Whether enough of a view was clicked to learn the spread when it is marked again. */
    public static boolean learnsFrom(ViewMarks first, double clickSigmaPx) {
        return Marking.marked(first).stream()
                        .filter(item -> learnsFrom(first, item, clickSigmaPx))
                        .count()
                >= LEAST;
    }

    /** An accepted suggestion is known less well than a click. */
    private static boolean isClicked(Mark mark, double clickSigmaPx) {
        return mark.origin() == Mark.Origin.PLACED && mark.sigmaPx() <= clickSigmaPx;
    }

    /** The end of a rod that was found is known better. */
    private static boolean isClicked(FloorMark mark, double clickSigmaPx) {
        return mark.sigmaPx() >= clickSigmaPx;
    }

    /** The sheet with that spread, also on the marks that had the earlier one. */
    public static MarkSheet applied(MarkSheet sheet, double sigmaPx) {
        MarkSheet changed = sheet.withClickSigmaPx(sigmaPx);
        for (ViewMarks v : sheet.views()) {
            ViewMarks w = v;
            for (Mark m : v.marks()) {
                if (m.origin() == Mark.Origin.PLACED && m.sigmaPx() == sheet.clickSigmaPx()) {
                    w = w.withMark(Mark.placed(m.landmark(), m.at(), sigmaPx));
                }
            }
            for (FloorMark m : v.floorMarks()) {
                if (m.sigmaPx() == sheet.clickSigmaPx()) {
                    w = w.withFloorMark(new FloorMark(m.pointId(), m.at(), sigmaPx));
                }
            }
            changed = changed.withView(w);
        }
        return changed;
    }
}
