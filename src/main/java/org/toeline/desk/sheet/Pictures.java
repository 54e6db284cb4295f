package org.toeline.desk.sheet;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.toeline.desk.look.Look;

/** The dark side of the window: the row of views, the picture, and what belongs to it below. */
final class Pictures extends VBox {

    /** In a narrow window. */
    private static final double LEAST_WIDTH = 350;

    private static final double USUAL_WIDTH = 660;
    /** Of the picture, in a low window. */
    private static final double LEAST_HEIGHT = 170;
    /** A row of controls. */
    private static final double LEAST_BELOW = 40;

    private final Scrolled below;

    Pictures(ViewRow views, OverThePicture over, Node strips, Node... controls) {
        super(8);
        setVgrow(over, Priority.ALWAYS);
        over.setMinHeight(LEAST_HEIGHT);
        below = new Scrolled(new VBox(8, controls));
        below.setId("below");
        below.setMinHeight(Look.px(LEAST_BELOW));
        below.setPrefHeight(USE_COMPUTED_SIZE);
        getChildren().setAll(views, over, strips, below);
        setPadding(new Insets(10));
        getStyleClass().add("surround");
        setMinWidth(LEAST_WIDTH);
        // whatever is said below the picture, and however long it is, must not move it
        setPrefWidth(USUAL_WIDTH);
    }

    /** While nothing is open there is nothing to control. */
    void controls(boolean shown) {
        below.setVisible(shown);
        below.setManaged(shown);
    }
}
