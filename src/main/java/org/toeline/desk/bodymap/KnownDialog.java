package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.Fault;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.desk.text.TypedNumber;
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

    private static final double FLOOR_WIDTH = 440;

    private final LessonModel model;
    private final LengthUnit unit;
    private final FloorGrid grid;
    private final ChoiceBox<String> kind = new ChoiceBox<>();
    private final CheckBox again = new CheckBox(Texts.of("known.again"));
    private final TextField height = new TextField();
    private final CheckBox measured = new CheckBox(Texts.of("known.height.measured"));
    private final List<LensChoice> lenses = new ArrayList<>();
    private final List<ViewMarks> views;

    private KnownDialog(LessonModel model, Words words, List<Profile> profiles) {
        this.model = model;
        this.unit = words.lengthUnit();
        this.grid = new FloorGrid(unit);
        this.views = model.sheet().views();
        views.forEach(v -> lenses.add(new LensChoice(v, profiles)));
    }

    /** @param floor what is shown first of what lies on the ground */
    static void show(LessonModel model, Words words, List<Profile> profiles, Window window, FloorLayout floor) {
        KnownDialog known = new KnownDialog(model, words, profiles);
        new DialogFrame(window, Texts.of("known.title"))
                .middle(new HBox(32, known.floor(floor), known.playerAndLenses()))
                .leave(Texts.of("dialog.cancel"))
                .act("known-keep", Texts.of("dialog.keep"), known::keep)
                .asksBeforeLosing(known::typed)
                .show();
    }

    private List<Object> typed() {
        return List.of(
                grid.typed(),
                again.isSelected(),
                height.getText(),
                measured.isSelected(),
                lenses.stream().map(ChoiceBox::getValue).toList());
    }

    private VBox floor(FloorLayout floor) {
        kinds();
        begin(floor);
        again.setId("laid-again");
        again.setWrapText(true);
        again.setMinHeight(Region.USE_PREF_SIZE);
        again.setSelected(model.sheet().floor().laying() == Laying.AGAIN);
        VBox box = new VBox(
                10,
                heading("known.floor"),
                DialogFrame.wrapped(Texts.of("known.floor.text", Texts.of("unit." + unit.id()))),
                kind,
                grid,
                again);
        box.setPrefWidth(Look.px(FLOOR_WIDTH));
        box.setMinWidth(Look.px(FLOOR_WIDTH));
        return box;
    }

    private void begin(FloorLayout floor) {
        grid.show(floor);
        for (FloorKind k : FloorKind.values()) {
            if (!floor.equals(model.sheet().floor()) && floor.equals(k.layout())) {
                kind.setValue(Texts.of("floor." + k.id()));
            }
        }
    }

    /** Kept with nothing on the ground, that is the answer to what lies there. */
    private void keep() {
        model.apply(sheet());
        if (model.selected().equals(Optional.of(Item.GROUND))) {
            model.skip();
        }
    }

    private VBox playerAndLenses() {
        VBox box = new VBox(10, heading("known.height"), heightRow(), new Fault(height, this::heightFault));
        if (!lenses.isEmpty()) {
            Label lens = heading("known.lenses");
            lens.setPadding(new Insets(10, 0, 0, 0));
            box.getChildren().addAll(lens, lensRows());
        }
        return box;
    }

    private static Label heading(String key) {
        Label label = new Label(Texts.of(key));
        label.getStyleClass().add("strong");
        return label;
    }

    private void kinds() {
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
            grid.show(
                    index == 0
                            ? FloorLayout.NONE
                            : index <= FloorKind.values().length ? FloorKind.values()[index - 1].layout() : now);
        });
    }

    private HBox heightRow() {
        height.setId("height");
        height.setPrefColumnCount(6);
        height.setAccessibleText(Texts.of("known.height"));
        measured.setId("height-measured");
        measured.setMinWidth(Region.USE_PREF_SIZE);
        model.sheet().stature().ifPresent(s -> {
            measured.setSelected(s.sigmaM() != Stature.TOLD_SIGMA_M);
            double shown = measured.isSelected() ? s.heightM() : s.heightM() + Stature.TOLD_TOO_TALL_M;
            height.setText(TypedNumber.shown(unit.fromMetres(shown), unit == LengthUnit.CENTIMETRE ? "0.#" : "0.##"));
        });
        HBox row = new HBox(8, height, new Label(unit.id()), measured);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private GridPane lensRows() {
        GridPane rows = new GridPane();
        rows.setHgap(10);
        rows.setVgap(6);
        for (int i = 0; i < lenses.size(); i++) {
            Label view = new Label(Texts.of("view." + views.get(i).view().id()));
            view.setMinWidth(Region.USE_PREF_SIZE);
            rows.addRow(i, view, lenses.get(i));
        }
        return rows;
    }

    private Optional<String> heightFault() {
        return stature().isEmpty() && !height.getText().isBlank()
                ? Optional.of(Texts.of("known.height.fault." + unit.id()))
                : Optional.empty();
    }

    private Optional<Stature> stature() {
        OptionalDouble typed = TypedNumber.read(height.getText());
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        try {
            double metres = unit.toMetres(typed.getAsDouble());
            return Optional.of(measured.isSelected() ? new Stature(metres, MEASURED_SIGMA_M) : Stature.told(metres));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The sheet with what the fields say; marks of floor points that are no longer there go with them. */
    private MarkSheet sheet() {
        FloorLayout layout = grid.layout(again.isSelected() ? Laying.AGAIN : Laying.ONCE);
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
    }
}
