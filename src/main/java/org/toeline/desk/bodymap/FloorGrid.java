package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.Fault;
import org.toeline.desk.text.Texts;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Laying;

/** The measured places of the floor points, a row each, in centimetres; what is wrong with a field is said below it. */
final class FloorGrid extends GridPane {

    private final List<Row> rows = new ArrayList<>();
    private double sigmaM = FloorLayout.USUAL_SIGMA_M;

    /** A floor point and the fields for its place. */
    private record Row(String id, TextField t, TextField h) {

        private Optional<FloorReference> point() {
            return metres(t).flatMap(tM -> metres(h).map(hM -> new FloorReference(id, tM, hM)));
        }
    }

    FloorGrid() {
        setHgap(10);
        setVgap(6);
    }

    void show(FloorLayout layout) {
        getChildren().clear();
        rows.clear();
        sigmaM = layout.sigmaM();
        if (layout.points().isEmpty()) {
            addRow(0, DialogFrame.wrapped(Texts.of("known.floor.nothing")));
            return;
        }
        addRow(0, new Label(), new Label(Texts.of("known.floor.t")), new Label(Texts.of("known.floor.h")));
        for (FloorReference p : layout.points()) {
            Row row = new Row(p.id(), field(p, "t", p.t()), field(p, "h", p.h()));
            rows.add(row);
            Label name = new Label(ItemNames.ofFloor(p.id()));
            name.setMinWidth(Region.USE_PREF_SIZE);
            name.setPadding(new Insets(7, 0, 0, 0));
            GridPane.setValignment(name, VPos.TOP);
            addRow(
                    rows.size(),
                    name,
                    new VBox(2, row.t, new Fault(row.t, () -> noNumber(row.t))),
                    new VBox(2, row.h, new Fault(row.h, () -> noNumber(row.h).or(() -> samePlace(row)))));
        }
    }

    private static TextField field(FloorReference of, String axis, double metres) {
        TextField field = new TextField(String.format(Locale.ROOT, "%.1f", metres * 100));
        field.setAccessibleText(ItemNames.ofFloor(of.id()) + ", " + Texts.of("known.floor." + axis));
        field.setId("floor-" + of.id() + "-" + axis);
        field.setPrefColumnCount(6);
        return field;
    }

    private static Optional<String> noNumber(TextField field) {
        return metres(field).isPresent() ? Optional.empty() : Optional.of(Texts.of("known.floor.fault"));
    }

    private Optional<String> samePlace(Row row) {
        return row.point()
                .flatMap(own -> rows.subList(0, rows.indexOf(row)).stream()
                        .flatMap(earlier -> earlier.point().stream())
                        .filter(p -> Math.hypot(p.t() - own.t(), p.h() - own.h()) < FloorLayout.COINCIDENT_M)
                        .findFirst()
                        .map(p -> Texts.of("known.floor.same", ItemNames.ofFloor(p.id()))));
    }

    /** What the fields hold, in order. */
    List<String> typed() {
        return rows.stream()
                .flatMap(row -> Stream.of(row.id, row.t.getText(), row.h.getText()))
                .toList();
    }

    /** @throws IllegalStateException while a field has a fault */
    FloorLayout layout(Laying laying) {
        return new FloorLayout(
                rows.stream()
                        .map(row -> row.point()
                                .orElseThrow(() -> new IllegalStateException("“" + row.id + "” has no place")))
                        .toList(),
                sigmaM,
                laying);
    }

    private static Optional<Double> metres(TextField field) {
        try {
            return Optional.of(
                            Double.parseDouble(field.getText().replace(',', '.').strip()) / 100)
                    .filter(Double::isFinite);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
