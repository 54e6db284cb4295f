package org.toeline.desk.sheet;

import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.look.Look;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;
import org.toeline.language.Written;
import org.toeline.mark.View;

/**
 * Says how far from the marked frame one looks, leads back to it, and takes the frame shown in its place. Its room below the
 * picture is kept while it says nothing: the picture must not move when it comes and goes.
 */
final class AwayLine extends FlowPane {

    private static final double LEAST_SAID_S = 0.0005;
    /** In two lines, so that it fits beside what can be done in a column of usual width. */
    private static final double SAID_WIDTH = 196;

    private final Label said = new Label();

    private final LessonModel model;
    private final ClipDrawer clips;
    private final Runnable rest;

    /** @param rest what is done afterwards: the hand goes back to the picture */
    AwayLine(LessonModel model, ClipDrawer clips, FrameChange change, Runnable rest) {
        super(8, 4);
        setId("away");
        setAlignment(Pos.CENTER_LEFT);
        said.setId("away-text");
        said.getStyleClass().add("badge");
        said.setWrapText(true);
        said.setMaxWidth(Look.px(SAID_WIDTH));
        said.setPrefWidth(Look.px(SAID_WIDTH));
        this.rest = rest;
        this.model = model;
        this.clips = clips;
        Button back = Controls.button("away-back", "away.back", () -> {
            // before this line is hidden, and the key that comes next goes elsewhere
            rest.run();
            clips.back(model.large());
        });
        MenuButton here = new MenuButton(
                Texts.of("away.here"),
                null,
                item("away-follow", () -> change.follow(model.large())),
                item("away-afresh", () -> change.afresh(model.large())));
        here.setId("away-here");
        here.setMinWidth(USE_PREF_SIZE);
        back.setMinWidth(USE_PREF_SIZE);
        getChildren().setAll(said, back, here);
        update();
    }

    private MenuItem item(String id, Runnable action) {
        MenuItem item = new MenuItem(Texts.of(id.replace('-', '.')));
        item.setId(id);
        item.setOnAction(e -> {
            rest.run();
            action.run();
        });
        return item;
    }

    void update() {
        View view = model.large();
        boolean away = model.away(view) && !model.marks(view).orElseThrow().isBlank();
        OptionalDouble marked = clips.marked(view);
        setVisible(away && marked.isPresent());
        if (isVisible()) {
            double at = clips.time(view).orElseThrow()[0];
            said.setText(words(at - marked.getAsDouble(), marked.getAsDouble()));
        }
    }

    private static String words(double laterS, double markedS) {
        String key = Math.abs(laterS) < LEAST_SAID_S ? "away.coming" : laterS > 0 ? "away.later" : "away.earlier";
        return Texts.of(
                key,
                Written.number(Math.abs(laterS) < 0.1 ? "%.3f" : "%.2f", Math.abs(laterS)),
                Written.number("%.3f", markedS));
    }
}
