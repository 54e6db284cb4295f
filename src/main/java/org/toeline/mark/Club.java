package org.toeline.mark;

import java.util.Optional;

/** The kind of club, as far as the address position depends on it. */
public enum Club {
    DRIVER("driver"),
    FAIRWAY_WOOD("fairway-wood"),
    HYBRID("hybrid"),
    LONG_IRON("long-iron"),
    MID_IRON("mid-iron"),
    SHORT_IRON("short-iron"),
    WEDGE("wedge"),
    PUTTER("putter");

    private final String id;

    Club(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    public static Optional<Club> of(String id) {
        for (Club club : values()) {
            if (club.id.equals(id)) {
                return Optional.of(club);
            }
        }
        return Optional.empty();
    }
}
