package org.toeline.desk.handover;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Phrases;
import org.toeline.advice.Words;
import org.toeline.desk.Texts;

/** The phrases a coach may replace, each with the field for the coach's own. */
final class PhrasesDialog {

    private PhrasesDialog() {
    }

    static void edit(OwnWords own, Locale language, Window window) {
        Words shipped = Words.of(language, LengthUnit.CENTIMETRE);
        Words with = shipped.with(own.phrases());
        Map<String, TextField> fields = new LinkedHashMap<>();
        VBox rows = new VBox(10);
        rows.setPadding(new Insets(14));
        for (String key : Phrases.replaceable()) {
            String text = shipped.text(key);
            TextField field = new TextField(with.text(key));
            field.setId("phrase-" + key);
            field.setAccessibleText(text);
            field.setPrefWidth(620);
            Label label = new Label(text);
            label.getStyleClass().add("hint");
            label.setWrapText(true);
            label.setMaxWidth(620);
            label.setLabelFor(field);
            fields.put(key, field);
            rows.getChildren().add(new VBox(2, label, field));
        }
        ScrollPane scroll = new ScrollPane(rows);
        scroll.setFitToWidth(true);
        scroll.setPrefSize(680, 520);
        Label hint = new Label(Texts.of("phrases.text"));
        hint.setWrapText(true);
        hint.setMaxWidth(660);
        Dialog<ButtonType> dialog = new Dialog<>();
        dialog.initOwner(window);
        dialog.setTitle(Texts.of("phrases.title"));
        dialog.setResizable(true);
        dialog.getDialogPane().getButtonTypes().addAll(ButtonType.OK, ButtonType.CANCEL);
        dialog.getDialogPane().setContent(new VBox(10, hint, scroll));
        dialog.showAndWait().filter(b -> b == ButtonType.OK).ifPresent(b ->
                own.keep(changed(own.phrases(), shipped, language.getLanguage(), fields)));
    }

    /** A field that holds what is shipped, or nothing, is no phrase of the coach's own. */
    private static Phrases changed(Phrases before, Words shipped, String language, Map<String, TextField> fields) {
        Phrases changed = before;
        for (Map.Entry<String, TextField> field : fields.entrySet()) {
            String text = field.getValue().getText().strip();
            changed = text.isEmpty() || text.equals(shipped.text(field.getKey())) ? changed.without(language, field.getKey())
                    : changed.with(language, field.getKey(), text);
        }
        return changed;
    }
}
