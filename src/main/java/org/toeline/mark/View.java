package org.toeline.mark;

import java.util.Optional;

/** From where a picture was taken. */
public enum View {
    /** From the ball's far side, facing the player: the camera stands on the −h side and looks along +h. */
    FACE_ON("face-on"),
    /** From behind the ball: the camera stands on the −t side and looks along +t, towards the target. */
    DOWN_THE_LINE("down-the-line"),
    /** A close, low picture of the ball on its tee with the club head soled behind it, taken from the face-on side. */
    TEE("tee");

    private final String id;

    View(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    public static Optional<View> of(String id) {
        for (View view : values()) {
            if (view.id.equals(id)) {
                return Optional.of(view);
            }
        }
        return Optional.empty();
    }
}
