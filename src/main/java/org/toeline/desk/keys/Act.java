package org.toeline.desk.keys;

/** Something that a key does; its words are {@code key.<id>} in the desk's bundle. */
public enum Act {
    LEFT("left", "Left"),
    RIGHT("right", "Right"),
    UP("up", "Up"),
    DOWN("down", "Down"),
    LEFT_PIXEL("left-pixel", "Shortcut+Left"),
    RIGHT_PIXEL("right-pixel", "Shortcut+Right"),
    UP_PIXEL("up-pixel", "Shortcut+Up"),
    DOWN_PIXEL("down-pixel", "Shortcut+Down"),
    LEFT_FAR("left-far", "Shift+Left"),
    RIGHT_FAR("right-far", "Shift+Right"),
    UP_FAR("up-far", "Shift+Up"),
    DOWN_FAR("down-far", "Shift+Down"),
    CANCEL("cancel", "Esc"),
    DELETE("delete", "Delete"),
    UNDO("undo", "Shortcut+Z"),
    REDO("redo", "Shortcut+Y"),
    FACE_ON("face-on", "1"),
    DOWN_THE_LINE("down-the-line", "2"),
    TEE("tee", "3"),
    FRAME_BACK("frame-back", "Comma"),
    FRAME_ON("frame-on", "Period"),
    PLAY("play", "Space"),
    SLOWER("slower", "D"),
    FASTER("faster", "U"),
    OTHER_WAY("other-way", "R"),
    REPEAT("repeat", "L"),
    IN_STEP("in-step", "V"),
    ONE_MOMENT("one-moment", "P"),
    EXCHANGE("exchange", "X"),
    ADDRESS("address", "A"),
    WHOLE("whole", "F"),
    SKIP("skip", "S"),
    SUGGEST("suggest", "G"),
    ACCEPT("accept", "Enter"),
    DRAW("draw", "Shortcut+Enter"),
    MARK_ON("mark-on", "N"),
    MARK_BACK("mark-back", "Shift+N"),
    ACCEPT_ALL("accept-all", "Shift+Enter"),
    STEADY("steady", "T"),
    AGAIN("again", "M"),
    LINES("lines", "O"),
    PIN("pin", "W"),
    BRIGHTER("brighter", "B"),
    DARKER("darker", "Shift+B"),
    MORE_CONTRAST("more-contrast", "C"),
    LESS_CONTRAST("less-contrast", "Shift+C"),
    AS_FILMED("as-filmed", "0"),
    FULL_SCREEN("full-screen", "F11"),
    COPY("copy", "Shortcut+C"),
    PRINT("print", "Shortcut+P"),
    KEEP_STILL("keep-still", "Shortcut+Shift+S"),
    NEW("new", "Shortcut+N"),
    OPEN("open", "Shortcut+O"),
    CLIP("clip", "Shortcut+Shift+O"),
    KEPT("kept", "Shortcut+S"),
    KEYS("keys", "F1"),
    GO_LESSON("go-lesson", "F2"),
    GO_PLAYERS("go-players", "F3"),
    GO_ACROSS("go-across", "F4"),
    GO_SHOTS("go-shots", "F5"),
    GO_HAND_OVER("go-hand-over", "F6"),
    GO_RANGES("go-ranges", "F7"),
    FIND("find", "Shortcut+F");

    private final String id;
    private final String usual;

    Act(String id, String usual) {
        this.id = id;
        this.usual = usual;
    }

    public String id() {
        return id;
    }

    /** The screen it goes to, for one that goes to a screen; finding begins among the players. */
    public java.util.Optional<String> screen() {
        return this == FIND
                ? java.util.Optional.of("players")
                : java.util.Optional.of(id).filter(i -> i.startsWith("go-")).map(i -> i.substring("go-".length()));
    }

    /** Whether it is about how a film plays. */
    public boolean plays() {
        return switch (this) {
            case PLAY, SLOWER, FASTER, OTHER_WAY, REPEAT -> true;
            default -> false;
        };
    }

    /** The key it has unless the coach gives it another. */
    String usual() {
        return usual;
    }
}
