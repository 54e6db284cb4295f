package org.toeline.desk.sheet;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.layout.VBox;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.Fault;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.picture.PinnedLayer;
import org.toeline.desk.text.Texts;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;

/** The words that are pinned to a place of the picture, and whether the player's still shows them. */
final class PinDialog implements PinnedLayer.Asks {

    private final LessonModel model;
    private final Sheet sheet;

    PinDialog(LessonModel model, Sheet sheet) {
        this.model = model;
        this.sheet = sheet;
    }

    /** Says what the hand is to do next, or why there is nothing to pin to. */
    void begin(PicturePane picture, Optional<PinnedWords> elsewhere) {
        if (model.isPinnable()) {
            picture.pin(elsewhere);
            sheet.say(Texts.of("pin.how"));
            picture.requestFocus();
        } else {
            sheet.say(Texts.of(model.away(model.large()) ? "film.elsewhere" : "pin.first"));
        }
    }

    @Override
    public void write(ImagePoint at, ImagePoint stand, Optional<PinnedWords> before) {
        sheet.say("");
        View view = model.large();
        TextField text = new TextField(before.map(PinnedWords::text).orElse(""));
        text.setId("pin-text");
        text.setAccessibleText(Texts.of("pin.title"));
        text.setPrefColumnCount(32);
        text.setTextFormatter(
                new TextFormatter<String>(c -> c.getControlNewText().length() <= PinnedWords.LONGEST ? c : null));
        Fault none =
                new Fault(text, () -> text.getText().isBlank() ? Optional.of(Texts.of("pin.none")) : Optional.empty());
        CheckBox still = new CheckBox(Texts.of("pin.still"));
        still.setId("pin-still");
        still.setSelected(before.filter(PinnedWords::onStill).isPresent());
        DialogFrame frame = new DialogFrame(sheet.root().getScene().getWindow(), Texts.of("pin.title"))
                .middle(new VBox(8, text, none, still))
                .asksBeforeLosing(() -> List.of(text.getText(), still.isSelected()))
                .leave(Texts.of("dialog.cancel"));
        before.ifPresent(b -> frame.choice("pin-elsewhere", Texts.of("pin.elsewhere"), () -> sheet.pin(before))
                .destroy("pin-away", Texts.of("pin.away"), () -> model.pin(before, Optional.empty())));
        frame.act(
                        "pin-keep",
                        Texts.of("dialog.keep"),
                        () -> model.pin(
                                before,
                                Optional.of(
                                        new PinnedWords(view, text.getText().strip(), at, stand, still.isSelected()))))
                .show();
    }
}
