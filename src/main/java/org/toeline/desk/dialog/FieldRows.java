package org.toeline.desk.dialog;

import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.toeline.desk.look.Look;

/** Fields under one another: at the left what each is called, never cut short, and below a field what is wrong with it. */
public final class FieldRows extends GridPane {

    private static final double FIELD_WIDTH = 400;

    public FieldRows() {
        setHgap(12);
        setVgap(8);
        ColumnConstraints fields = new ColumnConstraints();
        fields.setHgrow(Priority.ALWAYS);
        fields.setPrefWidth(Look.px(FIELD_WIDTH));
        getColumnConstraints().setAll(new ColumnConstraints(), fields);
    }

    /** @param below what stands below the field, such as its fault */
    public FieldRows row(String words, Node field, Node... below) {
        Label label = new Label(words);
        label.setLabelFor(field);
        label.setMinWidth(Region.USE_PREF_SIZE);
        // beside the field, not beside its fault
        GridPane.setValignment(label, VPos.TOP);
        label.setStyle("-fx-padding: 7 0 0 0;");
        VBox box = new VBox(3, field);
        box.getChildren().addAll(below);
        addRow(getRowCount(), label, box);
        return this;
    }

    /** What belongs to no field of its own, below the fields or across the whole width. */
    public FieldRows across(Node node) {
        add(node, 0, getRowCount(), 2, 1);
        return this;
    }
}
