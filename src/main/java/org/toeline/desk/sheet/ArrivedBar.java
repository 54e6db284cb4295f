package org.toeline.desk.sheet;

import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.screen.Controls;
import org.toeline.mark.View;

/** Which of several clips was taken for which view, until somebody says that it is right or something is marked. */
final class ArrivedBar extends OverPicture {

    private final LessonModel model;
    private boolean asks;

    /**
     * @param exchange what exchanges the views
     * @param rest     what is done afterwards: the hand goes back to the picture
     */
    ArrivedBar(LessonModel model, Runnable exchange, Runnable rest) {
        super("arrived");
        this.model = model;
        actions(
                Controls.button("arrived-exchange", "drop.exchange", () -> {
                    rest.run();
                    exchange.run();
                    answered();
                }),
                Controls.button("arrived-right", "drop.right", () -> {
                    rest.run();
                    answered();
                }));
    }

    void ask(String words) {
        said.setText(words);
        asks = true;
        update();
    }

    /** Also when the views are exchanged by key, or with another lesson. */
    void answered() {
        asks = false;
        update();
    }

    void update() {
        setVisible(asks && isBlank(View.FACE_ON) && isBlank(View.DOWN_THE_LINE));
    }

    private boolean isBlank(View view) {
        return model.sheet().view(view).isPresent() && !model.begun(view);
    }
}
