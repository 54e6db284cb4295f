package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.ButtonType;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.desk.Texts;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.ledger.LensBook.Profile;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.Laying;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Stature;
import org.toeline.mark.ViewMarks;

/** What is known besides the marks: what lies on the floor, how tall the player is, which lens filmed. */
final class KnownDialog {

    /** A height measured against a wall, standard deviation, metres. */
    private static final double MEASURED_SIGMA_M = 0.01;

    private final LessonModel model;
    private final Label fault = new Label();
    private final FloorGrid grid = new FloorGrid(this::check);
    private final CheckBox again = new CheckBox(Texts.of("known.again"));
    private final TextField height = new TextField();
    private final CheckBox measured = new CheckBox(Texts.of("known.height.measured"));
    private final List<LensChoice> lenses = new ArrayList<>();
    private final List<ViewMarks> views;
    private final Dialog<ButtonType> dialog = new Dialog<>();

    private KnownDialog(LessonModel model, List<Profile> profiles) {
        this.model = model;
        this.views = model.sheet().views();
        views.forEach(v -> lenses.add(new LensChoice(v, profiles)));
    }

    static void show(LessonModel model, List<Profile> profiles, Window window) {
        KnownDialog known = new KnownDialog(model, profiles);
        known.build(window);
        known.dialog.showAndWait().filter(b -> b == ButtonType.OK).flatMap(b -> known.sheet()).ifPresent(model::apply);
    }

    private void build(Window window) {
        dialog.initOwner(window);
        dialog.setTitle(Texts.of("known.title"));
        dialog.getDialogPane().getButtonTypes().addAll(ButtonType.OK, ButtonType.CANCEL);
        fault.setStyle("-fx-text-fill: #9a4300;");
        fault.setWrapText(true);
        fault.setMinHeight(20);
        VBox content = new VBox(10, heading("known.floor"), text("known.floor.text"), kinds(), floor(), again,
                heading("known.height"), heightRow());
        if (!lenses.isEmpty()) {
            content.getChildren().addAll(heading("known.lenses"), lensRows());
        }
        content.getChildren().add(fault);
        content.setPadding(new Insets(16));
        dialog.getDialogPane().setContent(content);
        dialog.getDialogPane().setMinHeight(Region.USE_PREF_SIZE);
        again.setId("laid-again");
        again.setWrapText(true);
        again.setPrefWidth(460);
        again.setMinHeight(Region.USE_PREF_SIZE);
        again.setSelected(model.sheet().floor().laying() == Laying.AGAIN);
        grid.show(model.sheet().floor());
        check();
    }

    private static Label heading(String key) {
        Label label = new Label(Texts.of(key));
        label.setStyle("-fx-font-weight: bold; -fx-font-size: 14px;");
        return label;
    }

    private static Label text(String key) {
        Label label = new Label(Texts.of(key));
        label.setWrapText(true);
        label.setPrefWidth(460);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private HBox kinds() {
        ChoiceBox<String> kind = new ChoiceBox<>();
        kind.setId("floor-kind");
        kind.setAccessibleText(Texts.of("known.floor"));
        kind.getItems().add(Texts.of("floor.none"));
        for (FloorKind k : FloorKind.values()) {
            kind.getItems().add(Texts.of("floor." + k.id()));
        }
        FloorLayout now = model.sheet().floor();
        if (now.points().isEmpty()) {
            kind.setValue(Texts.of("floor.none"));
        } else {
            kind.getItems().add(Texts.of("floor.measured"));
            kind.setValue(Texts.of("floor.measured"));
        }
        kind.getSelectionModel().selectedIndexProperty().addListener((o, a, b) -> {
            int index = b.intValue();
            grid.show(index == 0 ? FloorLayout.NONE : index <= FloorKind.values().length
                    ? FloorKind.values()[index - 1].layout() : now);
            check();
        });
        return new HBox(kind);
    }

    private ScrollPane floor() {
        ScrollPane pane = new ScrollPane(grid);
        pane.setFitToWidth(true);
        pane.setPrefViewportHeight(210);
        pane.setMinHeight(212);
        pane.setStyle("-fx-background-color: transparent;");
        return pane;
    }

    private HBox heightRow() {
        height.setId("height");
        height.setPrefColumnCount(6);
        height.setAccessibleText(Texts.of("known.height"));
        measured.setId("height-measured");
        model.sheet().stature().ifPresent(s -> {
            measured.setSelected(s.sigmaM() != Stature.TOLD_SIGMA_M);
            double shown = measured.isSelected() ? s.heightM() : s.heightM() + Stature.TOLD_TOO_TALL_M;
            height.setText(String.format(Locale.ROOT, "%.0f", 100 * shown));
        });
        height.textProperty().addListener((o, a, b) -> check());
        HBox row = new HBox(8, height, new Label(Texts.of("known.height.unit")), measured);
        row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        return row;
    }

    private GridPane lensRows() {
        GridPane rows = new GridPane();
        rows.setHgap(10);
        rows.setVgap(6);
        for (int i = 0; i < lenses.size(); i++) {
            rows.addRow(i, new Label(Texts.of("view." + views.get(i).view().id())), lenses.get(i));
        }
        return rows;
    }

    private void check() {
        String wrong = grid.layout(Laying.ONCE).isEmpty() ? Texts.of("known.floor.fault")
                : stature().isEmpty() && !height.getText().isBlank() ? Texts.of("known.height.fault") : "";
        fault.setText(wrong);
        Optional.ofNullable(dialog.getDialogPane().lookupButton(ButtonType.OK)).ifPresent(
                b -> b.setDisable(!wrong.isEmpty()));
    }

    private Optional<Stature> stature() {
        try {
            double metres = Double.parseDouble(height.getText().replace(',', '.').strip()) / 100;
            return Optional.of(measured.isSelected() ? new Stature(metres, MEASURED_SIGMA_M) : Stature.told(metres));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The sheet with what the fields say; marks of floor points that are no longer there go with them. */
    private Optional<MarkSheet> sheet() {
        return grid.layout(again.isSelected() ? Laying.AGAIN : Laying.ONCE).map(layout -> {
            MarkSheet sheet = model.sheet();
            for (int i = 0; i < views.size(); i++) {
                ViewMarks v = views.get(i).withLens(lenses.get(i).getValue().lens());
                for (var mark : v.floorMarks()) {
                    if (layout.point(mark.pointId()).isEmpty()) {
                        v = v.withoutFloorMark(mark.pointId());
                    }
                }
                sheet = sheet.withView(v);
            }
            return sheet.withFloor(layout).withStature(stature());
        });
    }
}
