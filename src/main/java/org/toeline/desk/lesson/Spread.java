package org.toeline.desk.lesson;

import java.util.Optional;
import org.toeline.language.Written;
import org.toeline.mark.Mark;
import org.toeline.mark.ViewMarks;

/** How well what is marked is known, as it is shown: half of a 95 % interval in each direction, pixels. */
public final class Spread {

    private static final double HALF_OF_95 = 1.96;

    private Spread() {}

    /** Of a standard deviation. */
    public static String half(double sigmaPx) {
        return Written.number("%.1f", HALF_OF_95 * sigmaPx);
    }

    /** Of an item's place; empty when it is not marked. */
    public static Optional<String> of(ViewMarks view, Item item) {
        if (item instanceof Item.OfLandmark l) {
            return view.mark(l.landmark()).map(Mark::sigmaPx).map(Spread::half);
        }
        if (item instanceof Item.OfFloor f) {
            return view.floorMark(f.pointId()).map(m -> half(m.sigmaPx()));
        }
        if (item instanceof Item.OfVertical v) {
            return v.index() < view.verticals().size()
                    ? Optional.of(half(view.verticals().get(v.index()).sigmaPx()))
                    : Optional.empty();
        }
        return item instanceof Item.OfBall ? view.ball().map(b -> half(b.sigmaPx())) : Optional.empty();
    }
}
