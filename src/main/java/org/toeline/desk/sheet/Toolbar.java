package org.toeline.desk.sheet;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.desk.keys.Act;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Takes;

/** Undo and redo, who plays which club, units, and handing over. */
final class Toolbar extends FlowPane {

    private final LessonModel model;
    private final Button undo = new Button(Texts.of("tool.undo"));
    private final Button redo = new Button(Texts.of("tool.redo"));
    private final ComboBox<Handedness> hand = new ComboBox<>(FXCollections.observableArrayList(Handedness.values()));
    private final ComboBox<Club> club = new ComboBox<>(FXCollections.observableArrayList(Club.values()));
    private final CheckBox oneMoment = new CheckBox(Texts.of("tool.takes"));
    private final Button still = new Button(Texts.of("tool.still"));

    Toolbar(LessonModel model, Sheet sheet, Consumer<LengthUnit> unit) {
        super(8, 4);
        this.model = model;
        Words words = Words.usual();
        hand.setConverter(Controls.names(h -> Controls.sentence(Texts.of("hand." + h.id()))));
        club.setConverter(Controls.names(c -> Controls.sentence(words.name(c))));
        hand.setId("handedness");
        hand.setAccessibleText(Texts.of("tool.hand.name"));
        club.setId("club");
        club.setAccessibleText(Texts.of("tool.club.name"));
        hand.setOnAction(e -> Optional.ofNullable(hand.getValue()).ifPresent(model::handedness));
        club.setOnAction(e -> Optional.ofNullable(club.getValue()).ifPresent(model::club));
        oneMoment.setId("one-moment");
        oneMoment.setTooltip(new Tooltip(Texts.of("tool.takes.hint")));
        oneMoment.setOnAction(e ->
                model.apply(model.sheet().withTakes(oneMoment.isSelected() ? Takes.SIMULTANEOUS : Takes.SEPARATE)));
        undo.setId("undo");
        redo.setId("redo");
        undo.setOnAction(e -> sheet.act(Act.UNDO));
        redo.setOnAction(e -> sheet.act(Act.REDO));
        CheckBox inch = new CheckBox(Texts.of("tool.inch"));
        inch.setId("inches");
        inch.setOnAction(e -> unit.accept(inch.isSelected() ? LengthUnit.INCH : LengthUnit.CENTIMETRE));
        still.setId("hand-over");
        still.getStyleClass().add("strong");
        still.setOnAction(e -> sheet.handOver());
        getChildren().addAll(undo, redo, hand, club, oneMoment, inch, still);
        setId("tools");
        getStyleClass().add("tools");
        setAlignment(Pos.CENTER_LEFT);
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
