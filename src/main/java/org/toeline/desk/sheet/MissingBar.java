package org.toeline.desk.sheet;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.text.Texts;

/** Over the picture of a view whose clip is missing: says so, and offers to look for it. */
final class MissingBar extends HBox {

    private final Label said = new Label();

    MissingBar(MissingOnSheet missing) {
        setId("missing-clip");
        getStyleClass().add("over-picture");
        setSpacing(12);
        setAlignment(Pos.CENTER_LEFT);
        setMaxHeight(USE_PREF_SIZE);
        said.setWrapText(true);
        said.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(said, Priority.ALWAYS);
        Button look = new Button(Texts.of("across.look"));
        look.setId("missing-look");
        look.setMinWidth(USE_PREF_SIZE);
        look.setOnAction(e -> new FileDialog(FileDialog.Kind.CLIPS, "across.look")
                .folder(getScene().getWindow())
                .ifPresent(missing::look));
        getChildren().addAll(said, look);
        show(Optional.empty(), false);
    }

    /**
     * @param clip       its name, when it is missing
     * @param ofDocument whether a document names it, which opens nothing but what lies beside it, be the file there or not
     */
    void show(Optional<String> clip, boolean ofDocument) {
        clip.ifPresent(name -> said.setText(Texts.of(ofDocument ? "lost.beside" : "lost.bar", name)));
        setVisible(clip.isPresent());
    }
}
