package org.toeline.ledger.store.backup;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.stream.Collectors;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.FolderLock;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Presence;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;

/**
 * Puts a backup in the ledger's place. What was there is copied aside first; then a journal of one line says that the new file counts,
 * and from there on every start brings the change to its end: killed at any step, there is the old ledger or the new one.
 */
public final class Restore {

    private static final Sentences SENTENCES = Sentences.of(Restore.class);

    private static final String JOURNAL = ".restoring";
    private static final String NEW = ".ledger-restored-";

    private Restore() {}

    /**
     * Needs the ledger to itself.
     *
     * @return where the ledger that was there is now, if there was one
     */
    public static Optional<Path> put(Path backup, LedgerPlace.Folder place) throws LedgerException {
        requireBackup(backup);
        try {
            Files.createDirectories(place.folder());
            try (FolderLock lock = FolderLock.take(place.folder())) {
                requireAlone(place, SENTENCES.of("restore.not-done"));
                finish(place);
                Path beside = place.folder().resolve(NEW + UUID.randomUUID() + ".db");
                Files.copy(backup, beside);
                force(beside);
                Optional<Path> aside = copyAside(place);
                WholeFile.write(
                        place.folder().resolve(JOURNAL),
                        beside.getFileName().toString().getBytes(StandardCharsets.US_ASCII));
                finish(place);
                return aside;
            }
        } catch (IOException e) {
            throw new LedgerException(
                    Fault.OTHER,
                    SENTENCES.of(
                            "restore.not-put",
                            place.file(),
                            e.getClass().getSimpleName() + ": " + e.getMessage(),
                            backup),
                    e);
        }
    }

    private static void requireBackup(Path backup) throws LedgerException {
        try {
            Optional<String> fault = Files.isRegularFile(backup)
                    ? LedgerFile.plainFault(backup).or(() -> Backups.fault(backup))
                    : Optional.of(SENTENCES.of("file.none"));
            if (fault.isPresent()) {
                throw new LedgerException(Fault.UNKNOWN, SENTENCES.of("restore.no-backup", backup, fault.get()));
            }
            OptionalInt version = Schema.version(Sources.unchanging(backup));
            Schema.requireKnown(version, backup.toString());
        } catch (IOException | java.sql.SQLException e) {
            throw new LedgerException(
                    Fault.UNKNOWN, SENTENCES.of("restore.unreadable", backup, String.valueOf(e.getMessage())), e);
        }
    }

    /**
     * Refuses while another program has the ledger open; called with the folder's lock held.
     *
     * @param kept what was not done
     */
    public static void requireAlone(LedgerPlace.Folder place, String kept) throws IOException, LedgerException {
        List<Long> programs = Presence.programs(place.folder());
        if (!programs.isEmpty()) {
            throw new LedgerException(
                    Fault.BUSY,
                    SENTENCES.of(
                            "restore.open",
                            place.file(),
                            programs.stream().map(String::valueOf).collect(Collectors.joining(", ")),
                            kept));
        }
    }

    private static Optional<Path> copyAside(LedgerPlace.Folder place) throws IOException {
        Path file = place.file();
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        Path aside = place.folder().resolve(Backups.SET_ASIDE + UUID.randomUUID() + ".db");
        Path log = LedgerFile.log(file);
        if (Files.exists(log)) {
            Files.copy(log, LedgerFile.log(aside));
            force(LedgerFile.log(aside));
        }
        Files.copy(file, aside);
        force(aside);
        return Optional.of(aside);
    }

    /** Goes on with a restore that was stopped, or sweeps away what it left; called with the folder's lock held. */
    public static void finish(LedgerPlace.Folder place) throws IOException {
        Path journal = place.folder().resolve(JOURNAL);
        if (Files.exists(journal)) {
            Path beside = place.folder()
                    .resolve(
                            Files.readString(journal, StandardCharsets.US_ASCII).strip());
            if (Files.exists(beside)) {
                // the log is the old file's: it goes before the new file comes, and may never meet it
                Files.deleteIfExists(LedgerFile.log(place.file()));
                Files.deleteIfExists(LedgerFile.index(place.file()));
                WholeFile.putInPlace(beside, place.file());
            }
            Files.delete(journal);
        }
        try (DirectoryStream<Path> left = Files.newDirectoryStream(place.folder(), NEW + "*")) {
            for (Path path : left) {
                Files.delete(path);
            }
        }
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }
}
