package org.toeline.desk.bodymap;

import java.util.Set;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.text.Texts;

/** What the things that are marked are called. */
public final class ItemNames {

    private static final Set<String> NAMED = Set.of(
            "rod-near",
            "rod-far",
            "cross-ball",
            "cross-feet",
            "corner",
            "mat-ball-trail",
            "mat-ball-lead",
            "mat-feet-trail",
            "mat-feet-lead",
            "tape-trail",
            "tape-lead");
    private static final String JOINT = "joint-";

    private ItemNames() {}

    public static String of(Item item, Words words) {
        return item instanceof Item.OfLandmark l ? words.name(l.landmark()) : of(item);
    }

    /** Of a floor point, by what one sees; one of a layout of the coach's own is called what they call it. */
    static String ofFloor(String id) {
        return NAMED.contains(id)
                ? Texts.of("floor-point." + id)
                : id.startsWith(JOINT) ? Texts.of("floor-point.joint", id.substring(JOINT.length())) : id;
    }

    /** Of what is not on the body. */
    static String of(Item item) {
        if (item instanceof Item.OfFloor f) {
            return ofFloor(f.pointId());
        }
        if (item instanceof Item.OfGround) {
            return Texts.of("item.ground");
        }
        return item instanceof Item.OfVertical v ? Texts.of("item.vertical", v.index() + 1) : Texts.of("item.ball");
    }
}
