package org.toeline.desk.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.AddressFrames;
import org.toeline.desk.records.LostClips;
import org.toeline.desk.records.LostClips.Lost;
import org.toeline.desk.records.Records;
import org.toeline.desk.records.Settings;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;

/**
 * Clips of the lesson on the desk that are not at their places: looked for among the copies, then below a folder the coach
 * names. Meanwhile the frame that was kept is shown, and the marks on it.
 */
public final class MissingOnSheet {

    /** Where a clip was found, or the frame that is left of it. */
    private record Left(Optional<Path> copy, Optional<BufferedImage> frame) {}

    private final LessonModel model;
    private final Records records;
    private final Background background;
    private final Consumer<String> report;
    private final Map<View, Path> missing = new EnumMap<>(View.class);
    private final BiConsumer<View, WritableImage> picture;
    private final Runnable changed;
    private Opening opening = (view, file, seconds) -> {};

    /** Opens a clip that was found. */
    public interface Opening {
        void open(View view, Path file, OptionalDouble seconds);
    }

    /**
     * @param picture takes the frame that was kept of a view
     * @param changed is told when a clip is missing, or found
     */
    public MissingOnSheet(
            LessonModel model,
            Records records,
            Background background,
            Consumer<String> report,
            BiConsumer<View, WritableImage> picture,
            Runnable changed) {
        this.model = model;
        this.records = records;
        this.background = background;
        this.report = report;
        this.picture = picture;
        this.changed = changed;
    }

    public void opensWith(Opening with) {
        opening = with;
    }

    /** Another lesson: what was missing is none of its business. */
    public void clear() {
        missing.clear();
    }

    /** The clip's name, when it is missing. */
    public Optional<String> name(View view) {
        return Optional.ofNullable(missing.get(view)).map(p -> p.getFileName().toString());
    }

    /** A view's clip is not where the lesson says. */
    public void notThere(View view, Path file, OptionalDouble seconds) {
        OptionalInt id = records.lessonId();
        if (id.isEmpty()) {
            lost(view, file, Optional.empty());
            return;
        }
        Settings settings = records.settings();
        records.ask(
                l -> l.takes(id.getAsInt()),
                takes -> background.run(() -> left(takes, id.getAsInt(), view, settings), left -> {
                    if (!records.lessonId().equals(id)) {
                        return;
                    }
                    left.copy.ifPresentOrElse(
                            copy -> opening.open(view, copy, seconds), () -> lost(view, file, left.frame));
                }));
    }

    private static Left left(List<Take> takes, int lessonId, View view, Settings settings) throws IOException {
        Optional<Take> take = takes.stream().filter(t -> t.view() == view).findFirst();
        Optional<Path> copy = take.isEmpty()
                ? Optional.empty()
                : new Media(settings.folder().media())
                        .locate(take.get(), settings.folder().folder());
        return new Left(
                copy, copy.isPresent() ? Optional.empty() : AddressFrames.read(settings.folder(), lessonId, view));
    }

    private void lost(View view, Path file, Optional<BufferedImage> frame) {
        missing.put(view, file);
        frame.ifPresent(f -> picture.accept(view, SwingFXUtils.toFXImage(f, null)));
        report.accept(Texts.of("lost.here", file));
        changed.run();
    }

    /** Looks for the missing clips below a folder; those found are where the lesson says from then on. */
    public void look(Path below) {
        OptionalInt id = records.lessonId();
        if (id.isEmpty()) {
            report.accept(Texts.of("lost.none", below));
            return;
        }
        report.accept(Texts.of("lost.looking", below));
        records.ask(
                l -> LostClips.among(
                        l, List.of(id.getAsInt()), records.settings().folder()),
                lost -> background.run(() -> LostClips.search(lost, below), where -> found(id, lost, where, below)));
    }

    private void found(OptionalInt id, List<Lost> lost, Map<Lost, Path> where, Path below) {
        if (!records.lessonId().equals(id)) {
            return;
        }
        where.forEach((l, path) -> {
            View view = l.take().view();
            missing.remove(view);
            model.moved(view, path.toString());
            opening.open(
                    view,
                    path,
                    Objects.requireNonNull(model.lesson().clips().get(view)).seconds());
        });
        report.accept(
                where.isEmpty() ? Texts.of("lost.none", below) : Texts.of("lost.found", where.size(), lost.size()));
        changed.run();
    }
}
