package org.toeline.desk.screen;

import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.text.Texts;

/** Controls as all screens have them: with an id, words from the bundle, and never cut short. */
public final class Controls {

    private Controls() {}

    /** @param key of its words in the desk's bundle */
    public static Button button(String id, String key, Runnable action) {
        Button button = new Button(Texts.of(key));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }

    /** A text of several lines in which the tabulator leads on, as in every other field; nobody wants one in a note. */
    public static <T extends TextArea> T tabbed(T area) {
        area.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.TAB && !e.isControlDown() && !e.isAltDown() && !e.isMetaDown()) {
                // with the control key it is the toolkit's own way out of a text
                area.fireEvent(
                        new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, e.isShiftDown(), true, false, false));
                e.consume();
            }
        });
        return area;
    }

    /** What values are called in a box they are chosen from. */
    public static <T> StringConverter<T> names(Function<T, String> name) {
        return new StringConverter<>() {
            @Override
            public String toString(@Nullable T value) {
                return value == null ? "" : name.apply(value);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("chosen, not typed");
            }
        };
    }

    /** With a capital at the beginning. */
    public static String sentence(String text) {
        return text.isEmpty() ? "" : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
