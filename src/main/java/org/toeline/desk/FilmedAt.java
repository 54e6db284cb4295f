package org.toeline.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import org.toeline.desk.lesson.LessonModel;

/**
 * At what rate the large view's clip was filmed: as its file says, or as the coach knows better. A phone's slow motion is
 * often played slowly without a word about it in the file.
 */
final class FilmedAt extends ComboBox<OptionalDouble> {

    private static final double[] USUAL = {30, 60, 120, 240};

    private final LessonModel model;
    private final ClipDrawer clips;
    private boolean updating;

    FilmedAt(LessonModel model, ClipDrawer clips) {
        this.model = model;
        this.clips = clips;
        setId("filmed-at");
        setAccessibleText(Texts.of("filmed.name"));
        setTooltip(new javafx.scene.control.Tooltip(Texts.of("filmed.hint")));
        setMinWidth(USE_PREF_SIZE);
        setConverter(new StringConverter<>() {
            @Override
            public String toString(OptionalDouble rate) {
                return rate == null || rate.isEmpty() ? Texts.of("filmed.file") : Texts.of("filmed.rate", number(rate));
            }

            @Override
            public OptionalDouble fromString(String text) {
                throw new UnsupportedOperationException("rates are chosen, not typed");
            }
        });
        setOnAction(e -> {
            if (!updating && getValue() != null) {
                model.filmedAt(model.large(), getValue());
            }
        });
    }

    private static String number(OptionalDouble rate) {
        double value = rate.orElseThrow();
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.2f", value);
    }

    /** Shows what counts for the large view. */
    void update() {
        OptionalDouble now = clips.filmedAt(model.large());
        List<OptionalDouble> all = new ArrayList<>(List.of(OptionalDouble.empty()));
        for (double rate : USUAL) {
            all.add(OptionalDouble.of(rate));
        }
        if (!all.contains(now)) {
            all.add(now);
        }
        updating = true;
        if (!getItems().equals(all)) {
            getItems().setAll(all);
        }
        setValue(now);
        updating = false;
        setDisable(!clips.has(model.large()));
    }

    /** How slowly the large view's clip plays; nothing where its time is real. */
    String slowed() {
        double factor = clips.slowMotion(model.large()).factor();
        boolean whole = Math.abs(factor - Math.rint(factor)) < 0.05;
        return factor == 1 ? "" : " " + Texts.of("filmed.slowed", String.format(Locale.ROOT, whole ? "%.0f" : "%.1f",
                factor));
    }
}
