package org.toeline.desk.sheet;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** What is beside and below the picture: scrolled in a low window, so that the picture keeps its room. */
class Scrolled extends ScrollPane {

    Scrolled(Region tall) {
        super(tall);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setMinHeight(0);
        getStyleClass().add("edge-to-edge");
    }
}
