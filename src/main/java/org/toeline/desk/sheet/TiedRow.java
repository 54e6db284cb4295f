package org.toeline.desk.sheet;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.CustomMenuItem;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.toeline.advice.Assessment;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.look.Look;

/** How well the large view is tied to the world, and where its camera stands; away from the marked frame, how far away one looks. */
final class TiedRow extends StackPane {

    /** Of two lines of usual text. */
    private static final double BADGE_HEIGHT = 32;

    private final LessonModel model;
    private final Label badge = new Label();
    private final FilmedAt filmedAt;
    private final AwayLine away;

    TiedRow(LessonModel model, Sheet sheet, AwayLine away) {
        this.model = model;
        this.filmedAt = new FilmedAt(model, sheet.clips());
        this.away = away;
        Button where = ClipSteps.button("camera", "camera.where", () -> {});
        where.setOnAction(e -> sheet.camera(model.large(), text -> said(text, where)));
        badge.getStyleClass().add("badge");
        badge.setId("badge");
        badge.setWrapText(true);
        badge.setMaxWidth(Double.MAX_VALUE);
        // room for two lines, said or not: the picture above stays where it is
        badge.setMinHeight(Look.px(BADGE_HEIGHT));
        badge.setPrefHeight(Look.px(BADGE_HEIGHT));
        VBox tied = new VBox(4, badge, new FlowPane(10, 4, filmedAt, where));
        tied.setAlignment(Pos.CENTER_LEFT);
        tied.visibleProperty().bind(away.visibleProperty().not());
        getChildren().addAll(tied, away);
    }

    private static void said(String text, Button where) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setPrefWidth(Look.px(420));
        label.setMinHeight(USE_PREF_SIZE);
        label.setId("camera-text");
        label.getStyleClass().add("on-paper");
        CustomMenuItem item = new CustomMenuItem(new VBox(label), true);
        new ContextMenu(item).show(where, Side.TOP, 0, -4);
    }

    void update(Optional<Assessment> assessment) {
        filmedAt.update();
        away.update();
        badge(assessment);
    }

    /** Another moment of the film is shown. */
    void moved() {
        away.update();
    }

    void badge(Optional<Assessment> assessment) {
        badge.setText(assessment.map(a -> Badge.text(a, model.large())).orElse(""));
    }
}
