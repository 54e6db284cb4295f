package org.toeline.desk.handover;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Phrases;
import org.toeline.advice.Words;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.Fault;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;

/** The phrases a coach may replace, each with the field for the coach's own. */
final class PhrasesDialog {

    private static final double WIDTH = 680;

    private PhrasesDialog() {}

    /** @param kept run once the coach's phrases were kept */
    static void edit(OwnWords own, Locale language, Window window, Runnable kept) {
        Words shipped = Words.of(language, LengthUnit.CENTIMETRE);
        Words with = shipped.with(own.phrases());
        Map<String, TextField> fields = new LinkedHashMap<>();
        VBox rows = new VBox(10);
        rows.setPrefWidth(Look.px(WIDTH));
        for (String key : Phrases.replaceable()) {
            TextField field = new TextField(with.text(key));
            fields.put(key, field);
            rows.getChildren().add(row(key, shipped, language, field));
        }
        new DialogFrame(window, Texts.of("phrases.title"))
                .text(Texts.of("phrases.text"))
                .middle(rows)
                .leave(Texts.of("dialog.cancel"))
                .act("phrases-keep", Texts.of("dialog.keep"), () -> {
                    own.keep(changed(own.phrases(), shipped, language.getLanguage(), fields));
                    kept.run();
                })
                .asksBeforeLosing(
                        () -> fields.values().stream().map(TextField::getText).toList())
                .show();
    }

    private static VBox row(String key, Words shipped, Locale language, TextField field) {
        String text = shipped.text(key);
        field.setId("phrase-" + key.replace('.', '-'));
        field.setAccessibleText(text);
        Label label = DialogFrame.wrapped(text);
        label.getStyleClass().add("hint");
        label.setLabelFor(field);
        return new VBox(
                2,
                label,
                field,
                new Fault(
                        field,
                        () -> field.getText().isBlank()
                                        || field.getText().strip().equals(text)
                                        || Phrases.canStandFor(
                                                language.getLanguage(),
                                                key,
                                                field.getText().strip())
                                ? Optional.empty()
                                : Optional.of(Texts.of("phrases.fault", Phrases.LONGEST))));
    }

    /** A field that holds what is shipped, or nothing, is no phrase of the coach's own. */
    private static Phrases changed(Phrases before, Words shipped, String language, Map<String, TextField> fields) {
        Phrases changed = before;
        for (Map.Entry<String, TextField> field : fields.entrySet()) {
            String text = field.getValue().getText().strip();
            changed = text.isEmpty() || text.equals(shipped.text(field.getKey()))
                    ? changed.without(language, field.getKey())
                    : changed.with(language, field.getKey(), text);
        }
        return changed;
    }
}
