package org.toeline.desk.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.image.Image;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.film.FilmBar;
import org.toeline.desk.film.Films;
import org.toeline.desk.film.SecondView;
import org.toeline.desk.film.Span;
import org.toeline.desk.film.Strip;
import org.toeline.desk.film.StripFacts;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;

/** The large picture, with the other view beside it while both are watched in step, and the strips of what is watched. */
final class Watched extends HBox {

    private final LessonModel model;
    private final ClipDrawer clips;
    private final Films films;
    private final PicturePane picture;
    private final SecondView second;
    private final FilmBar bar;
    private final Strip strip;
    private final Strip other;
    private final VBox strips;
    private View shown = View.FACE_ON;

    Watched(Sheet sheet, PicturePane picture) {
        super(6);
        this.model = sheet.model();
        this.clips = sheet.clips();
        this.films = sheet.films();
        this.picture = picture;
        this.second = new SecondView(() -> films.companion().ifPresent(model::show));
        this.bar = new FilmBar(films);
        this.strip = strip(() -> Optional.of(model.large()));
        this.other = strip(films::companion);
        other.setId("strip-other");
        this.strips = new VBox(4, strip, other);
        HBox.setHgrow(picture, Priority.ALWAYS);
        HBox.setHgrow(second, Priority.ALWAYS);
        getChildren().addAll(picture, second);
        second.setVisible(false);
        second.setManaged(false);
    }

    private Strip strip(java.util.function.Supplier<Optional<View>> of) {
        Strip made = new Strip(new Strip.Hand() {
            @Override
            public void to(double seconds) {
                of.get().ifPresent(view -> films.scrub(view, seconds));
            }

            @Override
            public void repeat(Optional<Span> span) {
                of.get().ifPresent(view -> films.repeat(view, span));
            }
        });
        made.setAccessibleText(Texts.of("strip.name"));
        return made;
    }

    /** The other view, while both are watched in step. */
    SecondView second() {
        return second;
    }

    FilmBar bar() {
        return bar;
    }

    VBox strips() {
        return strips;
    }

    boolean wheeled(int frames) {
        boolean film = clips.reel(model.large()).isPresent();
        if (film) {
            films.step(frames);
        }
        return film;
    }

    /** Whether another view than at the last update is the large one. */
    boolean isOther() {
        return shown != model.large();
    }

    void show(View view, @Nullable Image image) {
        if (films.companion().filter(c -> c == view).isPresent()) {
            second.show(image);
        }
    }

    void pass(View view, Image image, int widthPx, int heightPx) {
        if (view == model.large()) {
            picture.pass(image, widthPx, heightPx);
        } else {
            show(view, image);
        }
    }

    void update() {
        boolean two = films.together();
        if (isOther()) {
            shown = model.large();
            films.player().stop();
            // its place is taken by the other view's, exactly
            films.companion().filter(c -> two).flatMap(clips::reel).ifPresent(r -> r.go(r.at()));
        }
        second.setVisible(two);
        second.setManaged(two);
        films.companion().ifPresent(c -> second.name(Texts.of("view." + c.id())));
        bar.update(clips.reel(model.large()).isPresent());
        strip.show(facts(model.large()), films.repeated(model.large()));
        Optional<View> companion = films.companion().filter(c -> two);
        other.show(companion.flatMap(this::facts), companion.flatMap(films::repeated));
    }

    void moved() {
        strip.moved();
        other.moved();
    }

    private Optional<StripFacts> facts(View view) {
        return clips.reel(view)
                .map(reel -> new StripFacts(reel, clips.movement(view), marked(view), films.struck(view)));
    }

    /** The marked frame, where anything is marked. */
    private OptionalDouble marked(View view) {
        return model.sheet().view(view).filter(v -> !v.isBlank()).isPresent()
                ? clips.marked(view)
                : OptionalDouble.empty();
    }
}
