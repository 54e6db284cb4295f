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

    private final VBox controls;
    private final Scrolled below;
    private double laidOutWidth;

    Pictures(ViewRow views, OverThePicture over, Node strips, Node... parts) {
        super(8);
        setVgrow(over, Priority.ALWAYS);
        over.setMinHeight(LEAST_HEIGHT);
        controls = new VBox(8, parts);
        below = new Scrolled(controls);
        below.setId("below");
        below.setMinHeight(Look.px(LEAST_BELOW));
        getChildren().setAll(views, over, strips, below);
        setPadding(new Insets(10));
        getStyleClass().add("surround");
        setMinWidth(LEAST_WIDTH);
        // whatever is said below the picture, and however long it is, must not move it
        setPrefWidth(USUAL_WIDTH);
    }

    /** What is below gets the height that it needs at this width; what it once needed it keeps, so that the picture stays. */
    @Override
    protected void layoutChildren() {
        double width = getWidth() - snappedLeftInset() - snappedRightInset();
        double needed = Math.ceil(controls.prefHeight(width)) + 1;
        double kept = width == laidOutWidth ? Math.max(needed, below.getPrefHeight()) : needed;
        laidOutWidth = width;
        if (kept != below.getPrefHeight()) {
            below.setPrefHeight(kept);
        }
        super.layoutChildren();
    }

    /** While nothing is open there is nothing to control. */
    void controls(boolean shown) {
        below.setVisible(shown);
        below.setManaged(shown);
    }
}
