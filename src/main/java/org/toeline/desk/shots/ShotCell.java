package org.toeline.desk.shots;

import javafx.css.PseudoClass;
import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;
import org.toeline.flight.table.Meaning;

/** A cell that may be typed into, as long as it is not: then {@link ShotEditor} lies over it. */
final class ShotCell extends TableCell<Integer, Integer> {

    private static final PseudoClass UNREAD = PseudoClass.getPseudoClass("unread");

    private final ShotTable table;
    private final Meaning meaning;

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
        table.live(this::show, this);
    }

    @Override
    protected void updateItem(Integer row, boolean empty) {
        super.updateItem(row, empty);
        show();
    }

    /** Whether it is the one of a row and a column, and on the screen. */
    boolean shows(int row, Meaning column) {
        return meaning == column
                && !isEmpty()
                && getItem() == row
                && getScene() != null
                && getTableRow() != null
                && getTableRow().isVisible();
    }

    private void show() {
        if (isEmpty() || getItem() == null) {
            setText("");
            pseudoClassStateChanged(UNREAD, false);
            pseudoClassStateChanged(ShotTable.ASIDE, false);
            return;
        }
        TypedShot shot = table.model().row(getItem());
        var fault = shot.fault(meaning, table.model().units().of(meaning));
        pseudoClassStateChanged(UNREAD, fault.isPresent());
        pseudoClassStateChanged(ShotTable.ASIDE, table.aside(getItem()));
        setTooltip(fault.map(Tooltip::new).orElse(null));
        setText((fault.isPresent() ? "✕ " : "")
                + shot.text(meaning, table.model().units()));
    }
}
