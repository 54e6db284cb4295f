package org.toeline.ledger.store.exchange;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.apache.commons.io.file.PathUtils;
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
        if (file.getFileName() != null
                && file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".zip")) {
            return takeArchive(file, playerId);
        }
        Lesson lesson = LessonDocument.read(file);
        TakenIn taken = ledger.takeIn(lesson, judge.apply(lesson), playerId);
        if (taken instanceof TakenIn.New added) {
            noteClips(
                    added.lessonId(),
                    lesson,
                    Objects.requireNonNull(file.toAbsolutePath().getParent()));
        }
        return taken;
    }

    /** A clip beside the document is known by its content from now on; one that is missing does not matter. */
    private void noteClips(int lessonId, Lesson lesson, Path folder) throws LedgerException {
        for (Take take : ledger.takes(lessonId)) {
            try {
                Path clip = folder.resolve(take.path());
                if (Files.isRegularFile(clip)) {
                    ledger.noteClip(lessonId, take.view(), Fingerprint.of(clip));
                }
            } catch (IOException | IllegalArgumentException e) {
                // a clip that cannot be read now, or a name no file can have, is a missing clip
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
            throw new DocumentException(file + ": could not be taken in ("
                    + e.getClass().getSimpleName() + ": " + e.getMessage() + "); nothing of it was kept");
        }
    }

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
            taken = ledger.takeIn(contents.lesson(), findings, playerId);
        } catch (IOException | LedgerException e) {
            for (Fingerprint fingerprint : copied) {
                media.drop(fingerprint);
            }
            throw e;
        }
        if (taken instanceof TakenIn.New added) {
            for (Map.Entry<View, Fingerprint> clip : contents.fingerprints().entrySet()) {
                ledger.noteClip(added.lessonId(), clip.getKey(), clip.getValue());
            }
            Path stills = Stills.folder(files, added.lessonId());
            for (Path still : contents.stills()) {
                Files.createDirectories(stills);
                Files.move(still, stills.resolve(still.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        return taken;
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
