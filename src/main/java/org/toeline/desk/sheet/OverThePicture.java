package org.toeline.desk.sheet;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.mark.View;

/** The picture with what lies over it and not below, so that nothing moves under the hand when a line comes or goes. */
final class OverThePicture extends StackPane {

    private final LessonModel model;
    private final Sheet sheet;
    private final Label drop = new Label(Texts.of("view.drop"));
    private final MissingBar missing;
    private final ShiftedBar shifted;
    private final ArrivedBar arrived;
    private final HandBar hand;
    private final WelcomePane welcome;

    OverThePicture(LessonModel model, Sheet sheet, Node pictures, ShownLight light, Runnable back) {
        this.model = model;
        this.sheet = sheet;
        this.missing = new MissingBar(sheet.missing());
        this.shifted = new ShiftedBar(model, sheet.clips(), sheet.background(), back);
        this.arrived = new ArrivedBar(model, () -> sheet.arrivals().exchange(), back);
        // a picture that tells the hand tells its view too: nothing more is asked, nor comes under the mouse
        this.hand = new HandBar(model, sheet.assistant(), () -> {
            back.run();
            arrived.answered();
        });
        sheet.assistant().hands().listen(this::askOne);
        this.welcome =
                new WelcomePane(() -> sheet.desk().sample(), id -> sheet.desk().open(id));
        Region work = sheet.clips().lines();
        work.setMaxHeight(USE_PREF_SIZE);
        drop.setMouseTransparent(true);
        VBox asked = asked(missing, shifted, hand, arrived);
        getChildren().addAll(pictures, light, drop, asked, welcome, work);
        setAlignment(light, Pos.BOTTOM_LEFT);
        setAlignment(asked, Pos.TOP_CENTER);
        setAlignment(work, Pos.BOTTOM_CENTER);
    }

    /** What is asked stands below one another; between and beside it the picture takes the mouse. */
    private static VBox asked(Node... bars) {
        VBox asked = new VBox(4, bars);
        asked.setAlignment(Pos.TOP_CENTER);
        asked.setPickOnBounds(false);
        asked.setMaxHeight(USE_PREF_SIZE);
        for (Node bar : bars) {
            bar.managedProperty().bind(bar.visibleProperty());
        }
        return asked;
    }

    /** Offers the last lesson, first. */
    void goOn(LessonLine last) {
        welcome.goOn(last);
    }

    void welcome(boolean shown) {
        welcome.setVisible(shown);
    }

    boolean isWelcome() {
        return welcome.isVisible();
    }

    /** Which of several clips was taken for which view; asked until it is answered or something is marked. */
    ArrivedBar whichIsWhich() {
        return arrived;
    }

    /** A view's clip was looked through. */
    void lookedThrough(View view) {
        shifted.lookedThrough(view);
    }

    void clear() {
        shifted.forget();
        sheet.assistant().hands().forget();
        arrived.answered();
    }

    void update(boolean hasPicture) {
        missing.show(
                sheet.missing().name(model.large()).filter(n -> !welcome.isVisible()),
                model.file().isPresent());
        drop.setVisible(!hasPicture && !welcome.isVisible() && !missing.isVisible());
        shifted.update();
        askOne();
    }

    /** One thing after the other, or they hide the player. */
    private void askOne() {
        hand.update();
        arrived.update();
        if (hand.isVisible()) {
            arrived.setVisible(false);
        }
    }
}
