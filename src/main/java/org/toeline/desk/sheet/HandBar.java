package org.toeline.desk.sheet;

import java.util.Optional;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;

/** A picture shows the other hand than is set: which one is right, until somebody says so. */
final class HandBar extends OverPicture {

    private final LessonModel model;
    private final Assistant assistant;

    /** @param rest what is done afterwards: the hand goes back to the picture */
    HandBar(LessonModel model, Assistant assistant, Runnable rest) {
        super("hand-seen");
        this.model = model;
        this.assistant = assistant;
        actions(
                Controls.button("hand-seen-change", "hand.seen.change", () -> {
                    rest.run();
                    asks().ifPresent(differs -> model.handedness(differs.hand()));
                }),
                Controls.button("hand-seen-keep", "hand.seen.keep", () -> {
                    rest.run();
                    assistant.keepHand();
                }));
    }

    private Optional<HandSeen.Differs> asks() {
        return assistant.hands().asks(model.lesson());
    }

    void update() {
        Optional<HandSeen.Differs> asks = asks();
        setVisible(asks.isPresent());
        asks.ifPresent(d -> said.setText(Texts.of(
                "hand.seen." + d.hand().id(), Texts.of("view." + d.view().id()))));
    }
}
