package org.toeline.desk.dialog;

import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;

/** The buttons of a dialog, each where the system has its like. */
final class DialogButtons {

    private DialogButtons() {}

    /** Enter presses the button that has the focus; else it would press the default one. */
    static Button button(String id, String words, ButtonData where, Runnable action) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        button.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER) {
                e.consume();
                button.fire();
            }
        });
        ButtonBar.setButtonData(button, where);
        return button;
    }

    static Button destroying(String id, String words, Runnable action) {
        Button button = button(id, words, ButtonData.OTHER, action);
        button.getStyleClass().add("destroys");
        return button;
    }
}
