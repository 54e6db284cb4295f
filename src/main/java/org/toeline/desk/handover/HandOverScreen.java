package org.toeline.desk.handover;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.look.Look;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;

/** Exactly what the player will see, at phone and at paper size, and what can be chosen about it. */
public final class HandOverScreen implements Screen {

    public static final String ID = "hand-over";
    private static final double PHONE_WIDTH = 360;
    private static final double LEAST_WIDTH = 240;
    private static final double AROUND = 24;

    private final Studio studio;
    private final HandOver handOver;
    private final ChoicesPane choices;
    private final ImageView picture = new ImageView();
    private final StackPane surround = new StackPane(picture);
    private final ScrollPane scroll = new ScrollPane(surround);
    private final Label nothing = new Label();
    private final VBox buttons;
    private final HBox root;

    /** @param words the file of the coach's own phrases; need not exist */
    public HandOverScreen(Studio studio, Path words) {
        this.studio = studio;
        this.handOver = new HandOver(studio);
        OwnWords own = new OwnWords(words, studio.say());
        handOver.phrases(own.phrases());
        this.choices = new ChoicesPane(handOver, own, this::paint);
        picture.setPreserveRatio(true);
        picture.setSmooth(true);
        picture.setId("handout");
        surround.getStyleClass().add("surround");
        surround.setPadding(new Insets(AROUND));
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.getStyleClass().addAll("surround", "edge-to-edge");
        scroll.viewportBoundsProperty().addListener((o, before, now) -> size());
        HBox.setHgrow(scroll, Priority.ALWAYS);
        nothing.setWrapText(true);
        nothing.setId("hand-over-nothing");
        buttons = new VBox(
                8,
                new FlowPane(8, 8, Controls.button("keep-all", "hand-over.keep-all", this::keepAll)),
                new FlowPane(
                        8,
                        8,
                        Controls.button("keep-still", "hand-over.keep-still", this::keepStill),
                        Controls.button(
                                "keep-pdf",
                                "hand-over.keep-pdf",
                                () -> keep("hand-over.keep-pdf", "page", "pdf", "*.pdf")),
                        Controls.button(
                                "keep-html",
                                "hand-over.keep-html",
                                () -> keep("hand-over.keep-html", "page", "html", "*.html"))));
        Label title = new Label(Texts.of("hand-over.title"));
        title.getStyleClass().add("first-title");
        VBox left = new VBox(14, title, nothing, choices, buttons);
        left.setPadding(new Insets(16));
        ScrollPane controls = new ScrollPane(left);
        controls.setFitToWidth(true);
        controls.setPrefWidth(Look.px(424));
        controls.setMinWidth(Math.max(424, Look.px(346)));
        controls.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        controls.getStyleClass().addAll("paper", "edge-to-edge");
        root = new HBox(controls, scroll);
        root.getStyleClass().add("paper");
    }

    HandOver handOver() {
        return handOver;
    }

    private void paint() {
        boolean ready = handOver.isReady();
        nothing.setText(handOver.whyNot());
        nothing.setVisible(!ready);
        nothing.setManaged(!ready);
        choices.setDisable(!ready);
        buttons.setDisable(!ready);
        if (!ready) {
            picture.setImage(null);
            return;
        }
        handOver.paint(this::show);
    }

    private void show(BufferedImage painted) {
        if (!handOver.isReady()) {
            return;
        }
        picture.setImage(SwingFXUtils.toFXImage(painted, (@Nullable WritableImage) null));
        picture.setAccessibleText(Texts.of("hand-over.shown"));
        size();
    }

    /** A phone is as wide as a phone, where there is room; a page and a large still as wide as that. */
    private void size() {
        if (picture.getImage() == null) {
            return;
        }
        double room = Math.max(LEAST_WIDTH, scroll.getViewportBounds().getWidth() - 2 * AROUND);
        picture.setFitWidth(Math.min(
                room,
                switch (handOver.choices().shown()) {
                    case PHONE -> PHONE_WIDTH;
                    case LARGE, PAPER -> picture.getImage().getWidth();
                }));
        StackPane.setAlignment(
                picture, handOver.choices().shown() == Choices.Shown.PHONE ? Pos.CENTER : Pos.TOP_CENTER);
    }

    void keepStill() {
        keep("hand-over.keep-still", "still", "png", "*.png", "*.jpg", "*.svg");
    }

    private void keep(String pressed, String what, String ending, String... endings) {
        FileDialog dialog = new FileDialog(FileDialog.Kind.PAGES, pressed)
                .named(handOver.fileName(what, ending).orElse(what + "." + ending));
        for (String e : endings) {
            dialog.showing(e.substring(2).toUpperCase(java.util.Locale.ROOT), e);
        }
        dialog.save(root.getScene().getWindow()).ifPresent(this::write);
    }

    /** Writes one file, its kind by its ending. */
    void write(Path file) {
        handOver.write(file, done -> studio.say().accept(Texts.of("kept", done)));
    }

    private void keepAll() {
        new FileDialog(FileDialog.Kind.PAGES, "hand-over.keep-all")
                .folder(root.getScene().getWindow())
                .ifPresent(this::writeAll);
    }

    /** Writes the still and the pages under their usual names. */
    void writeAll(Path folder) {
        handOver.writeAll(
                folder,
                files -> studio.say()
                        .accept(Texts.of(
                                "hand-over.kept-all",
                                folder,
                                String.join(
                                        ", ",
                                        files.stream()
                                                .map(f -> f.getFileName().toString())
                                                .toList()))));
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Parent root() {
        return root;
    }

    @Override
    public void entered() {
        choices.update();
        paint();
    }
}
