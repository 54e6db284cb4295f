package org.toeline.desk.sheet;

import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.bodymap.MarkingPane;
import org.toeline.desk.look.Look;

/**
 * What is to be marked, beside the picture. Where the window is low it takes a little of the width, of which the picture
 * cannot make use then.
 */
final class MarkingColumn extends Scrolled {

    /** Higher than this the guide is seen whole as it is. */
    private static final double LOW = 860;

    private static final double WIDE = 1300;
    /** Beside what is scrolled. */
    private static final double BAR = 16;

    private final MarkingPane marking;
    private final Region window;
    private final Runnable update;
    private MarkingPane.@Nullable Room room;

    /** @param update done when the room is another */
    MarkingColumn(MarkingPane marking, Region window, Runnable update) {
        super(marking);
        this.marking = marking;
        this.window = window;
        this.update = update;
        setId("marking-column");
        getStyleClass().add("paper");
        window.heightProperty().addListener((o, before, now) -> fit());
        window.widthProperty().addListener((o, before, now) -> fit());
        fit();
    }

    private void fit() {
        boolean low = window.getHeight() < Look.px(LOW) && window.getWidth() >= Look.px(WIDE);
        MarkingPane.Room now = low ? MarkingPane.Room.LOW : MarkingPane.Room.USUAL;
        if (now == room) {
            return;
        }
        room = now;
        marking.room(now);
        setMinWidth(marking.getMinWidth() + BAR);
        update.run();
    }
}
