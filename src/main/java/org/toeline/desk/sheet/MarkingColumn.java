package org.toeline.desk.sheet;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** The body map in a column that is scrolled in a low window, so that the picture keeps its controls. */
final class MarkingColumn extends ScrollPane {

    MarkingColumn(Region tall) {
        super(tall);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setMinWidth(tall.getMinWidth() + 2);
        setMinHeight(0);
        setId("marking-column");
        getStyleClass().addAll("paper", "edge-to-edge");
    }
}
