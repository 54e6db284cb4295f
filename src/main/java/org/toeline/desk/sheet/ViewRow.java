package org.toeline.desk.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Words;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;

/** The views small, to choose the large one from, and a clip for it. */
final class ViewRow extends FlowPane {

    private static final double THUMB_PX = 46;

    private final LessonModel model;
    private final VBox actions = new VBox(4);
    private final List<Button> acts = new ArrayList<>();
    private final List<Button> more;
    private final Map<View, ToggleButton> views = new EnumMap<>(View.class);
    private final Map<View, ImageView> small = new EnumMap<>(View.class);
    private final BiConsumer<List<Path>, View> chosen;

    /**
     * @param shown  another view was chosen
     * @param chosen clips and the view one of them is for
     * @param more   what else can be done with the large view
     */
    ViewRow(LessonModel model, Words words, Runnable shown, BiConsumer<List<Path>, View> chosen, Button... more) {
        super(8, 8);
        this.model = model;
        this.chosen = chosen;
        setId("views");
        setAlignment(Pos.CENTER_LEFT);
        for (View view : View.values()) {
            ToggleButton button = toggle(view, words, shown);
            Dropped.onto(button, files -> chosen.accept(files, view));
        }
        Button open = new Button(Texts.of("view.clip"));
        open.setMinWidth(USE_PREF_SIZE);
        open.setId("open-clip");
        open.setOnAction(e -> choose());
        acts.add(open);
        this.more = List.of(more);
        acts.addAll(this.more);
        acts.forEach(b -> b.setMaxWidth(Double.MAX_VALUE));
        pictures(true);
    }

    /** Asks for clips, in the folder of those that were chosen last. */
    void choose() {
        List<Path> files = new FileDialog(FileDialog.Kind.CLIPS, "view.choose")
                .openSeveral(getScene().getWindow());
        if (!files.isEmpty()) {
            chosen.accept(files, model.large());
        }
    }

    private ToggleButton toggle(View view, Words words, Runnable shown) {
        ImageView thumb = new ImageView();
        thumb.setFitHeight(THUMB_PX);
        thumb.setPreserveRatio(true);
        small.put(view, thumb);
        ToggleButton button = new ToggleButton((view.ordinal() + 1) + "  " + Texts.of("view." + view.id()), thumb);
        button.setContentDisplay(ContentDisplay.TOP);
        button.setMinWidth(Look.px(82));
        button.setId("view-" + view.id());
        button.setAccessibleText(words.name(view));
        button.setOnAction(e -> {
            model.show(view);
            shown.run();
        });
        views.put(view, button);
        return button;
    }

    void picture(View view, @Nullable Image image) {
        Objects.requireNonNull(small.get(view)).setImage(image);
    }

    /** In a low window the large picture needs the room of the small ones. */
    void pictures(boolean room) {
        getChildren().clear();
        actions.getChildren().clear();
        views.forEach((view, button) -> {
            button.setGraphic(room ? Objects.requireNonNull(small.get(view)) : null);
            getChildren().add(button);
        });
        if (room) {
            actions.getChildren().setAll(acts);
            getChildren().add(actions);
        } else {
            getChildren().addAll(acts);
        }
    }

    /** While nothing is open there is nothing else to do with a view. */
    void more(boolean shown) {
        for (Button button : more) {
            button.setVisible(shown);
            button.setManaged(shown);
        }
    }

    /** Forgets the pictures of an earlier lesson. */
    void clear() {
        small.values().forEach(i -> i.setImage(null));
    }

    void update() {
        views.forEach((view, button) -> button.setSelected(view == model.large()));
    }
}
