package org.toeline.desk.sheet;

import java.nio.IntBuffer;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.film.Reel;
import org.toeline.desk.lesson.Film;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.ClipInfo;
import org.toeline.video.Frame;
import org.toeline.video.QuickFilm;
import org.toeline.video.SlowMotion;

/**
 * The clips of the views, where in them one looks, and the pictures of that and of the marked frames. Looking changes nothing of
 * the lesson. While the exact frame is on its way a small picture of it is shown, as soon as there is one.
 */
abstract class LookedClips implements Film {

    final LessonModel model;
    final Background background;
    final Consumer<String> report;
    final Pictures pictures;
    final Map<View, OpenClip> open = new EnumMap<>(View.class);
    final Set<View> waiting = EnumSet.noneOf(View.class);

    /** Where pictures go. */
    public interface Pictures {

        /** A view's picture while it stands: the exact frame, or one on the way to it; none when the clip is gone. */
        void show(View view, @Nullable WritableImage image);

        /** A small picture of a view's film, which moves. */
        void pass(View view, Image small, int widthPx, int heightPx);

        /** A view's clip was looked through. */
        void lookedThrough(View view);
    }

    LookedClips(LessonModel model, Background background, Pictures pictures, Consumer<String> report) {
        this.model = model;
        this.background = background;
        this.pictures = pictures;
        this.report = report;
    }

    /** The clip of a view with its film, to be looked through; empty for a photograph. */
    public Optional<Reel> reel(View view) {
        return Optional.ofNullable(open.get(view)).flatMap(o -> {
            if (o.reel.isEmpty()) {
                o.reel = o.film.map(film -> new ViewReel(view, o, film));
            }
            return o.reel;
        });
    }

    /** How a view's clip relates to real time. */
    public abstract SlowMotion slowMotion(View view);

    /** A view's film as others look through it. */
    private final class ViewReel implements Reel {

        private final View view;
        private final OpenClip of;
        private final QuickFilm film;

        ViewReel(View view, OpenClip of, QuickFilm film) {
            this.view = view;
            this.of = of;
            this.film = film;
        }

        @Override
        public View view() {
            return view;
        }

        @Override
        public Clip clip() {
            return of.fetcher.clip();
        }

        @Override
        public QuickFilm film() {
            return film;
        }

        @Override
        public SlowMotion motion() {
            return slowMotion(view);
        }

        @Override
        public int at() {
            return of.at;
        }

        @Override
        public void look(int frame) {
            if (open.get(view) == of) {
                pass(view, of, frame);
            }
        }

        @Override
        public void go(int frame) {
            if (open.get(view) == of) {
                LookedClips.this.go(view, frame);
            }
        }
    }

    @Override
    public boolean has(View view) {
        return open.containsKey(view);
    }

    @Override
    public OptionalDouble shown(View view) {
        return Optional.ofNullable(open.get(view))
                .flatMap(o -> o.shown)
                .map(f -> OptionalDouble.of(f.seconds()))
                .orElse(OptionalDouble.empty());
    }

    @Override
    public boolean shows(View view, OptionalDouble seconds) {
        return Optional.ofNullable(open.get(view))
                .filter(o -> o.shown.filter(f -> f.index() == o.place(seconds)).isPresent())
                .isPresent();
    }

    /** The clip of a view. */
    public Optional<Path> file(View view) {
        return Optional.ofNullable(open.get(view)).map(o -> o.fetcher.clip().file());
    }

    /** The picture that a view's marks belong to; while nothing is more than suggested, the one that is shown. */
    public Optional<Frame> frame(View view) {
        return Optional.ofNullable(open.get(view)).flatMap(o -> model.begun(view) ? o.marked : o.shown);
    }

    /** The picture that a view is marked on or will be, whatever is shown; empty while it is not there. */
    Optional<Frame> toBeMarked(View view) {
        return Optional.ofNullable(open.get(view))
                .flatMap(o -> o.marked.or(() -> o.shown).filter(f -> f.index() == o.place(o.markedAt)));
    }

    /** The pictures that the marks belong to. */
    public Map<View, Frame> frames() {
        Map<View, Frame> frames = new EnumMap<>(View.class);
        for (View view : View.values()) {
            frame(view).ifPresent(f -> frames.put(view, f));
        }
        return Collections.unmodifiableMap(frames);
    }

    /** Time in the clip, of its length; empty without a clip. */
    public Optional<double[]> time(View view) {
        return Optional.ofNullable(open.get(view)).map(o -> {
            Clip clip = o.fetcher.clip();
            return new double[] {
                clip.seconds(o.at), clip.info().startSeconds() + clip.info().durationSeconds()
            };
        });
    }

    /** Time of the marked frame; empty without a clip. */
    public OptionalDouble marked(View view) {
        return Optional.ofNullable(open.get(view))
                .map(o -> OptionalDouble.of(o.fetcher.clip().seconds(o.place(o.markedAt))))
                .orElse(OptionalDouble.empty());
    }

    /** Frames forwards (or backwards) from where the view stands: looking, which changes nothing of the lesson. */
    public void step(View view, int count) {
        Optional.ofNullable(open.get(view)).ifPresent(o -> go(view, o.at + count));
    }

    /** To a time. */
    public void seek(View view, double seconds) {
        Optional.ofNullable(open.get(view))
                .ifPresent(o -> go(view, o.fetcher.clip().indexAt(seconds)));
    }

    public void jump(View view, double seconds) {
        time(view).ifPresent(t -> seek(view, t[0] + seconds));
    }

    /** Back to the frame that a view is marked on. */
    public void back(View view) {
        Optional.ofNullable(open.get(view)).ifPresent(o -> go(view, o.place(o.markedAt)));
    }

    void go(View view, int index) {
        OpenClip o = Objects.requireNonNull(open.get(view));
        keepMarked(view, o);
        o.at = Math.max(0, Math.min(o.fetcher.clip().frameCount() - 1, index));
        o.shown = o.shown.filter(f -> f.index() == o.at);
        if (o.shown.isPresent()) {
            pictures.show(view, image(o.shown.get()));
            return;
        }
        if (!o.fetcher.clip().kept(o.at)) {
            small(view, o);
        }
        o.fetcher.fetch(
                o.at,
                near -> Platform.runLater(() -> onTheWay(view, o, near)),
                frame -> Platform.runLater(() -> show(view, o, frame)),
                e -> Platform.runLater(() -> failed(view, o, e)));
    }

    /** To a frame of which only the small picture is wanted for now. */
    private void pass(View view, OpenClip o, int index) {
        keepMarked(view, o);
        o.at = Math.max(0, Math.min(o.fetcher.clip().frameCount() - 1, index));
        o.shown = Optional.empty();
        o.fetcher.forget();
        if (!small(view, o)) {
            o.fetcher.near(o.at, near -> Platform.runLater(() -> passed(view, o, near)));
        }
    }

    /** A key frame near the one that is passed, while there is no small picture of it. */
    private void passed(View view, OpenClip o, Frame near) {
        if (open.get(view) == o && o.shown.isEmpty()) {
            pictures.pass(view, image(near), near.width(), near.height());
        }
    }

    private boolean small(View view, OpenClip o) {
        Optional<Image> small = o.small(o.at);
        ClipInfo info = o.fetcher.clip().info();
        small.ifPresent(image -> pictures.pass(view, image, info.width(), info.height()));
        return small.isPresent();
    }

    /** Before a view leaves it: the picture that the marks belong to. */
    private void keepMarked(View view, OpenClip o) {
        int place = o.place(o.markedAt);
        o.marked = o.marked.or(() -> o.shown.filter(f -> f.index() == place));
        boolean left = !o.markedComes && o.marked.isEmpty() && o.shown.isEmpty() && o.at != place;
        if (left) {
            o.markedComes = true;
            background.run(() -> o.decoded(place), frame -> {
                o.markedComes = false;
                frame.filter(f -> open.get(view) == o && o.place(o.markedAt) == f.index())
                        .ifPresent(f -> o.marked = Optional.of(f));
            });
        }
    }

    private void failed(View view, OpenClip o, Exception e) {
        if (open.get(view) == o) {
            waiting.remove(view);
            report.accept(e.getMessage());
        }
    }

    /** The key frame before the one jumped to: to be looked at, not marked on. */
    private void onTheWay(View view, OpenClip o, Frame near) {
        if (open.get(view) == o && near.index() != o.at && o.small(o.at).isEmpty()) {
            pictures.show(view, image(near));
            report.accept(Texts.of("view.near"));
            waiting.add(view);
        }
    }

    /** A picture that another clip or another place has made void is not shown. */
    private void show(View view, OpenClip o, Frame frame) {
        if (open.get(view) != o || frame.index() != o.at) {
            return;
        }
        o.shown = Optional.of(frame);
        if (frame.index() == o.place(o.markedAt) && o.marked.isEmpty()) {
            o.marked = o.shown;
        }
        if (waiting.remove(view)) {
            report.accept("");
        }
        pictures.show(view, image(frame));
    }

    private static WritableImage image(Frame frame) {
        // all pixels are opaque, so that multiplied in or not is the same; nothing is copied
        return new WritableImage(new PixelBuffer<>(
                frame.width(), frame.height(), IntBuffer.wrap(frame.argb()), PixelFormat.getIntArgbPreInstance()));
    }
}
