package org.toeline.desk.shots;

import javafx.application.Platform;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.toeline.desk.text.Texts;
import org.toeline.flight.table.Meaning;

/**
 * The one field that is typed into, laid over the cell where the cursor is. It is always there and keeps the focus from cell to
 * cell, so that what is typed fast never falls between two of them. What is typed shows its effect at once, and is kept when
 * the cell is left.
 */
final class ShotEditor extends TextField {

    /** Where nobody sees it, while nothing is typed. */
    private static final double AWAY = -10_000;

    private final ShotTable table;
    private Meaning meaning = Meaning.BALL_SPEED;
    private int row = -1;
    private String begun = "";
    private int begins;

    ShotEditor(ShotTable table) {
        this.table = table;
        getStyleClass().add("shots-field");
        setManaged(false);
        setFocusTraversable(false);
        relocate(AWAY, AWAY);
        textProperty().addListener((o, before, now) -> {
            if (isTyping()) {
                table.model().typing(row, meaning, now);
            }
        });
        focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                finish();
            } else if (!isTyping()) {
                table.resume();
            }
        });
        // a screen that is shown for the first time has its parts only when it is laid out
        sceneProperty().addListener((o, before, now) -> {
            if (now != null && isTyping()) {
                Platform.runLater(this::grab);
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    }

    boolean isTyping() {
        return row >= 0;
    }

    /** Into another cell; what was typed into the one before is kept. */
    void begin(int atRow, Meaning at) {
        finish();
        toFront();
        setId("cell-" + (atRow + 1) + "-" + at.id());
        setAccessibleText(Texts.of(
                "shots.cell",
                atRow + 1,
                Texts.of("shots.figure." + at.id()),
                table.model().units().of(at).id()));
        begun = table.model().row(atRow).text(at, table.model().units());
        setText(begun);
        row = atRow;
        meaning = at;
        grab();
    }

    /** A field that is not seen yet has no skin, and what is typed into it would be lost. */
    private void grab() {
        if (getScene() != null) {
            applyCss();
            requestFocus();
            selectAll();
        }
        // the click that brought it here may give the focus to something else
        int now = ++begins;
        Platform.runLater(() -> {
            if (now == begins && !isFocused() && getScene() != null) {
                requestFocus();
                selectAll();
            }
        });
    }

    /** What is being typed is given up. */
    void drop() {
        row = -1;
        relocate(AWAY, AWAY);
    }

    void finish() {
        if (isTyping()) {
            int left = row;
            drop();
            // a cell nobody typed into says nothing of the row that may stand there by now
            if (!getText().equals(begun)) {
                table.model().type(left, meaning, getText());
            }
        }
    }

    /** Over the cell, wherever that is by now; out of sight if it is. */
    void place() {
        if (!isTyping()) {
            return;
        }
        var at = table.boundsOf(row, meaning);
        double x = at.map(b -> b.getMinX()).orElse(AWAY);
        double y = at.map(b -> b.getMinY()).orElse(AWAY);
        double width = at.map(b -> b.getWidth()).orElse(getWidth());
        double height = at.map(b -> b.getHeight()).orElse(getHeight());
        if (x != getLayoutX() || y != getLayoutY() || width != getWidth() || height != getHeight()) {
            resizeRelocate(x, y, width, height);
            layout();
        }
    }

    private void key(KeyEvent e) {
        if (e.isShortcutDown()) {
            return;
        }
        KeyCode code = e.getCode();
        Runnable move =
                switch (code) {
                    case ENTER -> table::nextRow;
                    case TAB -> e.isShiftDown() ? () -> table.moveColumn(-1) : () -> table.moveColumn(1);
                    case UP -> () -> table.moveRow(-1);
                    case DOWN -> () -> table.moveRow(1);
                    case ESCAPE -> table::giveUp;
                    default -> null;
                };
        if (move != null) {
            e.consume();
            if (code != KeyCode.ESCAPE) {
                finish();
            }
            move.run();
        }
    }
}
