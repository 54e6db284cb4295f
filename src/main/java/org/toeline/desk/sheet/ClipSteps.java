package org.toeline.desk.sheet;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import org.toeline.desk.film.Films;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.look.Look;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.text.Texts;
import org.toeline.language.Written;

/** Going from frame to frame of the large view's clip: steps, the time to go to, the moment of address, all of the picture. */
final class ClipSteps extends FlowPane {

    private final LessonModel model;
    private final ClipDrawer clips;
    private final Films films;
    private final PicturePane picture;
    private final TextField time = new TextField();
    private final Label length = new Label();

    ClipSteps(LessonModel model, Sheet sheet, PicturePane picture) {
        super(6, 6);
        this.model = model;
        this.clips = sheet.clips();
        this.films = sheet.films();
        this.picture = picture;
        getChildren()
                .addAll(
                        button("step-back10", "step.back10", () -> films.jump(-0.1)),
                        button("step-back", "step.back", () -> films.step(-1)),
                        time,
                        length,
                        button("step-on", "step.on", () -> films.step(1)),
                        button("step-on10", "step.on10", () -> films.jump(0.1)));
        setAlignment(Pos.CENTER_LEFT);
        setId("steps");
        time.setId("time");
        time.setAccessibleText(Texts.of("time.name"));
        time.setMinWidth(Look.px(74));
        time.setPrefWidth(Look.px(74));
        length.setMinWidth(Look.px(62));
        time.setOnAction(e -> seek());
        time.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                picture.requestFocus();
                update();
            }
        });
    }

    private void seek() {
        try {
            films.seek(Double.parseDouble(time.getText().replace(',', '.').strip()));
            picture.requestFocus();
        } catch (NumberFormatException x) {
            update();
        }
    }

    static Button button(String id, String key, Runnable action) {
        Button button = new Button(Texts.of(key));
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setFocusTraversable(false);
        button.setOnAction(e -> action.run());
        return button;
    }

    /** Shows where in its clip the large view is. */
    void update() {
        Optional<double[]> at = clips.time(model.large());
        time.setDisable(at.isEmpty());
        if (!time.isFocused()) {
            time.setText(at.map(t -> Written.number("%.3f", t[0])).orElse(""));
        }
        length.setText(at.map(t -> Texts.of("time.of", Written.number("%.2f", t[1])))
                .orElse(Texts.of("view.no-clip")));
    }
}
