package org.toeline.desk.players;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javafx.geometry.Insets;
import javafx.scene.control.ButtonType;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.stage.Window;
import org.toeline.desk.Texts;
import org.toeline.desk.screen.Controls;
import org.toeline.ledger.store.PlayerDetails;
import org.toeline.mark.Handedness;

/** What the coach writes of a player. All but the handedness may stay empty. */
final class PlayerFields {

    private final TextField name = new TextField();
    private final ComboBox<Handedness> hand = new ComboBox<>();
    private final TextField height = new TextField();
    private final TextField born = new TextField();
    private final TextArea note = new TextArea();
    private final Label wrong = new Label();

    private PlayerFields() {
        hand.getItems().setAll(Handedness.values());
        hand.setConverter(Controls.names(value -> Texts.of("hand." + value.id())));
        name.setId("player-name");
        hand.setId("player-hand");
        height.setId("player-height");
        born.setId("player-born");
        note.setId("player-note");
        note.setPrefRowCount(3);
        note.setWrapText(true);
        wrong.getStyleClass().add("doubt");
        wrong.setId("player-wrong");
        wrong.setWrapText(true);
    }

    /** Asks for a player's details; empty when it was cancelled. */
    static Optional<PlayerDetails> ask(Window window, Optional<PlayerDetails> before) {
        PlayerFields fields = new PlayerFields();
        PlayerDetails shown = before.orElse(PlayerDetails.of(Optional.empty(), Handedness.RIGHT));
        fields.name.setText(shown.name().orElse(""));
        fields.hand.setValue(shown.handedness());
        fields.height.setText(shown.heightM().isPresent() ? String.format("%.2f", shown.heightM().getAsDouble()) : "");
        fields.born.setText(shown.bornYear().isPresent() ? Integer.toString(shown.bornYear().getAsInt()) : "");
        fields.note.setText(shown.note());
        Dialog<ButtonType> dialog = new Dialog<>();
        dialog.initOwner(window);
        dialog.setTitle(Texts.of("player.title"));
        dialog.getDialogPane().getButtonTypes().addAll(ButtonType.OK, ButtonType.CANCEL);
        dialog.getDialogPane().setContent(fields.grid());
        dialog.setOnShown(e -> fields.name.requestFocus());
        dialog.getDialogPane().lookupButton(ButtonType.OK).addEventFilter(javafx.event.ActionEvent.ACTION, e -> {
            try {
                fields.details();
            } catch (IllegalArgumentException x) {
                fields.wrong.setText(Texts.of("player.wrong"));
                e.consume();
            }
        });
        return dialog.showAndWait().filter(b -> b == ButtonType.OK).map(b -> fields.details());
    }

    private GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(8);
        grid.setPadding(new Insets(16));
        javafx.scene.control.Control[] fields = {name, hand, height, born, note};
        String[] labels = {"player.name", "player.hand", "player.height", "player.born", "player.note"};
        for (int i = 0; i < fields.length; i++) {
            Label label = new Label(Texts.of(labels[i]));
            label.setLabelFor(fields[i]);
            grid.addRow(i, label, fields[i]);
        }
        Label hint = new Label(Texts.of("player.hint"));
        hint.setWrapText(true);
        hint.setMaxWidth(420);
        hint.getStyleClass().add("hint");
        grid.add(hint, 0, fields.length, 2, 1);
        grid.add(wrong, 0, fields.length + 1, 2, 1);
        return grid;
    }

    /** @throws IllegalArgumentException when a number is none, or out of range */
    private PlayerDetails details() {
        String tall = height.getText().strip().replace(',', '.');
        String year = born.getText().strip();
        OptionalDouble heightM = tall.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(metres(Double.parseDouble(tall)));
        OptionalInt bornYear = year.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(year));
        return new PlayerDetails(Optional.of(name.getText()), hand.getValue(), heightM, bornYear, note.getText());
    }

    /** A height that was typed in centimetres is one in metres. */
    private static double metres(double typed) {
        return typed > 3 ? typed / 100 : typed;
    }
}
