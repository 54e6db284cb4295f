package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import org.toeline.desk.Texts;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Laying;

/** The measured places of the floor points, a row each, in centimetres. */
final class FloorGrid extends GridPane {

    private final List<String> ids = new ArrayList<>();
    private final List<TextField> fields = new ArrayList<>();
    private final Runnable changed;
    private double sigmaM = FloorLayout.USUAL_SIGMA_M;

    FloorGrid(Runnable changed) {
        this.changed = changed;
        setHgap(10);
        setVgap(6);
    }

    void show(FloorLayout layout) {
        getChildren().clear();
        ids.clear();
        fields.clear();
        sigmaM = layout.sigmaM();
        if (layout.points().isEmpty()) {
            addRow(0, new Label(Texts.of("known.floor.nothing")));
            return;
        }
        addRow(0, new Label(""), new Label(Texts.of("known.floor.t")), new Label(Texts.of("known.floor.h")));
        for (FloorReference p : layout.points()) {
            TextField t = field(p.t(), p.id() + " t");
            TextField h = field(p.h(), p.id() + " h");
            ids.add(p.id());
            addRow(ids.size(), new Label(p.id()), t, h);
        }
    }

    private TextField field(double metres, String name) {
        TextField field = new TextField(String.format(Locale.ROOT, "%.1f", metres * 100));
        field.setAccessibleText(name);
        field.setId("floor-" + name.replace(' ', '-'));
        field.setPrefColumnCount(6);
        field.textProperty().addListener((o, a, b) -> changed.run());
        fields.add(field);
        return field;
    }

    /** What the fields say; empty when one is no number or two points lie in one place. */
    Optional<FloorLayout> layout(Laying laying) {
        try {
            List<FloorReference> measured = new ArrayList<>();
            for (int i = 0; i < ids.size(); i++) {
                measured.add(new FloorReference(ids.get(i), metres(fields.get(2 * i)), metres(fields.get(2 * i + 1))));
            }
            return Optional.of(new FloorLayout(measured, sigmaM, laying));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static double metres(TextField field) {
        return Double.parseDouble(field.getText().replace(',', '.').strip()) / 100;
    }
}
