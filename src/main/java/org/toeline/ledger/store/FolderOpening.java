package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.UnaryOperator;
import javax.sql.DataSource;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.backup.Restore;
import org.toeline.ledger.store.place.Database;
import org.toeline.ledger.store.place.Database.Access;
import org.toeline.ledger.store.place.Faults;
import org.toeline.ledger.store.place.FolderLock;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Presence;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;

/**
 * Opens the ledger of a folder: makes it when there is none, brings its tables up to date, opens it for reading only where
 * nothing can be written, and refuses what is damaged or newer.
 */
final class FolderOpening {

    private static final Sentences SENTENCES = Sentences.of(FolderOpening.class);

    private static final String UNFINISHED = ".ledger-new-";
    /** Up to this size every page is looked at on opening; larger files are checked when they are backed up, and on request. */
    static final long CHECKED_ON_OPENING_BYTES = 4L << 20;

    private final LedgerPlace.Folder place;
    private final UnaryOperator<DataSource> through;

    /** @param through what connections pass through; nothing, but in tests */
    FolderOpening(LedgerPlace.Folder place, UnaryOperator<DataSource> through) {
        this.place = place;
        this.through = through;
    }

    Database open() throws LedgerException {
        try {
            if (!Files.isDirectory(place.folder())) {
                Files.createDirectories(place.folder());
            }
            Path file = place.file();
            if (!Files.isWritable(place.folder()) || Files.exists(file) && !Files.isWritable(file)) {
                return openReadOnly(file);
            }
            try (FolderLock lock = FolderLock.take(place.folder())) {
                sweep();
                Restore.finish(place);
                if (Files.exists(file)) {
                    update(file);
                } else {
                    make(file);
                }
                return new Database(
                        place, through.apply(Sources.writable(file)), Access.WRITE, Presence.announce(place.folder()));
            }
        } catch (IOException e) {
            throw cannot(e);
        }
    }

    private LedgerException cannot(IOException e) {
        return new LedgerException(
                Faults.isFull(place) ? Fault.FULL : Fault.READ_ONLY,
                SENTENCES.of("opening.folder", place.folder(), e.getClass().getSimpleName() + ": " + e.getMessage()),
                e);
    }

    private LedgerException damaged(String how) {
        Optional<Path> backup = Backups.newest(place);
        return new LedgerException(
                Fault.DAMAGED,
                backup.isPresent()
                        ? SENTENCES.of("opening.damaged-newest", place.file(), how, backup.get())
                        : SENTENCES.of("opening.damaged-none", place.file(), how, place.backups()),
                backup);
    }

    /** What a program left that was stopped while it made a ledger. */
    private void sweep() throws IOException {
        Presence.programs(place.folder());
        try (DirectoryStream<Path> left = Files.newDirectoryStream(place.folder(), UNFINISHED + "*")) {
            for (Path path : left) {
                Files.delete(path);
            }
        }
    }

    /** Made beside its place and moved there when whole: a file that is there was whole once. */
    private void make(Path file) throws IOException, LedgerException {
        Optional<Path> backup = Backups.newest(place);
        if (backup.isPresent()) {
            throw new LedgerException(Fault.MISSING, SENTENCES.of("opening.missing", file, backup.get()), backup);
        }
        Path beside = file.resolveSibling(UNFINISHED + UUID.randomUUID() + ".db");
        try {
            Schema.migrate(through.apply(Sources.writable(beside)), place);
            WholeFile.putInPlace(beside, file);
        } finally {
            sweep();
        }
    }

    private void update(Path file) throws IOException, LedgerException {
        Optional<String> fault = LedgerFile.plainFault(file);
        if (fault.isPresent()) {
            throw damaged(fault.get());
        }
        DataSource source = through.apply(Sources.writable(file));
        OptionalInt version;
        try {
            version = Schema.version(source);
        } catch (SQLException e) {
            throw reported(e);
        }
        if (version.isEmpty()) {
            throw damaged(SENTENCES.of("file.no-tables"));
        }
        Schema.requireKnown(version, place.name());
        if (version.getAsInt() < Schema.LATEST) {
            Restore.requireAlone(place, SENTENCES.of("opening.alone"));
            Backups.beforeUpdate(place, source);
            Schema.migrate(source, place);
        } else if (Files.size(file) <= CHECKED_ON_OPENING_BYTES) {
            Optional<String> inside = LedgerFile.thoroughFault(source);
            if (inside.isPresent()) {
                throw damaged(inside.get());
            }
        }
    }

    private LedgerException reported(SQLException e) {
        return Faults.fault(e) == Fault.DAMAGED || Faults.fault(e) == Fault.OTHER
                ? damaged(Faults.reason(e))
                : Faults.of(e, SENTENCES.of("cannot.open-ledger"), place);
    }

    /** Commits that wait in a log cannot be read where nothing may be written: then a copy is opened. */
    private Database openReadOnly(Path file) throws IOException, LedgerException {
        if (!Files.exists(file)) {
            throw new LedgerException(Fault.READ_ONLY, SENTENCES.of("opening.nothing-writable", place.folder()));
        }
        Path read = LedgerFile.hasLog(file) ? copy(file) : file;
        Optional<String> fault = LedgerFile.plainFault(read);
        if (fault.isPresent()) {
            throw damaged(fault.get());
        }
        DataSource source = through.apply(read.equals(file) ? Sources.unchanging(read) : Sources.writable(read));
        try {
            OptionalInt version = Schema.version(source);
            Schema.requireKnown(version, place.name());
            if (version.isEmpty()) {
                throw damaged(SENTENCES.of("file.no-tables"));
            }
            if (version.getAsInt() < Schema.LATEST) {
                throw new LedgerException(
                        Fault.READ_ONLY, SENTENCES.of("opening.old", place.file(), version.getAsInt(), Schema.LATEST));
            }
        } catch (SQLException e) {
            throw reported(e);
        }
        return new Database(place, source, Access.READ_ONLY);
    }

    private static Path copy(Path file) throws IOException {
        Path folder = Files.createTempDirectory("toeline-ledger");
        Path copy = Files.copy(file, folder.resolve(file.getFileName()));
        Path log = Files.copy(LedgerFile.log(file), LedgerFile.log(copy));
        copy.toFile().setWritable(true);
        log.toFile().setWritable(true);
        for (Path path : new Path[] {folder, copy, log, LedgerFile.index(copy)}) {
            path.toFile().deleteOnExit();
        }
        return copy;
    }
}
