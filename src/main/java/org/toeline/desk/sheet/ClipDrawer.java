package org.toeline.desk.sheet;

import java.nio.IntBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.toeline.assist.AddressFinder;
import org.toeline.desk.lesson.Film;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.desk.work.WorkLines;
import org.toeline.ledger.ClipMoment;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.Frame;
import org.toeline.video.FrameFetcher;
import org.toeline.video.KeptIndexes;
import org.toeline.video.SlowMotion;

/** The clips of the lesson on the desk: opened, stepped, and the frame each view shows. */
public final class ClipDrawer implements Film, LessonModel.Listener {

    /** Below this confidence a moment of address is said to need a look. */
    private static final double SURE = 0.8;

    private final LessonModel model;
    private final Background background;
    private final BiConsumer<View, WritableImage> shown;
    private final Map<View, OpenClip> open = new EnumMap<>(View.class);
    private final Set<View> waiting = EnumSet.noneOf(View.class);
    private final Map<View, WorkLines.Work> opening = new EnumMap<>(View.class);
    private final Map<View, WorkLines.Work> looking = new EnumMap<>(View.class);
    private final WorkLines lines = new WorkLines(Texts.of("work.stop"));
    private final Consumer<String> report;
    private final MissingOnSheet missing;
    private final KeptIndexes indexes;

    public ClipDrawer(
            LessonModel model,
            Background background,
            BiConsumer<View, WritableImage> shown,
            Consumer<String> report,
            MissingOnSheet missing,
            KeptIndexes indexes) {
        this.model = model;
        this.background = background;
        this.shown = shown;
        this.report = report;
        this.missing = missing;
        this.indexes = indexes;
        missing.opensWith(this::open);
        model.watch(this);
        model.listen(this);
    }

    /** Opens the clips a lesson names, beside its document or where the names say. */
    public void openAll() {
        close();
        missing.clear();
        model.lesson()
                .clips()
                .forEach((view, moment) -> open(view, KeptClips.resolved(moment, model.file()), moment.seconds()));
    }

    /** What is being opened or looked through, a line each. */
    public WorkLines lines() {
        return lines;
    }

    /** A new clip for a view, with the moment of address if one is found. */
    public void choose(View view, Path file) {
        open(
                view,
                file,
                clip -> {
                    clip.info().remarks().forEach(report);
                    drop(view);
                    model.clip(
                            view,
                            file.toAbsolutePath().toString(),
                            clip.info().width(),
                            clip.info().height());
                    put(view, clip);
                    model.show(view);
                    findAddress(view);
                },
                () -> report.accept(Texts.of("lost.here", file)));
    }

    private void open(View view, Path file, OptionalDouble seconds) {
        open(view, file, clip -> put(view, clip), () -> missing.notThere(view, file, seconds));
    }

    /** Opens a file for a view; a later one for the same view, or another lesson, makes its result void. */
    private void open(View view, Path file, Consumer<Clip> then, Runnable gone) {
        WorkLines.Work work = begin(
                opening,
                view,
                Texts.of("clip.opening", file.getFileName()),
                Texts.of("clip.stopped", file.getFileName()));
        background.run(
                () -> work.during(() -> Files.exists(file) ? Clip.open(file, work, indexes) : Optional.<Clip>empty()),
                found -> {
                    if (work.stopped()) {
                        found.ifPresent(Clip::close);
                    } else {
                        found.ifPresentOrElse(then, gone);
                    }
                });
    }

    private WorkLines.Work begin(Map<View, WorkLines.Work> kind, View view, String what, String stopped) {
        Optional.ofNullable(kind.get(view)).ifPresent(WorkLines.Work::stop);
        WorkLines.Work work = lines.begin(what, () -> report.accept(stopped));
        kind.put(view, work);
        return work;
    }

    private void put(View view, Clip clip) {
        drop(view);
        ClipMoment moment = model.lesson().clips().get(view);
        OpenClip opened = new OpenClip(new FrameFetcher(clip), moment == null ? "" : moment.clip());
        opened.markedAt = model.markedAt(view);
        open.put(view, opened);
        go(view, opened.place(opened.markedAt));
    }

    private void drop(View view) {
        Optional.ofNullable(open.remove(view)).ifPresent(o -> o.fetcher.close());
        Optional.ofNullable(looking.remove(view)).ifPresent(WorkLines.Work::stop);
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

    /** What was undone or chosen may lead to another clip or another marked frame. */
    @Override
    public void changed() {
        for (View view : View.values()) {
            OpenClip o = open.get(view);
            ClipMoment moment = model.lesson().clips().get(view);
            if (o == null) {
                continue;
            }
            if (moment == null) {
                drop(view);
                shown.accept(view, null);
            } else if (!moment.clip().equals(o.named)) {
                drop(view);
                open(view, KeptClips.resolved(moment, model.file()), moment.seconds());
            } else if (!moment.seconds().equals(o.markedAt)) {
                o.markedAt = moment.seconds();
                o.marked = o.marked.filter(f -> f.index() == o.place(moment.seconds()));
                go(view, o.place(moment.seconds()));
            }
        }
    }

    /** The clip of a view. */
    public Optional<Path> file(View view) {
        return Optional.ofNullable(open.get(view)).map(o -> o.fetcher.clip().file());
    }

    /** The picture that a view's marks belong to; while it has none, the one that is shown. */
    public Optional<Frame> frame(View view) {
        boolean blank = model.sheet().view(view).map(ViewMarks::isBlank).orElse(true);
        return Optional.ofNullable(open.get(view)).flatMap(o -> blank ? o.shown : o.marked);
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

    private void go(View view, int index) {
        OpenClip o = Objects.requireNonNull(open.get(view));
        keepMarked(view, o);
        o.at = Math.max(0, Math.min(o.fetcher.clip().frameCount() - 1, index));
        o.shown = o.shown.filter(f -> f.index() == o.at);
        if (o.shown.isPresent()) {
            return;
        }
        o.fetcher.fetch(
                o.at,
                near -> Platform.runLater(() -> onTheWay(view, o, near)),
                frame -> Platform.runLater(() -> show(view, o, frame)),
                e -> Platform.runLater(() -> failed(view, o, e)));
    }

    /** Before a view leaves it: the picture that the marks belong to. */
    private void keepMarked(View view, OpenClip o) {
        int place = o.place(o.markedAt);
        o.marked = o.marked.or(() -> o.shown.filter(f -> f.index() == place));
        boolean left = o.marked.isEmpty() && o.shown.isEmpty() && o.at != place;
        if (left) {
            background.run(() -> o.fetcher.clip().frame(place), frame -> {
                if (open.get(view) == o && o.place(o.markedAt) == frame.index()) {
                    o.marked = Optional.of(frame);
                }
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
        if (open.get(view) == o && near.index() != o.at) {
            shown.accept(view, image(near));
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
        shown.accept(view, image(frame));
    }

    private static WritableImage image(Frame frame) {
        // all pixels are opaque, so that multiplied in or not is the same; nothing is copied
        return new WritableImage(new PixelBuffer<>(
                frame.width(), frame.height(), IntBuffer.wrap(frame.argb()), PixelFormat.getIntArgbPreInstance()));
    }

    /** Looks for the moment of address in a reader of its own, so that the clip can be stepped meanwhile. */
    public void findAddress(View view) {
        OpenClip o = open.get(view);
        if (o == null) {
            return;
        }
        Clip clip = o.fetcher.clip();
        SlowMotion filmed = slowMotion(view);
        report.accept(Texts.of("address.looking"));
        WorkLines.Work work = begin(
                looking, view, Texts.of("address.looking.in", clip.file().getFileName()), Texts.of("address.stopped"));
        background.run(() -> work.during(() -> AddressFinder.find(clip, filmed, work)), span -> {
            if (open.get(view) == o && !work.stopped()) {
                span.ifPresent(s -> {
                    model.propose(view, clip.seconds(clip.indexAt(s.addressSeconds())));
                    seek(view, s.addressSeconds());
                });
                report.accept(span.map(s -> Texts.of(s.confidence() < SURE ? "address.unsure" : "address.found"))
                        .orElse(Texts.of("address.none")));
            }
        });
    }

    /** How a view's clip relates to real time: as the coach says, else as the file says. */
    public SlowMotion slowMotion(View view) {
        Optional<Clip> clip = Optional.ofNullable(open.get(view)).map(o -> o.fetcher.clip());
        OptionalDouble said = filmedAt(view);
        return clip.map(c -> said.isPresent() ? c.capturedAt(said.getAsDouble()) : c.slowMotion())
                .orElse(SlowMotion.NONE);
    }

    /** Frames a second at which a view's clip was filmed, as the coach says. */
    public OptionalDouble filmedAt(View view) {
        return Optional.ofNullable(model.lesson().clips().get(view))
                .map(ClipMoment::filmedAt)
                .orElse(OptionalDouble.empty());
    }

    public void close() {
        opening.values().forEach(WorkLines.Work::stop);
        looking.values().forEach(WorkLines.Work::stop);
        opening.clear();
        looking.clear();
        open.values().forEach(o -> o.fetcher.close());
        open.clear();
        waiting.clear();
    }
}
