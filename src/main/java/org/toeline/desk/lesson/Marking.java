package org.toeline.desk.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.ViewMarks;

/** Placing, moving and deleting items on a view's marks: pure functions. */
public final class Marking {

    private Marking() {}

    /** Where an item's handles are, in order; none when it is not marked. */
    public static List<ImagePoint> handles(ViewMarks view, Item item) {
        if (item instanceof Item.OfLandmark l) {
            return view.mark(l.landmark()).map(m -> List.of(m.at())).orElse(List.of());
        }
        if (item instanceof Item.OfFloor f) {
            return view.floorMark(f.pointId()).map(m -> List.of(m.at())).orElse(List.of());
        }
        if (item instanceof Item.OfVertical v) {
            return v.index() < view.verticals().size()
                    ? List.of(
                            view.verticals().get(v.index()).from(),
                            view.verticals().get(v.index()).to())
                    : List.of();
        }
        return item instanceof Item.OfBall
                ? view.ball().map(b -> List.of(b.centre())).orElse(List.of())
                : List.of();
    }

    /** Everything marked on a view. */
    public static List<Item> marked(ViewMarks view) {
        List<Item> items = new ArrayList<>();
        view.marks().forEach(m -> items.add(new Item.OfLandmark(m.landmark())));
        view.floorMarks().forEach(m -> items.add(new Item.OfFloor(m.pointId())));
        for (int i = 0; i < view.verticals().size(); i++) {
            items.add(new Item.OfVertical(i));
        }
        if (view.ball().isPresent()) {
            items.add(Item.BALL);
        }
        return items;
    }

    /**
     * The view with a handle of an item at a point, inside the picture; new items are put there. What the hand moves is known no
     * better than a click, however well it was found before.
     */
    public static ViewMarks put(ViewMarks view, Item item, int handle, ImagePoint to, double clickSigmaPx) {
        ImagePoint at = inside(view, to);
        if (item instanceof Item.OfLandmark l) {
            return view.withMark(Mark.placed(
                    l.landmark(),
                    at,
                    view.mark(l.landmark())
                            .filter(m -> m.origin() == Mark.Origin.PLACED)
                            .map(m -> Math.max(m.sigmaPx(), clickSigmaPx))
                            .orElse(clickSigmaPx)));
        }
        if (item instanceof Item.OfFloor f) {
            return view.withFloorMark(new FloorMark(
                    f.pointId(),
                    at,
                    view.floorMark(f.pointId())
                            .map(m -> Math.max(m.sigmaPx(), clickSigmaPx))
                            .orElse(clickSigmaPx)));
        }
        if (item instanceof Item.OfVertical v) {
            return vertical(view, v.index(), handle, at, clickSigmaPx);
        }
        if (item instanceof Item.OfGround) {
            return view;
        }
        BallMark moved = view.ball()
                .map(b -> new BallMark(at, b.diameterPx(), Math.max(b.sigmaPx(), clickSigmaPx), b.diameterSigmaPx()))
                .orElse(new BallMark(at, OptionalDouble.empty(), clickSigmaPx, BallMark.USUAL_DIAMETER_SIGMA_PX));
        return view.withBall(Optional.of(moved));
    }

    /** A ball drawn by hand from one side to the other, each side as well as a click. */
    public static BallMark ball(ImagePoint from, ImagePoint to, double clickSigmaPx) {
        return new BallMark(
                new ImagePoint(round((from.xPx() + to.xPx()) / 2), round((from.yPx() + to.yPx()) / 2)),
                OptionalDouble.of(round(from.distancePx(to))),
                clickSigmaPx / Math.sqrt(2),
                clickSigmaPx * Math.sqrt(2));
    }

    /** Both ends of a rod, whichever of them the stroke began at, or of an upright. */
    static ViewMarks put(ViewMarks view, LineMark line, FloorLayout floor, Handedness handedness) {
        ImagePoint from = inside(view, line.from());
        ImagePoint to = inside(view, line.to());
        if (line.item() instanceof Item.OfFloor f) {
            Optional<FloorReference> one = floor.point(f.pointId());
            Optional<FloorReference> other =
                    Rods.otherEnd(floor, view, f.pointId()).flatMap(floor::point);
            boolean runsOn = one.isEmpty()
                    || other.isEmpty()
                    || Rods.runsOn(one.get(), other.get(), from, to, view.view(), handedness);
            FloorMark began =
                    new FloorMark(f.pointId(), runsOn ? from : to, runsOn ? line.fromSigmaPx() : line.toSigmaPx());
            ViewMarks with = view.withFloorMark(began);
            return other.map(o -> with.withFloorMark(
                            new FloorMark(o.id(), runsOn ? to : from, runsOn ? line.toSigmaPx() : line.fromSigmaPx())))
                    .orElse(with);
        }
        if (line.item() instanceof Item.OfVertical v && from.distancePx(to) >= VerticalMark.SHORTEST_PX) {
            List<VerticalMark> all = new ArrayList<>(view.verticals());
            VerticalMark mark = new VerticalMark(from, to, Math.max(line.fromSigmaPx(), line.toSigmaPx()));
            if (v.index() < all.size()) {
                all.set(v.index(), mark);
            } else {
                all.add(mark);
            }
            return view.withVerticals(all);
        }
        return view;
    }

    private static ViewMarks vertical(ViewMarks view, int index, int handle, ImagePoint at, double clickSigmaPx) {
        List<VerticalMark> all = new ArrayList<>(view.verticals());
        if (index >= all.size()) {
            double up = at.yPx() > view.heightPx() / 2.0 ? -40 : 40;
            all.add(new VerticalMark(at, inside(view, at.plus(0, up)), clickSigmaPx));
        } else {
            VerticalMark old = all.get(index);
            ImagePoint from = handle == 0 ? at : old.from();
            ImagePoint to = handle == 0 ? old.to() : at;
            if (from.distancePx(to) < VerticalMark.SHORTEST_PX) {
                return view;
            }
            all.set(index, new VerticalMark(from, to, Math.max(old.sigmaPx(), clickSigmaPx)));
        }
        return view.withVerticals(all);
    }

    /**
     * With a suggestion taken as right: looked at, but not clicked, so that it keeps the spread measured for suggestions; a
     * landmark, a judgement by eye, is known no better than a click.
     */
    static ViewMarks accepted(ViewMarks view, Item item, double clickSigmaPx) {
        if (item instanceof Item.OfLandmark l) {
            Mark m = view.mark(l.landmark()).orElseThrow();
            return view.withMark(Mark.placed(m.landmark(), m.at(), Math.max(clickSigmaPx, m.sigmaPx())));
        }
        if (item instanceof Item.OfFloor f) {
            return view.withFloorMark(view.floorMark(f.pointId()).orElseThrow().accepted());
        }
        if (item instanceof Item.OfVertical v) {
            List<VerticalMark> all = new ArrayList<>(view.verticals());
            all.set(v.index(), all.get(v.index()).accepted());
            return view.withVerticals(all);
        }
        return view.withBall(view.ball().map(BallMark::accepted));
    }

    public static ViewMarks delete(ViewMarks view, Item item) {
        if (item instanceof Item.OfLandmark l) {
            return view.withoutMark(l.landmark());
        }
        if (item instanceof Item.OfFloor f) {
            return view.withoutFloorMark(f.pointId());
        }
        if (item instanceof Item.OfVertical v) {
            List<VerticalMark> all = new ArrayList<>(view.verticals());
            if (v.index() < all.size()) {
                all.remove(v.index());
            }
            return view.withVerticals(all);
        }
        return item instanceof Item.OfBall ? view.withBall(Optional.empty()) : view;
    }

    private static ImagePoint inside(ViewMarks view, ImagePoint p) {
        return new ImagePoint(
                Math.max(0, Math.min(view.widthPx(), round(p.xPx()))),
                Math.max(0, Math.min(view.heightPx(), round(p.yPx()))));
    }

    /** To a twentieth of a pixel: more digits would only be noise in the document. */
    private static double round(double px) {
        return Math.rint(px * 20) / 20;
    }
}
