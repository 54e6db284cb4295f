package org.toeline.desk.players;

import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.OverrunStyle;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Words;
import org.toeline.ledger.store.rows.LessonLine;

/** A lesson as a line of the list: who and when, which club, what was to be changed first. */
final class LessonCell extends ListCell<LessonLine> {

    private final Supplier<Words> words;
    private final Label name = new Label();
    private final Label day = new Label();
    private final Label about = new Label();
    private final VBox box;

    LessonCell(Supplier<Words> words) {
        this.words = words;
        name.getStyleClass().addAll("larger", "strong");
        name.setTextOverrun(OverrunStyle.ELLIPSIS);
        name.setMinWidth(60);
        day.setMinWidth(Region.USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        about.getStyleClass().add("hint");
        box = new VBox(2, new HBox(8, name, space, day), about);
        box.setPrefWidth(10);
        box.setPadding(new javafx.geometry.Insets(4, 2, 4, 2));
    }

    @Override
    protected void updateItem(@Nullable LessonLine line, boolean empty) {
        super.updateItem(line, empty);
        setText(null);
        if (empty || line == null) {
            setGraphic(null);
            setAccessibleText(null);
            return;
        }
        name.setText(Said.player(line.playerName(), line.playerId()));
        day.setText(Said.day(line.recorded()));
        String where = line.place().isBlank() ? "" : " · " + line.place();
        about.setText(Said.club(words.get(), line.club()) + " · " + Said.first(words.get(), line) + where);
        setAccessibleText(name.getText() + ", " + day.getText() + ", " + about.getText());
        setGraphic(box);
    }
}
