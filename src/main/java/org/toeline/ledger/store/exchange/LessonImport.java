package org.toeline.ledger.store.exchange;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.apache.commons.io.file.PathUtils;
import org.toeline.language.Sentences;
import org.toeline.ledger.BesideDocument;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.FolderLock;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.Take;
import org.toeline.ledger.store.rows.TakenIn;
import org.toeline.mark.View;

/**
 * Takes lessons into a ledger, from documents and from archives. A file is taken in whole or refused with a sentence, and then
 * nothing of it is left behind.
 *
 * @param files where an archive's clips and stills go: the folder that holds the ledger, or one for a server's ledger
 * @param judge states the findings of a lesson that comes without them
 */
public record LessonImport(Ledger ledger, LedgerPlace.Folder files, Function<Lesson, List<StatedFinding>> judge) {

    private static final String STAGING = ".import-";

    /** @param playerId whose lesson it is; empty to go by the name in it */
    public TakenIn take(Path file, Optional<Integer> playerId) throws DocumentException, LedgerException {
        if (isArchive(file)) {
            return takeArchive(file, playerId);
        }
        Lesson lesson = LessonDocument.read(file);
        Map<View, Path> beside = new EnumMap<>(View.class);
        lesson.clips()
                .forEach((view, clip) ->
                        BesideDocument.clip(file, clip.clip()).ifPresent(path -> beside.put(view, path)));
        TakenIn taken = ledger.takeIn(lesson, judge.apply(lesson), playerId, Optional.empty(), beside);
        if (taken instanceof TakenIn.New added) {
            noteClips(added.lessonId(), beside);
        }
        return taken;
    }

    /** By its name; else it is a document. */
    public static boolean isArchive(Path file) {
        return file.getFileName() != null
                && file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".zip");
    }

    /** A clip beside the document is known by its content from now on; one that is missing does not matter. */
    private void noteClips(int lessonId, Map<View, Path> beside) throws LedgerException {
        for (Map.Entry<View, Path> clip : beside.entrySet()) {
            try {
                ledger.noteClip(lessonId, clip.getKey(), Fingerprint.of(clip.getValue()));
            } catch (IOException e) {
                // a clip that cannot be read now is a missing clip
                continue;
            }
        }
    }

    private TakenIn takeArchive(Path file, Optional<Integer> playerId) throws DocumentException, LedgerException {
        Path staging = files.folder().resolve(STAGING + UUID.randomUUID());
        try {
            Files.createDirectories(files.folder());
            try (FolderLock lock = FolderLock.take(files.folder())) {
                sweep();
                Files.createDirectory(staging);
                LessonArchive.Contents contents = LessonArchive.unpack(file, staging);
                return keep(contents, playerId);
            } finally {
                if (Files.exists(staging)) {
                    PathUtils.deleteDirectory(staging);
                }
            }
        } catch (IOException e) {
            throw new DocumentException(Sentences.of(LessonImport.class)
                    .of("import.not-taken", file, e.getClass().getSimpleName() + ": " + e.getMessage()));
        }
    }

    /** Files first, which nobody sees until the rows name them; again where an import was stopped between. */
    private TakenIn keep(LessonArchive.Contents contents, Optional<Integer> playerId)
            throws IOException, LedgerException {
        Media media = new Media(files.media());
        List<Fingerprint> copied = new ArrayList<>();
        TakenIn taken;
        try {
            for (Map.Entry<View, Path> clip : contents.clips().entrySet()) {
                Fingerprint fingerprint =
                        Objects.requireNonNull(contents.fingerprints().get(clip.getKey()));
                if (media.copyOf(fingerprint).isEmpty()) {
                    copied.add(fingerprint);
                }
                media.copyIn(clip.getValue(), fingerprint);
            }
            List<StatedFinding> findings =
                    contents.findings().isEmpty() ? judge.apply(contents.lesson()) : contents.findings();
            taken = ledger.takeIn(contents.lesson(), findings, playerId, contents.identity(), Map.of());
        } catch (IOException | LedgerException e) {
            for (Fingerprint fingerprint : copied) {
                media.drop(fingerprint);
            }
            throw e;
        }
        complete(taken.lessonId(), contents);
        dropUnused(taken.lessonId(), copied, media);
        return taken;
    }

    /** A lesson that was there already may have its clips from elsewhere: nothing would ever take these away. */
    private void dropUnused(int lessonId, List<Fingerprint> copied, Media media) throws IOException, LedgerException {
        List<Fingerprint> used = ledger.takes(lessonId).stream()
                .flatMap(t -> t.fingerprint().stream())
                .toList();
        for (Fingerprint fingerprint : copied) {
            if (!used.contains(fingerprint)) {
                media.drop(fingerprint);
            }
        }
    }

    /** Also for a lesson that was there already: the import that brought it may have been stopped before its files came. */
    private void complete(int lessonId, LessonArchive.Contents contents) throws IOException, LedgerException {
        for (Take take : ledger.takes(lessonId)) {
            Optional<Fingerprint> fingerprint =
                    Optional.ofNullable(contents.fingerprints().get(take.view()));
            if (take.fingerprint().isEmpty() && fingerprint.isPresent()) {
                ledger.noteClip(lessonId, take.view(), fingerprint.get());
            }
        }
        Optional<KeptLesson> kept = ledger.lesson(lessonId);
        if (kept.isEmpty()) {
            return;
        }
        Path stills = Stills.folder(files, kept.get().identity());
        for (Path still : contents.stills()) {
            Files.createDirectories(stills);
            if (!Files.exists(stills.resolve(still.getFileName()))) {
                Files.move(still, stills.resolve(still.getFileName()));
            }
        }
    }

    /** What an import left that was stopped. */
    private void sweep() throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(files.folder(), STAGING + "*")) {
            for (Path folder : left) {
                PathUtils.deleteDirectory(folder);
            }
        }
    }
}
