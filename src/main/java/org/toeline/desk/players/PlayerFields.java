package org.toeline.desk.players;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.stage.Window;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.Fault;
import org.toeline.desk.dialog.FieldRows;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;
import org.toeline.desk.text.TypedNumber;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.mark.Handedness;

/** What the coach writes of a player. All but the handedness may stay empty. */
final class PlayerFields {

    private final TextField name = new TextField();
    private final ComboBox<Handedness> hand = new ComboBox<>();
    private final TextField height = new TextField();
    private final TextField born = new TextField();
    private final TextArea note = Controls.tabbed(new TextArea());

    private PlayerFields(PlayerDetails shown) {
        hand.getItems().setAll(Handedness.values());
        hand.setConverter(Controls.names(value -> Texts.of("hand." + value.id())));
        name.setId("player-name");
        hand.setId("player-hand");
        height.setId("player-height");
        born.setId("player-born");
        note.setId("player-note");
        note.setPrefRowCount(3);
        note.setWrapText(true);
        name.setText(shown.name().orElse(""));
        hand.setValue(shown.handedness());
        height.setText(
                shown.heightM().isPresent() ? TypedNumber.shown(shown.heightM().getAsDouble(), "0.00") : "");
        born.setText(
                shown.bornYear().isPresent() ? Integer.toString(shown.bornYear().getAsInt()) : "");
        note.setText(shown.note());
    }

    /** @param then is given the details once they are kept */
    static void ask(Window window, PlayerDetails before, Consumer<PlayerDetails> then) {
        PlayerFields fields = new PlayerFields(before);
        new DialogFrame(window, Texts.of("player.title"))
                .text(Texts.of("player.hint"))
                .middle(fields.rows())
                .leave(Texts.of("dialog.cancel"))
                .act("player-keep", Texts.of("dialog.keep"), () -> then.accept(fields.details()))
                .asksBeforeLosing(fields::typed)
                .show();
    }

    private List<Object> typed() {
        return List.of(name.getText(), hand.getValue(), height.getText(), born.getText(), note.getText());
    }

    private FieldRows rows() {
        PlayerDetails unknown = PlayerDetails.of(Optional.empty(), Handedness.RIGHT);
        return new FieldRows()
                .row(Texts.of("player.name"), name)
                .row(Texts.of("player.hand"), hand)
                .row(
                        Texts.of("player.height"),
                        height,
                        Fault.ofReading(height, Texts.of("player.height.fault"), () -> unknown.withHeightM(heightM())))
                .row(
                        Texts.of("player.born"),
                        born,
                        Fault.ofReading(born, Texts.of("player.born.fault"), () -> unknown.withBornYear(bornYear())))
                .row(Texts.of("player.note"), note);
    }

    private PlayerDetails details() {
        return new PlayerDetails(Optional.of(name.getText()), hand.getValue(), heightM(), bornYear(), note.getText());
    }

    /** A height that was typed in centimetres is one in metres. */
    private OptionalDouble heightM() {
        if (height.getText().isBlank()) {
            return OptionalDouble.empty();
        }
        double number = TypedNumber.read(height.getText()).orElseThrow(IllegalArgumentException::new);
        return OptionalDouble.of(number > 3 ? number / 100 : number);
    }

    private OptionalInt bornYear() {
        String typed = born.getText().strip();
        return typed.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(typed));
    }
}
