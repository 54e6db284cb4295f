package org.toeline.desk.sheet;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A few words over the picture with what can be done about them: beside each other where there is room, else below. */
abstract class OverPicture extends VBox {

    private static final double ROOM = 520;

    final Label said = new Label();

    OverPicture(String id) {
        super(6);
        setId(id);
        getStyleClass().add("over-picture");
        setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        said.setId(id + "-text");
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        setVisible(false);
    }

    final void actions(Node... controls) {
        FlowPane row = new FlowPane(8, 6, controls);
        row.setPrefWrapLength(ROOM);
        getChildren().setAll(said, row);
    }
}
