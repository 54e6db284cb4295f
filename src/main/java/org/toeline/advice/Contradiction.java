package org.toeline.advice;

import java.util.Optional;
import org.toeline.mark.View;

/**
 * Why nothing is judged: the marks cannot all be right.
 *
 * @param clash what contradicts what
 * @param view  the view that the clash is seen in, where it is one
 * @param mend  the likeliest slip undone, where one explains the marks far better
 */
public record Contradiction(Clash clash, Optional<View> view, Optional<Mend> mend) {

    /** What contradicts what, by what is said of it; the gravest first. */
    public enum Clash {
        CAMERA_UNDERGROUND("camera-underground"),
        CAMERA_OTHER_SIDE("camera-other-side"),
        PLAYER_FACES_AWAY("player-faces-away"),
        BALL_BEHIND_HEELS("ball-behind-heels"),
        LEAD_AND_TRAIL("lead-and-trail"),
        UPSIDE_DOWN("upside-down"),
        TEE_UNDERGROUND("tee-underground"),
        TEE_TOO_TALL("tee-too-tall"),
        PLAYER_SIZE("player-size"),
        MARKS_IN_ONE_PLACE("marks-in-one-place"),
        /** The marks of two views lie in the same places: it is one picture. */
        SAME_PICTURE_TWICE("same-picture-twice"),
        TOO_MANY_DOUBTS("too-many-doubts"),
        MISFIT("misfit"),
        /** Nothing is broken, but undoing a usual slip explains the marks far better. */
        EXPLAINED_BETTER("explained-better");

        private final String id;

        Clash(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    /** The likeliest slip; {@link Slip#UNKNOWN} where none explains it. */
    public Slip likely() {
        return mend.map(Mend::slip).orElse(Slip.UNKNOWN);
    }
}
