package org.toeline.desk.shots;

import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.text.Texts;
import org.toeline.flight.table.Meaning;

/** A cell to type into: what is typed shows its effect at once, and is kept when the cell is left. */
final class ShotCell extends TableCell<Integer, Integer> {

    private static final PseudoClass UNREAD = PseudoClass.getPseudoClass("unread");

    private final ShotTable table;
    private final Meaning meaning;
    private @Nullable TextField field;
    private int typedRow = -1;
    private String begun = "";

    ShotCell(ShotTable table, Meaning meaning) {
        this.table = table;
        this.meaning = meaning;
        getStyleClass().add("shots-typed");
        setOnMousePressed(e -> {
            if (!isEmpty()) {
                table.go(getItem(), meaning);
                e.consume();
            }
        });
        table.live(this::show, this::drop);
    }

    @Override
    protected void updateItem(Integer row, boolean empty) {
        super.updateItem(row, empty);
        if (typedRow >= 0 && (empty || row == null || row != typedRow)) {
            finish();
        }
        show();
    }

    private void show() {
        if (isEmpty() || getItem() == null) {
            setText("");
            setGraphic(null);
            pseudoClassStateChanged(UNREAD, false);
            return;
        }
        TypedShot shot = table.model().row(getItem());
        var fault = shot.fault(meaning, table.model().units().of(meaning));
        pseudoClassStateChanged(UNREAD, fault.isPresent());
        setTooltip(fault.map(Tooltip::new).orElse(null));
        if (table.at(getItem(), meaning)) {
            begin(shot);
        } else if (typedRow < 0) {
            setContentDisplay(ContentDisplay.TEXT_ONLY);
            setGraphic(null);
            setText((fault.isPresent() ? "✕ " : "")
                    + shot.text(meaning, table.model().units()));
        }
    }

    private void begin(TypedShot shot) {
        if (typedRow >= 0) {
            return;
        }
        TextField typing = field();
        typedRow = getItem();
        typing.setId("cell-" + (typedRow + 1) + "-" + meaning.id());
        typing.setAccessibleText(Texts.of(
                "shots.cell",
                typedRow + 1,
                Texts.of("shots.figure." + meaning.id()),
                table.model().units().of(meaning).id()));
        begun = shot.text(meaning, table.model().units());
        typing.setText(begun);
        setText("");
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setGraphic(typing);
        focus(typing);
    }

    private void focus(TextField typing) {
        if (typedRow >= 0 && !typing.isFocused()) {
            typing.requestFocus();
            typing.selectAll();
        }
    }

    private TextField field() {
        if (field == null) {
            TextField made = new TextField();
            made.getStyleClass().add("shots-field");
            made.textProperty().addListener((o, before, now) -> {
                if (typedRow >= 0) {
                    table.model().typing(typedRow, meaning, now);
                }
            });
            // a cell that is only being made has no window yet: the focus waits for it
            made.sceneProperty().addListener((o, before, now) -> {
                if (now != null && typedRow >= 0) {
                    Platform.runLater(() -> focus(made));
                }
            });
            made.focusedProperty().addListener((o, before, now) -> {
                if (!now && typedRow >= 0) {
                    int row = typedRow;
                    finish();
                    table.rest(row, meaning);
                    show();
                }
            });
            made.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
            field = made;
        }
        return field;
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

    /** What is being typed is given up. */
    private void drop() {
        typedRow = -1;
    }

    private void finish() {
        if (typedRow >= 0 && field != null) {
            int row = typedRow;
            typedRow = -1;
            // a cell nobody typed into says nothing of the row that may stand there by now
            if (!field.getText().equals(begun)) {
                table.model().type(row, meaning, field.getText());
            }
        }
    }
}
