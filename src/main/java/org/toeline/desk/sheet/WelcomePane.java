package org.toeline.desk.sheet;

import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.toeline.desk.look.Look;
import org.toeline.desk.players.Said;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.LessonLine;

/** What a new user sees first: the sample lesson, one click away, and the last lesson when there is one. */
final class WelcomePane extends VBox {

    private static final double SPACING = 16;

    private final IntConsumer open;

    /**
     * @param sample opens the sample lesson
     * @param open   opens a lesson of the ledger, by its number
     */
    WelcomePane(Runnable sample, IntConsumer open) {
        super(SPACING);
        this.open = open;
        Label title = new Label(Texts.of("welcome.title"));
        title.setWrapText(true);
        title.setTextAlignment(TextAlignment.CENTER);
        title.setMinHeight(USE_PREF_SIZE);
        title.getStyleClass().add("first-title");
        title.setWrapText(true);
        title.setTextAlignment(TextAlignment.CENTER);
        title.setMinHeight(USE_PREF_SIZE);
        title.getStyleClass().add("on-surround");
        Label text = new Label(Texts.of("welcome.text"));
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        text.setMaxWidth(Look.px(420));
        text.setTextAlignment(TextAlignment.CENTER);
        setAlignment(Pos.CENTER);
        getChildren().addAll(title, text, button("open-sample", Texts.of("sample.open"), sample));
        setVisible(false);
    }

    private static Button button(String id, String text, Runnable action) {
        Button button = new Button(text);
        button.setId(id);
        button.getStyleClass().add("first-button");
        button.setOnAction(e -> action.run());
        return button;
    }

    /** Offers the last lesson, first. */
    void goOn(LessonLine last) {
        getChildren().removeIf(n -> "go-on".equals(n.getId()));
        getChildren()
                .add(
                        2,
                        button(
                                "go-on",
                                Texts.of(
                                        "welcome.go-on",
                                        Said.player(last.playerName(), last.playerId()),
                                        Said.day(last.recorded())),
                                () -> open.accept(last.id())));
    }
}
