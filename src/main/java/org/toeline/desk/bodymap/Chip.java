package org.toeline.desk.bodymap;

import javafx.scene.control.Button;
import org.toeline.desk.text.Texts;

/**
 * A small button beside the picture. The tabulator reaches it, and a click does not: after it the keys go on doing what they do on
 * the picture, and pressed by key it gives them back.
 */
public final class Chip extends Button {

    private final Runnable back;

    /** @param back gives the keys to what they are usually for */
    public Chip(String id, String text, Runnable action, Runnable back) {
        super(text);
        this.back = back;
        setId(id);
        getStyleClass().add("item");
        setOnAction(e -> {
            boolean byKey = isFocused();
            action.run();
            if (byKey) {
                this.back.run();
            }
        });
    }

    /** @param key of its words in the desk's bundle */
    public static Chip of(String id, String key, Runnable action, Runnable back) {
        return new Chip(id, Texts.of(key), action, back);
    }

    /** What a click asks for. */
    @Override
    public void requestFocus() {
        // the keys stay where they are
    }

    /** Gives it the keys. */
    public void takeKeys() {
        super.requestFocus();
    }
}
