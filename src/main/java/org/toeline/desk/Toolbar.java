package org.toeline.desk;

import java.io.File;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Separator;
import javafx.scene.control.ToolBar;
import javafx.scene.control.Tooltip;
import javafx.stage.FileChooser;
import javafx.util.StringConverter;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Takes;

/** Lesson, undo and redo, who plays which club, units, and handing over. */
final class Toolbar extends ToolBar {

    private final LessonModel model;
    private final Sheet sheet;
    private final Button undo = new Button(Texts.of("tool.undo"));
    private final Button redo = new Button(Texts.of("tool.redo"));
    private final ComboBox<Handedness> hand = new ComboBox<>(FXCollections.observableArrayList(Handedness.values()));
    private final ComboBox<Club> club = new ComboBox<>(FXCollections.observableArrayList(Club.values()));
    private final CheckBox oneMoment = new CheckBox(Texts.of("tool.takes"));
    private final Button still = new Button(Texts.of("tool.still"));

    Toolbar(LessonModel model, Sheet sheet, Consumer<LengthUnit> unit) {
        this.model = model;
        this.sheet = sheet;
        Words words = Words.english();
        hand.setConverter(shown(h -> h.id() + "-handed"));
        club.setConverter(shown(words::name));
        hand.setId("handedness");
        hand.setAccessibleText("handedness");
        club.setId("club");
        club.setAccessibleText("club");
        hand.setOnAction(e -> Optional.ofNullable(hand.getValue()).ifPresent(model::handedness));
        club.setOnAction(e -> Optional.ofNullable(club.getValue()).ifPresent(model::club));
        oneMoment.setId("one-moment");
        oneMoment.setTooltip(new Tooltip(Texts.of("tool.takes.hint")));
        oneMoment.setOnAction(e -> model.apply(model.sheet().withTakes(
                oneMoment.isSelected() ? Takes.SIMULTANEOUS : Takes.SEPARATE)));
        undo.setId("undo");
        redo.setId("redo");
        undo.setOnAction(e -> model.undo());
        redo.setOnAction(e -> model.redo());
        CheckBox inch = new CheckBox(Texts.of("tool.inch"));
        inch.setId("inches");
        inch.setOnAction(e -> unit.accept(inch.isSelected() ? LengthUnit.INCH : LengthUnit.CENTIMETRE));
        still.setId("hand-over");
        still.setStyle("-fx-font-weight: bold;");
        still.setOnAction(e -> StillExport.choose(sheet, getScene().getWindow()));
        getItems().addAll(button("new", "tool.new", sheet::fresh), button("open", "tool.open", this::open),
                button("keep", "tool.save", this::keep), button("sample", "tool.sample", sheet::sample),
                new Separator(), undo, redo, new Separator(), hand, club, oneMoment, inch, new Separator(), still,
                new Separator(), button("keys", "tool.keys", sheet::keySheet));
    }

    private static Button button(String id, String key, Runnable action) {
        Button button = new Button(Texts.of(key));
        button.setId(id);
        button.setOnAction(e -> action.run());
        return button;
    }

    private static <T> StringConverter<T> shown(java.util.function.Function<T, String> name) {
        return new StringConverter<>() {
            @Override
            public String toString(T value) {
                String text = value == null ? "" : name.apply(value);
                return text.isEmpty() ? "" : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("chosen, not typed");
            }
        };
    }

    private FileChooser lessons() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().setAll(List.of(new FileChooser.ExtensionFilter("Lessons", "*.lesson.json")));
        return chooser;
    }

    private void open() {
        File file = lessons().showOpenDialog(getScene().getWindow());
        if (file != null) {
            sheet.open(file.toPath());
        }
    }

    private void keep() {
        File file = lessons().showSaveDialog(getScene().getWindow());
        if (file != null) {
            model.keepIn(file.toPath());
            sheet.say(Texts.of("kept", file));
        }
    }

    void update() {
        undo.setDisable(!model.canUndo());
        redo.setDisable(!model.canRedo());
        hand.setValue(model.sheet().handedness());
        club.setValue(model.sheet().club());
        oneMoment.setSelected(model.sheet().takes() == Takes.SIMULTANEOUS);
        boolean nothing = model.sheet().views().isEmpty();
        still.setDisable(nothing);
        still.setTooltip(nothing ? new Tooltip(Texts.of("tool.still.none")) : null);
    }
}
