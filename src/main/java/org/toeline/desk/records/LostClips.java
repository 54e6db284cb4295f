package org.toeline.desk.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;

/** Clips that are not where lessons say, and their finding again by what they hold. Off the interface thread. */
public final class LostClips {

    /** A lesson's clip that is neither at its place nor among the copies. */
    public record Lost(int lessonId, Take take) {}

    private LostClips() {}

    /** Those of the lessons that cannot be found; looks at names and copies, reads no clip. */
    public static List<Lost> among(Ledger ledger, List<Integer> lessons, LedgerPlace.Folder folder)
            throws LedgerException, IOException {
        List<Lost> lost = new ArrayList<>();
        Media copies = new Media(folder.media());
        for (int id : lessons) {
            for (Take take : ledger.takes(id)) {
                boolean copied = take.fingerprint().isPresent()
                        && copies.copyOf(take.fingerprint().get()).isPresent();
                if (!copied
                        && take.file(folder.folder())
                                .filter(Files::isRegularFile)
                                .isEmpty()) {
                    lost.add(new Lost(id, take));
                }
            }
        }
        return lost;
    }

    /** Looks below a folder; takes as long as walking it, and reading what has a right size. */
    public static Map<Lost, Path> search(List<Lost> lost, Path below) throws IOException {
        List<Fingerprint> wanted = lost.stream()
                .flatMap(l -> l.take().fingerprint().stream())
                .distinct()
                .toList();
        Map<Fingerprint, Path> found = Media.search(wanted, below);
        Map<Lost, Path> where = new LinkedHashMap<>();
        lost.forEach(
                l -> l.take().fingerprint().map(found::get).ifPresent(path -> where.put(l, path.toAbsolutePath())));
        return where;
    }

    /** Writes into lessons where their clips are now; marks and findings stay as they were. */
    public static int keep(Ledger ledger, Map<Lost, Path> found) throws LedgerException {
        Map<Integer, Map<View, Path>> byLesson = new LinkedHashMap<>();
        found.forEach((lost, path) -> byLesson.computeIfAbsent(lost.lessonId(), id -> new LinkedHashMap<>())
                .put(lost.take().view(), path));
        int kept = 0;
        for (var lesson : byLesson.entrySet()) {
            Optional<KeptLesson> now = ledger.lesson(lesson.getKey());
            if (now.isPresent() && moved(ledger, now.get(), lesson.getValue())) {
                kept += lesson.getValue().size();
            }
        }
        for (Lost lost : found.keySet()) {
            if (lost.take().fingerprint().isPresent()) {
                ledger.noteClip(
                        lost.lessonId(),
                        lost.take().view(),
                        lost.take().fingerprint().get());
            }
        }
        return kept;
    }

    private static boolean moved(Ledger ledger, KeptLesson kept, Map<View, Path> where) throws LedgerException {
        Lesson lesson = kept.lesson();
        for (var clip : where.entrySet()) {
            ClipMoment moment = lesson.clips().get(clip.getKey());
            if (moment != null) {
                lesson = lesson.withClip(
                        clip.getKey(), moment.moved(clip.getValue().toString()));
            }
        }
        Saved saved = ledger.save(kept.id(), kept.version(), lesson, kept.findings());
        if (saved instanceof Saved.Conflict conflict) {
            ledger.dropAside(conflict.asideId());
        }
        return saved instanceof Saved.Done;
    }
}
