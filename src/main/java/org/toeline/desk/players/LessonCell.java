package org.toeline.desk.players;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.value.ChangeListener;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.OverrunStyle;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Words;
import org.toeline.desk.players.Thumbnails.Thumb;
import org.toeline.ledger.store.rows.LessonLine;

/** A lesson as a line of the list: who and when, which club, what was to be changed first. */
final class LessonCell extends ListCell<LessonLine> {

    private static final PseudoClass NONE = PseudoClass.getPseudoClass("none");

    private final Supplier<Words> words;
    private final Label name = new Label();
    private final Label day = new Label();
    private final Label about = new Label();
    private final ImageView picture = new ImageView();
    private final StackPane thumb = new StackPane(picture);
    private final HBox row;
    private final Thumbnails thumbnails;
    private final ChangeListener<Thumb> made = (of, before, now) -> show(now);
    private Optional<ReadOnlyObjectProperty<Thumb>> of = Optional.empty();

    LessonCell(Supplier<Words> words, Thumbnails thumbnails) {
        this.words = words;
        this.thumbnails = thumbnails;
        thumb.setMinSize(Thumbnails.WIDTH, Thumbnails.HEIGHT);
        thumb.setMaxSize(Thumbnails.WIDTH, Thumbnails.HEIGHT);
        thumb.getStyleClass().add("lesson-picture");
        name.getStyleClass().addAll("larger", "strong");
        name.setTextOverrun(OverrunStyle.ELLIPSIS);
        name.setMinWidth(60);
        day.setMinWidth(Region.USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        about.getStyleClass().add("hint");
        VBox box = new VBox(2, new HBox(8, name, space, day), about);
        box.setPrefWidth(10);
        HBox.setHgrow(box, Priority.ALWAYS);
        row = new HBox(10, thumb, box);
        row.setPrefWidth(10);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPadding(new javafx.geometry.Insets(4, 2, 4, 2));
    }

    @Override
    protected void updateItem(@Nullable LessonLine line, boolean empty) {
        super.updateItem(line, empty);
        setText(null);
        of.ifPresent(o -> o.removeListener(made));
        of = Optional.empty();
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
        ReadOnlyObjectProperty<Thumb> now = thumbnails.of(line.id());
        now.addListener(made);
        of = Optional.of(now);
        show(now.get());
        setGraphic(row);
    }

    /** Where there is nothing to be seen an empty frame says so. */
    private void show(Thumb now) {
        picture.setImage(now.picture().orElse(null));
        thumb.pseudoClassStateChanged(NONE, now.looked() && now.picture().isEmpty());
    }
}
