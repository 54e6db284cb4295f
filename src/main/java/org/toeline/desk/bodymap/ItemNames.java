package org.toeline.desk.bodymap;

import org.toeline.advice.FloorWords;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.text.Texts;

/** What the things that are marked are called. */
public final class ItemNames {

    private ItemNames() {}

    public static String of(Item item, Words words) {
        return item instanceof Item.OfLandmark l ? words.name(l.landmark()) : of(item);
    }

    /** Of a floor point, by what one sees; one of a layout of the coach's own is called what they call it. */
    static String ofFloor(String id) {
        return new FloorWords(Words.usual()).name(id);
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
