package org.toeline.desk.bodymap;

import org.toeline.advice.Words;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.text.Texts;

/** What the things that are marked are called. */
public final class ItemNames {

    private ItemNames() {}

    public static String of(Item item, Words words) {
        return item instanceof Item.OfLandmark l ? words.name(l.landmark()) : of(item);
    }

    /** Of what is not on the body. */
    static String of(Item item) {
        if (item instanceof Item.OfFloor f) {
            return f.pointId();
        }
        return item instanceof Item.OfVertical v ? Texts.of("item.vertical", v.index() + 1) : Texts.of("item.ball");
    }
}
