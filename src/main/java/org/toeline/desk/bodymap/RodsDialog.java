package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.desk.Texts;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;

/** Where the rods' ends were measured to lie. */
final class RodsDialog {

    private RodsDialog() {
    }

    static void show(LessonModel model, Window window) {
        Dialog<ButtonType> dialog = new Dialog<>();
        dialog.initOwner(window);
        dialog.setTitle(Texts.of("rods.title"));
        dialog.getDialogPane().getButtonTypes().addAll(ButtonType.OK, ButtonType.CANCEL);
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(8);
        grid.addRow(0, new Label(""), new Label("t, cm"), new Label("h, cm"));
        List<TextField> fields = new ArrayList<>();
        List<FloorReference> points = model.sheet().floor().points();
        for (int i = 0; i < points.size(); i++) {
            TextField t = new TextField(centimetres(points.get(i).t()));
            TextField h = new TextField(centimetres(points.get(i).h()));
            t.setAccessibleText(points.get(i).id() + " t");
            h.setAccessibleText(points.get(i).id() + " h");
            fields.add(t);
            fields.add(h);
            grid.addRow(i + 1, new Label(points.get(i).id()), t, h);
        }
        Label text = new Label(Texts.of("rods.text"));
        text.setWrapText(true);
        text.setPrefWidth(460);
        text.setMinHeight(Region.USE_PREF_SIZE);
        Label fault = new Label();
        fault.setStyle("-fx-text-fill: #9a4300;");
        VBox content = new VBox(12, text, grid, fault);
        content.setPadding(new Insets(16));
        dialog.getDialogPane().setContent(content);
        double sigmaM = model.sheet().floor().sigmaM();
        fields.forEach(f -> f.textProperty().addListener((o, a, b) -> {
            boolean good = layout(points, fields, sigmaM).isPresent();
            fault.setText(good ? "" : Texts.of("rods.fault"));
            dialog.getDialogPane().lookupButton(ButtonType.OK).setDisable(!good);
        }));
        dialog.showAndWait().filter(b -> b == ButtonType.OK)
                .flatMap(b -> layout(points, fields, sigmaM))
                .ifPresent(layout -> model.apply(model.sheet().withFloor(layout)));
    }

    private static String centimetres(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres * 100);
    }

    /** What the fields say; empty when one is no number or two points lie in one place. */
    private static Optional<FloorLayout> layout(List<FloorReference> points, List<TextField> fields, double sigmaM) {
        try {
            List<FloorReference> measured = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                measured.add(new FloorReference(points.get(i).id(), metres(fields.get(2 * i)),
                        metres(fields.get(2 * i + 1))));
            }
            return Optional.of(new FloorLayout(measured, sigmaM));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static double metres(TextField field) {
        return Double.parseDouble(field.getText().replace(',', '.').strip()) / 100;
    }
}
