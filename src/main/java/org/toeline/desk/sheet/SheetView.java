package org.toeline.desk.sheet;

import java.io.File;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.CustomMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Assessment;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.desk.bodymap.MarkingPane;
import org.toeline.desk.findings.FindingsPane;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.text.Texts;
import org.toeline.language.Language;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.mark.View;

/** The window's parts: pictures on the left in a dark surround, body map and findings on paper beside them. */
final class SheetView extends BorderPane {

    /** In a narrow window. */
    private static final double LEAST_PICTURES = 380;

    private final LessonModel model;
    private final Sheet sheet;
    private final PicturePane picture;
    private final MarkingPane marking;
    private final FindingsPane findings = new FindingsPane();
    private final Toolbar toolbar;
    private final Map<View, ToggleButton> views = new EnumMap<>(View.class);
    private final Map<View, ImageView> small = new EnumMap<>(View.class);
    private final Map<View, WritableImage> images = new EnumMap<>(View.class);
    private final TextField time = new TextField();
    private final Label length = new Label();
    private final Label badge = new Label();
    private final Label drop = new Label(Texts.of("view.drop"));
    private final Watched watched;
    private final ShiftedBar shifted;
    private final MissingBar missing;
    private final AwayLine away;
    private final WelcomePane welcome;
    private final OverlayLines lines;
    private final FilmedAt filmedAt;
    private Words words = Words.usual();

    SheetView(LessonModel model, Sheet sheet, FrameChange change) {
        this.model = model;
        this.sheet = sheet;
        this.lines = new OverlayLines(sheet::assessment);
        this.filmedAt = new FilmedAt(model, sheet.clips());
        this.picture = new PicturePane(model, lines, sheet.assistant());
        this.marking = new MarkingPane(model, words, sheet::lenses, sheet);
        this.toolbar = new Toolbar(model, sheet, this::unit);
        this.missing = new MissingBar(sheet.missing());
        this.welcome =
                new WelcomePane(() -> sheet.desk().sample(), id -> sheet.desk().open(id));
        this.away = new AwayLine(model, sheet.clips(), change);
        Region work = sheet.clips().lines();
        // over the picture, not below it: nothing moves under the hand when a line comes or goes
        work.setMaxHeight(USE_PREF_SIZE);
        this.watched = new Watched(sheet, picture);
        this.shifted = new ShiftedBar(model, sheet.clips(), sheet.background());
        picture.wheel(watched::wheeled);
        StackPane stage = new StackPane(watched, drop, missing, away, shifted, welcome, work);
        StackPane.setAlignment(shifted, Pos.TOP_CENTER);
        StackPane.setAlignment(away, Pos.TOP_CENTER);
        StackPane.setAlignment(missing, Pos.TOP_CENTER);
        StackPane.setAlignment(work, Pos.BOTTOM_CENTER);
        VBox.setVgrow(stage, Priority.ALWAYS);
        VBox pictures = new VBox(8, viewRow(), stage, watched.strips(), steps(), badgeRow());
        pictures.setPadding(new Insets(10));
        pictures.getStyleClass().add("surround");
        drop.setMouseTransparent(true);
        accept(stage);
        HBox.setHgrow(pictures, Priority.ALWAYS);
        pictures.setMinWidth(LEAST_PICTURES);
        setCenter(new HBox(pictures, scrolled(marking), findings));
        setTop(toolbar);
    }

    /** In a low window the body map is scrolled, so that the picture keeps its controls. */
    private static ScrollPane scrolled(Region tall) {
        ScrollPane pane = new ScrollPane(tall);
        pane.setFitToWidth(true);
        pane.setFitToHeight(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setMinWidth(tall.getMinWidth() + 2);
        pane.setMinHeight(0);
        pane.setId("marking-column");
        pane.getStyleClass().addAll("paper", "edge-to-edge");
        return pane;
    }

    /** Offers the last lesson, first. */
    void goOn(LessonLine last) {
        welcome.goOn(last);
    }

    void welcome(boolean shown) {
        welcome.setVisible(shown);
        update();
    }

    private FlowPane viewRow() {
        FlowPane row = new FlowPane(8, 8);
        row.setId("views");
        row.setAlignment(Pos.CENTER_LEFT);
        for (View view : View.values()) {
            ImageView thumb = new ImageView();
            thumb.setFitHeight(58);
            thumb.setPreserveRatio(true);
            small.put(view, thumb);
            ToggleButton button = new ToggleButton((view.ordinal() + 1) + "  " + Texts.of("view." + view.id()), thumb);
            button.setContentDisplay(javafx.scene.control.ContentDisplay.TOP);
            button.setMinWidth(118);
            button.setId("view-" + view.id());
            button.setAccessibleText(words.name(view));
            button.setOnAction(e -> {
                model.show(view);
                update();
            });
            views.put(view, button);
            row.getChildren().add(button);
        }
        Button open = new Button(Texts.of("view.clip"));
        open.setMinWidth(USE_PREF_SIZE);
        open.setId("open-clip");
        open.setOnAction(e -> {
            FileChooser chooser = new FileChooser();
            Optional.ofNullable(chooser.showOpenMultipleDialog(getScene().getWindow()))
                    .ifPresent(files -> arrived(files.stream().map(File::toPath).toList()));
        });
        row.getChildren().add(open);
        return row;
    }

    /** How well the view is tied to the world, and where its camera stands. */
    private HBox badgeRow() {
        Button where = step("camera", "camera.where", () -> {});
        where.setOnAction(e -> sheet.camera(model.large(), text -> {
            Label label = new Label(text);
            label.setWrapText(true);
            label.setPrefWidth(420);
            label.setMinHeight(USE_PREF_SIZE);
            label.setId("camera-text");
            label.setStyle("-fx-font-size: 14px; -fx-text-fill: #1c1c1c;");
            CustomMenuItem item = new CustomMenuItem(new VBox(label), true);
            new ContextMenu(item).show(where, Side.TOP, 0, -4);
        }));
        HBox row = new HBox(10, badge, filmedAt, where);
        row.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(badge, Priority.ALWAYS);
        badge.setMaxWidth(Double.MAX_VALUE);
        return row;
    }

    private void accept(StackPane stage) {
        stage.setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY);
            }
        });
        stage.setOnDragDropped(e -> {
            arrived(e.getDragboard().getFiles().stream().map(File::toPath).toList());
            e.setDropCompleted(true);
        });
    }

    /** Clips dropped or chosen; one is for the large view. */
    void arrived(List<Path> files) {
        welcome(false);
        sheet.arrivals().arrived(files, model.large());
    }

    private FlowPane steps() {
        FlowPane row = new FlowPane(
                6,
                6,
                step("step-back10", "step.back10", () -> sheet.films().jump(-0.1)),
                step("step-back", "step.back", () -> sheet.films().step(-1)),
                time,
                length,
                step("step-on", "step.on", () -> sheet.films().step(1)),
                step("step-on10", "step.on10", () -> sheet.films().jump(0.1)),
                step("find-address", "step.address", () -> sheet.clips().findAddress(model.large())),
                step("fit", "step.fit", this::fit));
        row.getChildren().addAll(0, watched.bar().nodes());
        row.setAlignment(Pos.CENTER_LEFT);
        row.setId("steps");
        time.setId("time");
        time.setAccessibleText(Texts.of("time.name"));
        time.setMinWidth(84);
        time.setPrefWidth(84);
        length.setMinWidth(70);
        time.setOnAction(e -> {
            try {
                sheet.films()
                        .seek(Double.parseDouble(
                                time.getText().replace(',', '.').strip()));
                picture.requestFocus();
            } catch (NumberFormatException x) {
                update();
            }
        });
        time.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                picture.requestFocus();
                update();
            }
        });
        badge.getStyleClass().add("badge");
        badge.setId("badge");
        badge.setWrapText(true);
        return row;
    }

    private static Button step(String id, String key, Runnable action) {
        Button button = new Button(Texts.of(key));
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setFocusTraversable(false);
        button.setOnAction(e -> action.run());
        return button;
    }

    /** Drops a click, stroke or move that is half done. */
    boolean drop() {
        return picture.drop();
    }

    void fit() {
        picture.fit();
    }

    /** The lines that follow from the marks, on or off. */
    void lines() {
        lines.toggle();
        picture.repaint();
    }

    /** The picture brighter or darker, with more or less contrast; marks and clips stay as they are. */
    void light(double brightness, double contrast) {
        picture.light(brightness, contrast);
    }

    private void unit(LengthUnit unit) {
        words = Words.of(Language.now(), unit);
        findings.words(words);
        lines.words(words);
        sheet.assessment().ifPresent(this::show);
    }

    Words words() {
        return words;
    }

    /** Forgets the pictures of an earlier lesson. */
    void clear() {
        images.clear();
        shifted.forget();
        small.values().forEach(i -> i.setImage(null));
        picture.show(null);
    }

    void picture(View view, @Nullable WritableImage image) {
        images.put(view, image);
        Objects.requireNonNull(small.get(view)).setImage(image);
        watched.show(view, image);
        if (view == model.large()) {
            picture.show(image);
        }
        update();
    }

    /** A view's clip was looked through. */
    void lookedThrough(View view) {
        shifted.lookedThrough(view);
        update();
    }

    /** A small picture of a film that passes. */
    void pass(View view, Image image, int widthPx, int heightPx) {
        watched.pass(view, image, widthPx, heightPx);
    }

    /** Another moment of the film is shown. */
    void moved() {
        time();
        away.update();
        watched.moved();
    }

    /** Brings everything but the findings up to date with the model. */
    void update() {
        views.forEach((view, button) -> button.setSelected(view == model.large()));
        WritableImage image = images.get(model.large());
        if (picture.picture() != image || watched.isOther()) {
            picture.show(image);
        }
        missing.show(sheet.missing().name(model.large()).filter(n -> !welcome.isVisible()));
        drop.setVisible(image == null && !welcome.isVisible() && !missing.isVisible());
        time();
        filmedAt.update();
        away.update();
        watched.update();
        shifted.update();
        picture.doubted(sheet.doubted(model.large()));
        if (!sheet.follows()) {
            picture.repaint();
        }
        badge.setText(sheet.assessment().map(a -> Badge.text(a, model.large())).orElse(""));
        marking.update(sheet.doubted(model.large()));
        toolbar.update();
    }

    private void time() {
        Optional<double[]> at = sheet.clips().time(model.large());
        time.setDisable(at.isEmpty());
        if (!time.isFocused()) {
            time.setText(at.map(t -> String.format(Locale.ROOT, "%.3f", t[0])).orElse(""));
        }
        length.setText(
                at.map(t -> String.format(Locale.ROOT, "of %.2f s", t[1])).orElse(Texts.of("view.no-clip")));
    }

    void show(Assessment assessment) {
        findings.show(assessment);
        badge.setText(Badge.text(assessment, model.large()));
        picture.doubted(sheet.doubted(model.large()));
        picture.repaint();
        marking.update(sheet.doubted(model.large()));
    }
}
