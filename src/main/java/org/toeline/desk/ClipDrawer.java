package org.toeline.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import javafx.application.Platform;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.toeline.assist.AddressFinder;
import org.toeline.assist.Progress;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.work.Background;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;
import org.toeline.video.FrameFetcher;

/** The clips of the lesson on the desk: opened, stepped, and the frame each view shows. */
final class ClipDrawer {

    /** The clip of a view and where in it the view stands. */
    private static final class Open {

        private final FrameFetcher fetcher;
        private int at;

        private Open(FrameFetcher fetcher) {
            this.fetcher = fetcher;
        }
    }

    /** Below this confidence a moment of address is said to need a look. */
    private static final double SURE = 0.8;

    private final LessonModel model;
    private final Background background;
    private final BiConsumer<View, WritableImage> shown;
    private final Map<View, Open> open = new EnumMap<>(View.class);
    private final Map<View, Frame> frames = new EnumMap<>(View.class);
    private final Set<View> waiting = EnumSet.noneOf(View.class);
    private final java.util.function.Consumer<String> report;
    private final MissingOnSheet missing;

    ClipDrawer(LessonModel model, Background background, BiConsumer<View, WritableImage> shown,
               java.util.function.Consumer<String> report, MissingOnSheet missing) {
        this.model = model;
        this.background = background;
        this.shown = shown;
        this.report = report;
        this.missing = missing;
        missing.opensWith(this::open);
    }

    /** Opens the clips a lesson names, beside its document or where the names say. */
    void openAll() {
        close();
        missing.clear();
        model.lesson().clips().forEach((view, moment) -> open(view, KeptClips.resolved(moment, model.file()),
                moment.seconds()));
    }

    /** A new clip for a view, with the moment of address if one is found. */
    void choose(View view, Path file) {
        background.run(() -> Clip.open(file), clip -> {
            clip.info().remarks().forEach(report);
            model.clip(view, file.toAbsolutePath().toString(), clip.info().width(), clip.info().height());
            put(view, clip, OptionalDouble.empty());
            model.show(view);
            findAddress(view);
        });
    }

    private void open(View view, Path file, OptionalDouble seconds) {
        background.run(() -> Files.exists(file) ? Optional.of(Clip.open(file)) : Optional.<Clip>empty(),
                clip -> clip.ifPresentOrElse(c -> put(view, c, seconds), () -> missing.notThere(view, file, seconds)));
    }

    private void put(View view, Clip clip, OptionalDouble seconds) {
        Optional.ofNullable(open.remove(view)).ifPresent(o -> o.fetcher.close());
        Open opened = new Open(new FrameFetcher(clip));
        open.put(view, opened);
        go(view, seconds.isPresent() ? clip.indexAt(seconds.getAsDouble()) : 0);
    }

    boolean has(View view) {
        return open.containsKey(view);
    }

    /** The clip of a view. */
    Optional<Path> file(View view) {
        return Optional.ofNullable(open.get(view)).map(o -> o.fetcher.clip().file());
    }

    Optional<Frame> frame(View view) {
        return Optional.ofNullable(frames.get(view));
    }

    /** The frames that are shown. */
    Map<View, Frame> frames() {
        return Map.copyOf(frames);
    }

    /** Time in the clip, of its length; empty without a clip. */
    Optional<double[]> time(View view) {
        return Optional.ofNullable(open.get(view)).map(o -> {
            Clip clip = o.fetcher.clip();
            return new double[] {clip.seconds(o.at), clip.info().startSeconds() + clip.info().durationSeconds()};
        });
    }

    /** Frames forwards (or backwards) from where the view stands. */
    void step(View view, int count) {
        Optional.ofNullable(open.get(view)).ifPresent(o -> {
            go(view, o.at + count);
            remember(view);
        });
    }

    /** To a time. */
    void seek(View view, double seconds) {
        Optional.ofNullable(open.get(view)).ifPresent(o -> {
            go(view, o.fetcher.clip().indexAt(seconds));
            remember(view);
        });
    }

    void jump(View view, double seconds) {
        time(view).ifPresent(t -> seek(view, t[0] + seconds));
    }

    private void go(View view, int index) {
        Open o = open.get(view);
        o.at = Math.max(0, Math.min(o.fetcher.clip().frameCount() - 1, index));
        o.fetcher.fetch(o.at, near -> Platform.runLater(() -> onTheWay(view, near)),
                frame -> Platform.runLater(() -> show(view, frame)),
                e -> Platform.runLater(() -> report.accept(e.getMessage())));
    }

    private void remember(View view) {
        Open o = open.get(view);
        model.moment(view, o.fetcher.clip().seconds(o.at));
    }

    /** The key frame before the one jumped to: to be looked at, not marked on. */
    private void onTheWay(View view, Frame near) {
        shown.accept(view, image(near));
        report.accept(Texts.of("view.near"));
        waiting.add(view);
    }

    private void show(View view, Frame frame) {
        frames.put(view, frame);
        if (waiting.remove(view)) {
            report.accept("");
        }
        shown.accept(view, image(frame));
    }

    private static WritableImage image(Frame frame) {
        WritableImage image = new WritableImage(frame.width(), frame.height());
        image.getPixelWriter().setPixels(0, 0, frame.width(), frame.height(), PixelFormat.getIntArgbInstance(),
                frame.argb(), 0, frame.width());
        return image;
    }

    /** Looks for the moment of address in a reader of its own, so that the clip can be stepped meanwhile. */
    void findAddress(View view) {
        Open o = open.get(view);
        if (o == null) {
            return;
        }
        Path file = o.fetcher.clip().file();
        report.accept(Texts.of("address.looking"));
        background.run(() -> {
            try (Clip clip = Clip.open(file)) {
                return AddressFinder.find(clip, Progress.NONE);
            }
        }, span -> {
            if (open.get(view) == o) {
                span.ifPresent(s -> seek(view, s.addressSeconds()));
                report.accept(span.map(s -> Texts.of(s.confidence() < SURE ? "address.unsure" : "address.found"))
                        .orElse(Texts.of("address.none")));
            }
        });
    }

    void close() {
        open.values().forEach(o -> o.fetcher.close());
        open.clear();
        frames.clear();
    }
}
