package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.toeline.advice.LengthUnit;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.Fault;
import org.toeline.desk.lesson.Rods;
import org.toeline.desk.text.Texts;
import org.toeline.desk.text.TypedNumber;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Laying;

/** The measured places of the floor points, a row each, in the unit in use; what is wrong with a field is said below it. */
final class FloorGrid extends GridPane {

    private final List<Row> rows = new ArrayList<>();
    private double sigmaM = FloorLayout.USUAL_SIGMA_M;

    private final LengthUnit unit;

    /** A floor point and the fields for its place. */
    private record Row(String id, Length t, Length h) {

        private Optional<FloorReference> point() {
            return t.metres().flatMap(tM -> h.metres().map(hM -> new FloorReference(id, tM, hM)));
        }
    }

    /** A field with a length, which stays exactly what it was while nobody types. */
    private final class Length {

        private final TextField field;
        private final double beforeM;
        private final String before;
        private boolean isTyped;

        private Length(FloorReference of, String axis, double metres) {
            beforeM = metres;
            before = TypedNumber.shown(unit.fromMetres(metres), unit == LengthUnit.CENTIMETRE ? "0.0" : "0.00");
            field = new TextField(before);
            field.setAccessibleText(ItemNames.ofFloor(of.id()) + ", " + Texts.of("known.floor." + axis));
            field.setId("floor-" + of.id() + "-" + axis);
            field.setPrefColumnCount(6);
        }

        private Optional<Double> metres() {
            if (field.getText().equals(before)) {
                return Optional.of(beforeM);
            }
            OptionalDouble typed = TypedNumber.read(field.getText());
            return typed.isPresent() ? Optional.of(unit.toMetres(typed.getAsDouble())) : Optional.empty();
        }

        private Optional<String> noNumber() {
            return metres().isPresent() ? Optional.empty() : Optional.of(Texts.of("known.floor.fault"));
        }
    }

    FloorGrid(LengthUnit unit) {
        this.unit = unit;
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
        addRow(0, new Label(), heading("t"), heading("h"));
        for (FloorReference p : layout.points()) {
            Row row = new Row(p.id(), new Length(p, "t", p.t()), new Length(p, "h", p.h()));
            rows.add(row);
            Label name = new Label(ItemNames.ofFloor(p.id()));
            name.setMinWidth(Region.USE_PREF_SIZE);
            name.setPadding(new Insets(7, 0, 0, 0));
            GridPane.setValignment(name, VPos.TOP);
            addRow(
                    rows.size(),
                    name,
                    new VBox(2, row.t.field, new Fault(row.t.field, row.t::noNumber)),
                    new VBox(
                            2,
                            row.h.field,
                            new Fault(row.h.field, () -> row.h.noNumber().or(() -> samePlace(row)))));
        }
        rows.forEach(row -> Rods.otherEnd(layout, row.id)
                .flatMap(id -> rows.stream().filter(r -> r.id.equals(id)).findFirst())
                .ifPresent(other -> {
                    follows(other.t, row.t);
                    follows(other.h, row.h);
                }));
    }

    /** A rod that is moved sideways is moved at both ends: the other end goes along until it is typed itself. */
    private static void follows(Length other, Length typed) {
        typed.field.textProperty().addListener((text, old, now) -> {
            if (typed.field.isFocused()) {
                typed.isTyped = true;
                if (!other.isTyped && other.field.getText().equals(old)) {
                    other.field.setText(now);
                }
            }
        });
    }

    private Label heading(String axis) {
        Label heading = new Label(Texts.of("known.floor." + axis) + ", " + unit.id());
        heading.setWrapText(true);
        heading.setMinHeight(Region.USE_PREF_SIZE);
        return heading;
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
                .flatMap(row -> Stream.of(row.id, row.t.field.getText(), row.h.field.getText()))
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
}
