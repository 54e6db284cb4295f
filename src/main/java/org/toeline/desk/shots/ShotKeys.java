package org.toeline.desk.shots;

import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** What a key does on the screen of the shots. */
final class ShotKeys {

    private ShotKeys() {}

    /** @param inTable whether it is typed into the table: elsewhere the desk's own keys hold */
    static Optional<Runnable> act(KeyEvent e, boolean inTable, ShotBar.Acts acts) {
        if (!e.isShortcutDown()) {
            return Optional.empty();
        }
        if (e.getCode() == KeyCode.I) {
            return Optional.of(acts::takeIn);
        }
        if (!inTable) {
            return Optional.empty();
        }
        return switch (e.getCode()) {
            case Z -> Optional.of(e.isShiftDown() ? acts::redo : acts::undo);
            case Y -> Optional.of(acts::redo);
            case DELETE -> Optional.of(acts::removeRow);
            default -> Optional.empty();
        };
    }
}
