package org.toeline.desk.lesson;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** In which order things are marked in a view: what decides most first. */
public final class MarkOrder {

    private static final List<Landmark> FIRST =
            List.of(LEAD_SHOULDER, TRAIL_SHOULDER, LEAD_HEEL, LEAD_TOE, TRAIL_HEEL, TRAIL_TOE);
    private static final List<Landmark> THEN = List.of(
            LEAD_WRIST,
            TRAIL_WRIST,
            HEAD_CENTRE,
            LEAD_HIP,
            TRAIL_HIP,
            CLUB_HEAD,
            GRIP_END,
            LEAD_KNEE,
            TRAIL_KNEE,
            LEAD_ANKLE,
            TRAIL_ANKLE,
            LEAD_ELBOW,
            TRAIL_ELBOW,
            NECK);
    /** Down the line, where the trail side is in front: what the body mostly hides comes last. */
    private static final List<Landmark> THEN_DOWN_THE_LINE = List.of(
            TRAIL_WRIST,
            HEAD_CENTRE,
            TRAIL_HIP,
            GRIP_END,
            CLUB_HEAD,
            TRAIL_KNEE,
            TRAIL_ANKLE,
            TRAIL_ELBOW,
            LEAD_KNEE,
            LEAD_ANKLE,
            LEAD_ELBOW,
            NECK,
            LEAD_WRIST,
            LEAD_HIP);

    private static final List<Landmark> AT_THE_TEE = List.of(CROWN, GROUND, CLUB_HEAD);

    private MarkOrder() {}

    /** The landmarks a view shows, in order. */
    public static List<Landmark> landmarks(View view) {
        if (view == View.TEE) {
            return AT_THE_TEE;
        }
        List<Landmark> all = new ArrayList<>(FIRST);
        all.addAll(then(view));
        return all;
    }

    private static List<Landmark> then(View view) {
        return view == View.DOWN_THE_LINE ? THEN_DOWN_THE_LINE : THEN;
    }

    /** Everything to mark in a view, in order: what lies on the ground, the ball, what matters most, an upright, the rest. */
    public static List<Item> items(LessonModel model, View view) {
        List<Item> items = new ArrayList<>();
        if (view == View.TEE) {
            items.add(Item.BALL);
            AT_THE_TEE.forEach(l -> items.add(new Item.OfLandmark(l)));
            return items;
        }
        if (model.sheet().floor().points().isEmpty()) {
            items.add(Item.GROUND);
        }
        model.sheet().floor().points().forEach(p -> items.add(new Item.OfFloor(p.id())));
        items.add(Item.BALL);
        FIRST.forEach(l -> items.add(new Item.OfLandmark(l)));
        items.add(new Item.OfVertical(0));
        then(view).forEach(l -> items.add(new Item.OfLandmark(l)));
        return items;
    }

    /** The first thing of the large view that is to be marked, or that is only suggested. */
    public static Optional<Item> next(LessonModel model) {
        return after(model, Optional.empty());
    }

    /** Whether the hand has still to place or to accept an item. */
    public static boolean isOpen(ViewMarks view, Item item) {
        return Marking.handles(view, item).isEmpty() || suggested(view, item);
    }

    /** Whether an item is open and nobody said that it cannot be seen; the second time, whether that teaches anything. */
    private static boolean isToBeMarked(LessonModel model, ViewMarks view, Item item) {
        return isOpen(view, item)
                && !model.unseen(view.view(), item)
                && (!model.repeating(view.view())
                        || ClickSpread.learnsFrom(
                                model.sheet().view(view.view()).orElseThrow(),
                                item,
                                model.sheet().clickSigmaPx()));
    }

    /** Whether an item stands where the program suggests it and nobody has looked. */
    public static boolean suggested(ViewMarks view, Item item) {
        Optional<Mark.Origin> origin;
        if (item instanceof Item.OfLandmark l) {
            origin = view.mark(l.landmark()).map(Mark::origin);
        } else if (item instanceof Item.OfFloor f) {
            origin = view.floorMark(f.pointId()).map(FloorMark::origin);
        } else if (item instanceof Item.OfVertical v) {
            origin = view.verticals().stream().skip(v.index()).findFirst().map(VerticalMark::origin);
        } else {
            origin = item instanceof Item.OfBall ? view.ball().map(BallMark::origin) : Optional.empty();
        }
        return origin.filter(o -> o == Mark.Origin.SUGGESTED).isPresent();
    }

    /** The first thing that is to be marked after an item, beginning anew at the end. */
    static Optional<Item> after(LessonModel model, Optional<Item> item) {
        Optional<ViewMarks> view = model.marks(model.large());
        if (view.isEmpty()) {
            return Optional.empty();
        }
        List<Item> items = items(model, model.large());
        int from = item.map(items::indexOf).orElse(-1);
        for (int k = 1; k <= items.size(); k++) {
            Item next = items.get(Math.floorMod(from + k, items.size()));
            if (isToBeMarked(model, view.get(), next)) {
                return Optional.of(next);
            }
        }
        return Optional.empty();
    }
}
