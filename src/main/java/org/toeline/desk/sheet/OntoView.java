package org.toeline.desk.sheet;

import java.util.List;
import org.toeline.assist.RodNames;
import org.toeline.assist.SnappedRod;
import org.toeline.assist.ViewSuggestion;
import org.toeline.desk.lesson.Item;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** What was seen of a view, put onto its marks as suggestions, or taken away again. */
final class OntoView {

    private OntoView() {}

    /**
     * What was placed, also meanwhile, stays; what the coach said cannot be seen is not suggested.
     *
     * @param sides whether lead and trail may be told apart
     */
    static ViewMarks all(MarkSheet sheet, Unfinished unfinished, ViewSuggestion seen, View of, boolean sides) {
        ViewMarks v = sheet.view(of).orElseThrow().onlyAccepted();
        for (Mark mark : seen.landmarks()) {
            Item item = new Item.OfLandmark(mark.landmark());
            boolean told = sides || !isOfTheBody(mark);
            if (told && v.mark(mark.landmark()).isEmpty() && isIn(v, mark.at()) && !isUnseen(unfinished, v, item)) {
                v = v.withMark(mark);
            }
        }
        if (v.ball().isEmpty() && !isUnseen(unfinished, v, Item.BALL)) {
            v = v.withBall(seen.ball());
        }
        if (v.verticals().isEmpty() && !isUnseen(unfinished, v, new Item.OfVertical(0))) {
            v = v.withVerticals(seen.uprights());
        }
        return sides ? rods(v, sheet, unfinished, seen.rods()) : v;
    }

    /** Ends of rods, which have names once it is known what lies on the ground. */
    static ViewMarks rods(ViewMarks v, MarkSheet sheet, Unfinished unfinished, List<SnappedRod> rods) {
        ViewMarks with = v;
        for (FloorMark end : RodNames.of(rods, sheet.floor(), v.view(), sheet.handedness())) {
            Item item = new Item.OfFloor(end.pointId());
            if (v.floorMark(end.pointId()).isEmpty() && isIn(v, end.at()) && !isUnseen(unfinished, v, item)) {
                with = with.withFloorMark(end);
            }
        }
        return with;
    }

    private static boolean isIn(ViewMarks v, ImagePoint at) {
        return at.xPx() >= 0 && at.xPx() <= v.widthPx() && at.yPx() >= 0 && at.yPx() <= v.heightPx();
    }

    private static boolean isUnseen(Unfinished unfinished, ViewMarks v, Item item) {
        return unfinished.unseen(v.view()).contains(item.name());
    }

    /** Takes away what is suggested and tells lead from trail. */
    static ViewMarks withoutSides(ViewMarks v) {
        ViewMarks without = v;
        for (Mark mark : v.marks()) {
            if (mark.origin() == Mark.Origin.SUGGESTED && isOfTheBody(mark)) {
                without = without.withoutMark(mark.landmark());
            }
        }
        for (FloorMark mark : v.floorMarks()) {
            if (mark.origin() == Mark.Origin.SUGGESTED) {
                without = without.withoutFloorMark(mark.pointId());
            }
        }
        return without;
    }

    /** All of it lies on a side, or a little to one. */
    static boolean isOfTheBody(Mark mark) {
        return switch (mark.landmark()) {
            case CLUB_HEAD, GRIP_END, CROWN, GROUND -> false;
            default -> true;
        };
    }

    static boolean isOfTheClub(Mark mark) {
        return switch (mark.landmark()) {
            case CLUB_HEAD, GRIP_END -> true;
            default -> false;
        };
    }
}
