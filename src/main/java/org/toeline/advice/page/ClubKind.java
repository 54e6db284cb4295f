package org.toeline.advice.page;

import java.util.Locale;
import org.toeline.mark.Club;

/** Clubs that are set up to alike, for the words of a page. */
public enum ClubKind {
    DRIVER,
    WOOD,
    IRON,
    WEDGE,
    PUTTER;

    public static ClubKind of(Club club) {
        return switch (club) {
            case DRIVER -> DRIVER;
            case FAIRWAY_WOOD, HYBRID -> WOOD;
            case LONG_IRON, MID_IRON, SHORT_IRON -> IRON;
            case WEDGE -> WEDGE;
            case PUTTER -> PUTTER;
        };
    }

    /** The name in the keys of phrases. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
