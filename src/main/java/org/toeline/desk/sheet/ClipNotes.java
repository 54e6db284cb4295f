package org.toeline.desk.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.Records;
import org.toeline.desk.records.Settings;
import org.toeline.desk.work.Background;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;

/**
 * Notes what newly chosen clips hold, in the background, so that they can be found again under other names; copies them into the
 * ledger's folder where the coach wants that.
 */
final class ClipNotes implements LessonListener {

    private final LessonModel model;
    private final Records records;
    private final Background background;
    private int lessonId;
    private Map<View, String> noted = Map.of();

    ClipNotes(LessonModel model, Records records, Background background) {
        this.model = model;
        this.records = records;
        this.background = background;
        records.listen(this::settled);
    }

    @Override
    public void changed() {
        // only what is kept is noted
    }

    @Override
    public void settled() {
        OptionalInt id = records.lessonId();
        if (id.isEmpty() || !records.keeps()) {
            return;
        }
        Map<View, String> clips = new HashMap<>();
        KeptClips.absolute(model.lesson(), model.file())
                .clips()
                .forEach((view, moment) -> clips.put(view, moment.clip()));
        if (id.getAsInt() != lessonId || !clips.equals(noted)) {
            lessonId = id.getAsInt();
            noted = clips;
            records.ask(l -> l.takes(id.getAsInt()), takes -> takes.forEach(take -> note(id.getAsInt(), take)));
        }
    }

    private void note(int lesson, Take take) {
        Settings settings = records.settings();
        boolean copies = settings.clips() == Settings.Clips.COPY;
        if (take.fingerprint().isPresent() && !copies) {
            return;
        }
        Optional<Path> file = take.file(settings.folder().folder());
        if (file.isEmpty()) {
            return;
        }
        background.run(
                () -> looked(file.get(), take, settings),
                fingerprint -> fingerprint
                        .filter(f -> take.fingerprint().isEmpty())
                        .ifPresent(f -> records.ask(
                                l -> {
                                    // another clip may have been chosen meanwhile
                                    if (l.takes(lesson).stream()
                                            .anyMatch(t -> t.view() == take.view()
                                                    && t.path().equals(take.path()))) {
                                        l.noteClip(lesson, take.view(), f);
                                    }
                                    return f;
                                },
                                kept -> {})));
    }

    /** What it holds; empty when it is not there. */
    private static Optional<Fingerprint> looked(Path file, Take take, Settings settings) throws IOException {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        Fingerprint fingerprint =
                take.fingerprint().isPresent() ? take.fingerprint().get() : Fingerprint.of(file);
        Media media = new Media(settings.folder().media());
        if (settings.clips() == Settings.Clips.COPY
                && media.copyOf(fingerprint).isEmpty()
                && Files.size(file) == fingerprint.sizeBytes()) {
            media.copyIn(file, fingerprint);
        }
        return Optional.of(fingerprint);
    }
}
