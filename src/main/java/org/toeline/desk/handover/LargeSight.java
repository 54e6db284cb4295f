package org.toeline.desk.handover;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.film.FilmPictures;
import org.toeline.desk.film.Films;
import org.toeline.desk.film.Reel;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;
import org.toeline.paint.PictureFrame;
import org.toeline.video.ClipInfo;

/**
 * To the player's eyes: the whole screen with the picture, the lines that matter and the one thing. While the film plays it is
 * seen in the picture's place, without lines, which belong to the marked frame.
 */
final class LargeSight {

    private final Studio studio;
    private final HandOver handOver;
    private final Films films;
    private final Function<View, Optional<Reel>> reels;
    private final Predicate<KeyEvent> keys;
    private final ImageView painted = new ImageView();
    private final ImageView film = new ImageView();
    private final Rectangle window = new Rectangle();
    private final Pane passing = new Pane(film);
    private final Pane root = new Pane(painted, passing);
    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            pulse();
        }
    };
    private Optional<Stage> stage = Optional.empty();
    private Optional<Reel> reel = Optional.empty();
    private Optional<FilmPictures> pictures = Optional.empty();

    /**
     * @param reels the film of a view
     * @param keys  what a key does to the film; answers false for the key that leaves
     */
    LargeSight(
            Studio studio,
            HandOver handOver,
            Films films,
            Function<View, Optional<Reel>> reels,
            Predicate<KeyEvent> keys) {
        this.studio = studio;
        this.handOver = handOver;
        this.films = films;
        this.reels = reels;
        this.keys = keys;
        root.setId("large-sight");
        root.setStyle("-fx-background-color: black;");
        passing.setClip(window);
        passing.setVisible(false);
        film.setId("large-film");
        painted.setId("large-picture");
        root.widthProperty().addListener((o, before, now) -> paint());
        root.heightProperty().addListener((o, before, now) -> paint());
    }

    void show(Window owner) {
        if (stage.isPresent()) {
            return;
        }
        if (studio.assessment().get().isEmpty() || studio.frames().get().isEmpty()) {
            studio.say().accept(handOver.whyNot());
            return;
        }
        films.player().stop();
        Stage shown = new Stage();
        shown.initOwner(owner);
        shown.setTitle(Texts.of("large.title"));
        Scene scene = new Scene(root, owner.getWidth(), owner.getHeight());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            e.consume();
            if (e.getCode() == KeyCode.ESCAPE || !keys.test(e)) {
                // after the key: a window that goes while it is told of one takes the program with it on Linux
                Platform.runLater(shown::hide);
            }
        });
        scene.setOnMouseClicked(e -> shown.hide());
        shown.setScene(scene);
        shown.setX(owner.getX());
        shown.setY(owner.getY());
        shown.setFullScreenExitHint("");
        shown.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
        shown.setFullScreen(true);
        shown.setOnHidden(e -> hidden(scene));
        stage = Optional.of(shown);
        shown.show();
        timer.start();
    }

    private void hidden(Scene scene) {
        stage = Optional.empty();
        timer.stop();
        films.player().stop();
        scene.setRoot(new Pane());
        painted.setImage(null);
        film.setImage(null);
        pictures = Optional.empty();
        reel = Optional.empty();
    }

    private void paint() {
        double scale = stage.map(Window::getOutputScaleX).orElse(1.0);
        if (stage.isPresent() && root.getWidth() > 0 && root.getHeight() > 0) {
            handOver.large(root.getWidth() * scale, root.getHeight() * scale, large -> show(large, scale));
        }
    }

    private void show(HandOver.Large large, double deviceScale) {
        if (stage.isEmpty()) {
            return;
        }
        painted.setImage(SwingFXUtils.toFXImage(large.image(), (@Nullable WritableImage) null));
        painted.setFitWidth(large.image().getWidth() / deviceScale);
        painted.setFitHeight(large.image().getHeight() / deviceScale);
        painted.setAccessibleText(large.drawing().described());
        // what plays is what is seen
        large.drawing().view().ifPresent(studio.model()::show);
        reel = large.drawing().view().flatMap(reels);
        pictures = reel.map(r -> new FilmPictures(r.film()));
        double scale = large.scale() / deviceScale;
        reel.ifPresent(
                r -> large.drawing().picture().ifPresent(p -> place(p, r.clip().info(), scale)));
    }

    /** The film where the picture is, as much of it as is seen of the picture. */
    private void place(PictureFrame picture, ClipInfo clip, double scale) {
        double pixel = scale * picture.toDevice().getScaleX();
        film.setFitWidth(pixel * clip.width());
        film.setFitHeight(pixel * clip.height());
        film.relocate(
                scale * picture.toDevice().getTranslateX(),
                scale * picture.toDevice().getTranslateY());
        window.setX(scale * picture.frame().getX());
        window.setY(scale * picture.frame().getY());
        window.setWidth(scale * picture.frame().getWidth());
        window.setHeight(scale * picture.frame().getHeight());
    }

    private void pulse() {
        boolean plays = films.player().plays() && reel.isPresent();
        if (plays) {
            Optional<Image> image =
                    pictures.flatMap(p -> p.picture(reel.orElseThrow().at()));
            image.ifPresent(film::setImage);
        }
        passing.setVisible(plays && film.getImage() != null);
    }
}
