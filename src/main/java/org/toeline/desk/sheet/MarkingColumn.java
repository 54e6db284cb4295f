package org.toeline.desk.sheet;

import javafx.scene.layout.Region;

/** The body map's column. */
final class MarkingColumn extends Scrolled {

    /** Of the bar beside what is scrolled. */
    private static final double BAR = 16;

    MarkingColumn(Region tall) {
        super(tall);
        setMinWidth(tall.getMinWidth() + BAR);
        setId("marking-column");
        getStyleClass().add("paper");
    }
}
