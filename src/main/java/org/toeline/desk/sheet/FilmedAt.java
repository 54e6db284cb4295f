package org.toeline.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.util.StringConverter;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.language.Written;

/**
 * At what rate the large view's clip was filmed: as its file says, or as the coach knows better. A phone's slow motion is
 * often played slowly without a word about it in the file.
 */
final class FilmedAt extends HBox {

    private static final double[] USUAL = {30, 60, 120, 240};

    private final LessonModel model;
    private final ClipDrawer clips;
    private final Label slowed = new Label();
    private final ComboBox<OptionalDouble> rate = new ComboBox<>();
    private boolean updating;

    FilmedAt(LessonModel model, ClipDrawer clips) {
        this.model = model;
        this.clips = clips;
        setSpacing(8);
        setAlignment(Pos.CENTER_RIGHT);
        slowed.setId("slowed");
        slowed.setMinWidth(USE_PREF_SIZE);
        rate.setId("filmed-at");
        rate.setAccessibleText(Texts.of("filmed.name"));
        rate.setTooltip(new Tooltip(Texts.of("filmed.hint")));
        rate.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(slowed, rate);
        rate.setConverter(new StringConverter<>() {
            @Override
            public String toString(OptionalDouble said) {
                return said == null || said.isEmpty() ? Texts.of("filmed.file") : Texts.of("filmed.rate", number(said));
            }

            @Override
            public OptionalDouble fromString(String text) {
                throw new UnsupportedOperationException("rates are chosen, not typed");
            }
        });
        rate.setOnAction(e -> {
            if (!updating && rate.getValue() != null) {
                model.filmedAt(model.large(), rate.getValue());
            }
        });
    }

    private static String number(OptionalDouble said) {
        double value = said.orElseThrow();
        return value == Math.rint(value) ? Written.number("%.0f", value) : Written.number("%.2f", value);
    }

    /** Shows what counts for the large view. */
    void update() {
        OptionalDouble now = clips.filmedAt(model.large());
        List<OptionalDouble> all = new ArrayList<>(List.of(OptionalDouble.empty()));
        for (double usual : USUAL) {
            all.add(OptionalDouble.of(usual));
        }
        if (!all.contains(now)) {
            all.add(now);
        }
        updating = true;
        if (!rate.getItems().equals(all)) {
            rate.getItems().setAll(all);
        }
        rate.setValue(now);
        updating = false;
        rate.setDisable(!clips.has(model.large()));
        slowed.setText(slowed());
    }

    /** How slowly the large view's clip plays; nothing where its time is real. */
    private String slowed() {
        double factor = clips.slowMotion(model.large()).factor();
        boolean whole = Math.abs(factor - Math.rint(factor)) < 0.05;
        return factor == 1 ? "" : Texts.of("filmed.slowed", Written.number(whole ? "%.0f" : "%.1f", factor));
    }
}
