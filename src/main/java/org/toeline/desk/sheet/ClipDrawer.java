package org.toeline.desk.sheet;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.toeline.assist.AddressFinder;
import org.toeline.assist.Movement;
import org.toeline.assist.StillSpan;
import org.toeline.desk.film.Span;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.desk.work.WorkLines;
import org.toeline.ledger.ClipMoment;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.ClipInfo;
import org.toeline.video.KeptIndexes;
import org.toeline.video.Progress;
import org.toeline.video.SlowMotion;

/** The clips of the lesson on the desk: opened, stepped, and the frame each view shows. */
public final class ClipDrawer extends LookedClips implements LessonListener {

    /** Below this confidence a moment of address is said to need a look. */
    private static final double SURE = 0.8;

    /** A swing of any club is over by then, with its finish. */
    private static final double SWING_S = 2.2;

    private static final double BEFORE_S = 0.3;

    /** A film in another container may last a frame more or less. */
    private static final double ALIKE_S = 0.1;

    private final Map<View, WorkLines.Work> opening = new EnumMap<>(View.class);
    private final Map<View, WorkLines.Work> looking = new EnumMap<>(View.class);
    private final WorkLines lines = new WorkLines(Texts.of("work.stop"));
    private final MissingOnSheet missing;
    private final KeptIndexes indexes;

    public ClipDrawer(
            LessonModel model,
            Background background,
            Pictures pictures,
            Consumer<String> report,
            MissingOnSheet missing,
            KeptIndexes indexes) {
        super(model, background, pictures, report);
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

    /** A new clip for a view, which becomes the large one. */
    public void choose(View view, Path file) {
        take(view, file, () -> model.show(view));
    }

    /** New clips for several views, the large one of which stays. */
    void chooseAll(Map<View, Path> files) {
        files.forEach((view, file) -> take(view, file, () -> {}));
    }

    /** With the moment of address if one is found. */
    private void take(View view, Path file, Runnable then) {
        open(
                view,
                file,
                clip -> {
                    drop(view);
                    model.clip(
                            view,
                            file.toAbsolutePath().toString(),
                            clip.info().width(),
                            clip.info().height());
                    put(view, clip);
                    then.run();
                    findAddress(view);
                },
                () -> report.accept(Texts.of("lost.here", file)));
    }

    /** The film of a view under another name or in another place: what is marked on it stays. */
    public void sameFilm(View view, Path file) {
        open(
                view,
                file,
                clip -> {
                    Optional<String> other = notTheSame(view, clip);
                    if (other.isEmpty()) {
                        model.sameFilm(view, file.toAbsolutePath().toString());
                        put(view, clip);
                        lookThrough(view);
                    } else {
                        clip.close();
                        report.accept(other.get());
                    }
                },
                () -> report.accept(Texts.of("lost.here", file)));
    }

    /** Why a clip cannot be the film that is marked: on another one its marks would lie on some other moment or place. */
    private Optional<String> notTheSame(View view, Clip clip) {
        ClipInfo info = clip.info();
        boolean size = model.sheet()
                .view(view)
                .filter(v -> v.widthPx() == info.width() && v.heightPx() == info.height())
                .isPresent();
        if (!size) {
            return Optional.of(Texts.of("replace.size", clip.file().getFileName()));
        }
        boolean length = Optional.ofNullable(open.get(view))
                .map(o -> o.fetcher.clip().info())
                .map(was -> Math.abs(was.durationSeconds() - info.durationSeconds()) < ALIKE_S)
                .orElse(model.markedAt(view).orElse(0) <= info.startSeconds() + info.durationSeconds());
        return length
                ? Optional.empty()
                : Optional.of(Texts.of("replace.length", clip.file().getFileName()));
    }

    private void open(View view, Path file, OptionalDouble seconds) {
        open(
                view,
                file,
                clip -> {
                    put(view, clip);
                    lookThrough(view);
                },
                () -> missing.notThere(view, file, seconds));
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
        OpenClip opened = new OpenClip(clip, moment == null ? "" : moment.clip());
        opened.markedAt = model.markedAt(view);
        open.put(view, opened);
        go(view, opened.place(opened.markedAt));
    }

    private void drop(View view) {
        Optional.ofNullable(open.remove(view)).ifPresent(OpenClip::close);
        Optional.ofNullable(looking.remove(view)).ifPresent(WorkLines.Work::stop);
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
                pictures.show(view, null);
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

    /** Looks for the moment of address in a reader of its own, so that the clip can be stepped meanwhile. */
    public void findAddress(View view) {
        OpenClip o = open.get(view);
        if (o == null) {
            return;
        }
        Clip clip = o.fetcher.clip();
        if (clip.frameCount() < 2) {
            told(clip, Texts.of("address.photograph"));
            return;
        }
        SlowMotion filmed = slowMotion(view);
        report.accept(Texts.of("address.looking"));
        WorkLines.Work work = begin(
                looking, view, Texts.of("address.looking.in", clip.file().getFileName()), Texts.of("address.stopped"));
        background.run(() -> work.during(() -> AddressFinder.movement(clip, filmed, work)), movement -> {
            if (open.get(view) == o && !work.stopped()) {
                o.movement = movement;
                Optional<StillSpan> span = movement.flatMap(Movement::address);
                span.ifPresent(s -> {
                    model.propose(view, clip.seconds(clip.indexAt(s.addressSeconds())));
                    seek(view, s.addressSeconds());
                });
                told(
                        clip,
                        span.map(s -> Texts.of(s.confidence() < SURE ? "address.unsure" : "address.found"))
                                .orElse(Texts.of("address.none")));
                pictures.lookedThrough(view);
            }
        });
    }

    /** With what a person should know of the file before. */
    private void told(Clip clip, String what) {
        String remarks = clip.info().remarks().stream()
                .map(r -> clip.file().getFileName() + ": " + r + ". ")
                .collect(Collectors.joining());
        report.accept(remarks + what);
    }

    /** How a view's clip moves, once it was looked through. */
    public Optional<Movement> movement(View view) {
        return Optional.ofNullable(open.get(view)).flatMap(o -> o.movement);
    }

    /** The swing after a view's moment of address, from a little before the club is taken away; real time to real time. */
    public Optional<Span> swing(View view) {
        double factor = slowMotion(view).factor();
        return movement(view)
                .flatMap(Movement::address)
                .map(s -> new Span(s.endSeconds() - BEFORE_S * factor, s.endSeconds() + SWING_S * factor));
    }

    /** Looks a clip through without a word: nothing of the lesson follows from it. */
    private void lookThrough(View view) {
        OpenClip o = open.get(view);
        if (o != null && o.fetcher.clip().frameCount() > 1) {
            Clip clip = o.fetcher.clip();
            SlowMotion filmed = slowMotion(view);
            background.run(() -> AddressFinder.movement(clip, filmed, Progress.NONE), movement -> {
                if (open.get(view) == o && o.movement.isEmpty()) {
                    o.movement = movement;
                    pictures.lookedThrough(view);
                }
            });
        }
    }

    /** How a view's clip relates to real time: as the coach says, else as the file says. */
    @Override
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
        open.values().forEach(OpenClip::close);
        open.clear();
        waiting.clear();
    }
}
