package org.toeline.desk.shots;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputDialog;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Quantity;
import org.toeline.flight.table.Meaning;

/** The row above the table: what can be done with the shots, and what is chosen once: units and columns. */
final class ShotBar extends FlowPane {

    /** What its buttons do. */
    interface Acts {

        void takeIn();

        void exportTable();

        void exportPicture();

        void undo();

        void redo();

        void removeRow();

        /** @param why empty lets the shot count again */
        void putAside(String why);
    }

    private static final List<String> REASONS = List.of("mishit", "disturbed", "misread", "other-club");

    private final Consumer<ShotSettings> changed;
    private final Button undo;
    private final Button redo;
    private final Button remove;
    private final MenuButton aside = new MenuButton(Texts.of("shots.aside"));
    private final Button table;
    private final Button picture;
    private final ComboBox<FigureUnit> speed = units("speed", Quantity.SPEED);
    private final ComboBox<FigureUnit> length = units("length", Quantity.LENGTH);
    private final ComboBox<FigureUnit> height = units("height", Quantity.LENGTH);
    private final MenuButton columns = new MenuButton(Texts.of("shots.columns"));
    private ShotSettings settings = ShotSettings.USUAL;
    private boolean filling;

    ShotBar(Acts acts, Consumer<ShotSettings> changed) {
        super(8, 4);
        this.changed = changed;
        Button takeIn = button("import", acts::takeIn);
        table = button("export-table", acts::exportTable);
        picture = button("export-picture", acts::exportPicture);
        undo = button("undo", acts::undo);
        redo = button("redo", acts::redo);
        remove = button("remove", acts::removeRow);
        aside(acts);
        columns.setId("shots-columns");
        columns.setTooltip(new Tooltip(Texts.of("shots.columns.hint")));
        for (Meaning meaning : ShotTable.ALL) {
            CheckMenuItem item = new CheckMenuItem(Texts.of("shots.figure." + meaning.id()));
            item.setId("shots-column-" + meaning.id());
            item.setUserData(meaning);
            item.setOnAction(e -> change(
                    settings.withColumn(meaning, item.isSelected() ? ShotSettings.Shown.YES : ShotSettings.Shown.NO)));
            columns.getItems().add(item);
        }
        getChildren()
                .addAll(
                        takeIn,
                        table,
                        picture,
                        undo,
                        redo,
                        remove,
                        aside,
                        columns,
                        named("speed", speed),
                        named("length", length),
                        named("height", height));
    }

    /** Usual reasons, one of the coach's own, and the way back. */
    private void aside(Acts acts) {
        aside.setId("shots-aside");
        aside.setTooltip(new Tooltip(Texts.of("shots.aside.hint")));
        for (String reason : REASONS) {
            String why = Texts.of("shots.aside." + reason);
            aside.getItems().add(item("shots-aside-" + reason, why, () -> acts.putAside(why)));
        }
        aside.getItems().add(item("shots-aside-own", Texts.of("shots.aside.own"), () -> {
            TextInputDialog asked = new TextInputDialog();
            asked.setTitle(Texts.of("shots.aside"));
            asked.setHeaderText(Texts.of("shots.aside.why"));
            asked.initOwner(getScene().getWindow());
            asked.showAndWait().map(String::strip).filter(s -> !s.isEmpty()).ifPresent(acts::putAside);
        }));
        aside.getItems().add(item("shots-aside-back", Texts.of("shots.aside.back"), () -> acts.putAside("")));
    }

    private static MenuItem item(String id, String text, Runnable act) {
        MenuItem item = new MenuItem(text);
        item.setId(id);
        item.setOnAction(e -> act.run());
        return item;
    }

    private static Button button(String id, Runnable act) {
        Button button = new Button(Texts.of("shots." + id));
        button.setId("shots-" + id);
        button.setTooltip(new Tooltip(Texts.of("shots." + id + ".hint")));
        button.setOnAction(e -> act.run());
        return button;
    }

    private ComboBox<FigureUnit> units(String id, Quantity quantity) {
        ComboBox<FigureUnit> box = new ComboBox<>();
        box.getItems().setAll(FigureUnit.of(quantity));
        box.setConverter(new ShownAs<>(FigureUnit::id));
        box.setId("shots-" + id);
        box.setOnAction(
                e -> change(settings.withUnits(new ShotUnits(speed.getValue(), length.getValue(), height.getValue()))));
        return box;
    }

    private static HBox named(String id, ComboBox<FigureUnit> box) {
        Label label = new Label(Texts.of("shots.unit." + id));
        label.setLabelFor(box);
        box.setAccessibleText(label.getText());
        HBox both = new HBox(4, label, box);
        both.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        return both;
    }

    private void change(ShotSettings next) {
        if (!filling) {
            show(next);
            changed.accept(next);
        }
    }

    void show(ShotSettings shown) {
        filling = true;
        settings = shown;
        speed.setValue(shown.units().speed());
        length.setValue(shown.units().length());
        height.setValue(shown.units().height());
        columns.getItems()
                .forEach(i -> ((CheckMenuItem) i).setSelected(shown.columns().contains((Meaning) i.getUserData())));
        filling = false;
    }

    /** What can be done now. */
    void show(ShotsModel model) {
        undo.setDisable(!model.canUndo());
        redo.setDisable(!model.canRedo());
        for (ButtonBase needsShots : List.of(table, picture, remove, aside)) {
            needsShots.setDisable(model.rows().isEmpty());
        }
    }
}
