package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.SnappedRod.Beyond;
import org.toeline.assist.SnappedRod.End;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorDirection;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/**
 * Which end of which rod of the layout a rod in a picture shows. Face-on the rod along the target line lies level and the one
 * across it runs away from the camera, down the line the other way round; a rod that lies neither so nor so, or two that lie
 * alike, are given no name.
 */
public final class RodNames {

    /** Flatter than this is level, and steeper than that runs away. */
    private static final double LEVEL_RAD = Math.toRadians(28);

    private static final double AWAY_RAD = Math.toRadians(42);
    /** A rod of the layout lies along one axis, but for this share, and is no shorter than that share of the longest. */
    private static final double ASKEW = 0.1;

    private static final double SHORTEST = 0.75;
    /** What rods' caps leave uncertain, pixels: measured on drawn rods. */
    private static final double CAP_PX = 0.5;

    /** Two points of the layout, the one with the lesser coordinate first. */
    private record Rod(FloorReference from, FloorReference to) {}

    private final FloorLayout layout;
    private final View view;
    private final Handedness handedness;

    private RodNames(FloorLayout layout, View view, Handedness handedness) {
        this.layout = layout;
        this.view = view;
        this.handedness = handedness;
    }

    /** The ends that are seen and have a name, each once. */
    public static List<FloorMark> of(List<SnappedRod> rods, FloorLayout layout, View view, Handedness handedness) {
        RodNames names = new RodNames(layout, view, handedness);
        List<FloorMark> marks = new ArrayList<>();
        names.named(rods, true, marks);
        names.named(rods, false, marks);
        return marks;
    }

    private void named(List<SnappedRod> rods, boolean along, List<FloorMark> marks) {
        boolean level = along == (view == View.FACE_ON);
        List<SnappedRod> like = rods.stream()
                .filter(r -> level ? steepness(r) < LEVEL_RAD : steepness(r) > AWAY_RAD)
                .toList();
        Optional<Rod> rod = rod(along);
        if (like.size() != 1 || rod.isEmpty()) {
            return;
        }
        SnappedRod seen = like.get(0);
        boolean runsOn = FloorDirection.share(
                        rod.get().from,
                        rod.get().to,
                        seen.from().at(),
                        seen.to().at(),
                        view,
                        handedness)
                >= 0;
        add(marks, rod.get().from, runsOn ? seen.from() : seen.to(), seen);
        add(marks, rod.get().to, runsOn ? seen.to() : seen.from(), seen);
    }

    private static void add(List<FloorMark> marks, FloorReference point, End end, SnappedRod rod) {
        if (end.beyond() == Beyond.GROUND
                && marks.stream().noneMatch(m -> m.pointId().equals(point.id()))) {
            marks.add(new FloorMark(
                    point.id(),
                    rod.onGround(end),
                    Math.hypot(CAP_PX, rod.sigmaOnGroundPx(end)),
                    Mark.Origin.SUGGESTED));
        }
    }

    private static double steepness(SnappedRod rod) {
        ImagePoint a = rod.from().at();
        ImagePoint b = rod.to().at();
        return Math.atan2(Math.abs(b.yPx() - a.yPx()), Math.abs(b.xPx() - a.xPx()));
    }

    /** The layout's only rod along the target line, or across it; a mat and joints of tiles have several. */
    private Optional<Rod> rod(boolean along) {
        List<Rod> all = new ArrayList<>();
        double longest = 0;
        for (FloorReference a : layout.points()) {
            for (FloorReference b : layout.points()) {
                double way = along ? b.t() - a.t() : b.h() - a.h();
                double aside = Math.abs(along ? b.h() - a.h() : b.t() - a.t());
                if (way > 0 && aside < ASKEW * way) {
                    longest = Math.max(longest, way);
                    all.add(new Rod(a, b));
                }
            }
        }
        double least = SHORTEST * longest;
        List<Rod> whole = all.stream()
                .filter(r -> (along ? r.to.t() - r.from.t() : r.to.h() - r.from.h()) > least)
                .toList();
        return whole.size() == 1 ? Optional.of(whole.get(0)) : Optional.empty();
    }
}
