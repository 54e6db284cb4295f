package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.io.file.PathUtils;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.backup.ServerBackups;
import org.toeline.ledger.store.place.Database;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.RowSums;
import org.toeline.ledger.store.rows.TakeRows;

/**
 * What is still to be taken away of what was deleted. Each is let go of when it is done; those of a server's ledger that are
 * files stay listed, since every bay has copies of its own to take away when it opens the ledger.
 */
final class Leftovers {

    private static final Sentences SENTENCES = Sentences.of(Leftovers.class);

    static final String CLIP = "clip";
    static final String PICTURES = "pictures";
    /** Pictures under a lesson's number, as they were kept before lessons had an identity. */
    static final String NUMBERED = "numbered";
    /** Free pages and the log. */
    static final String PAGES = "pages";

    static final String BACKUPS = "backups";
    /** Rows that were kept before there were sums. */
    private static final String SEAL = "seal";

    /** The key of what is said where it fails. */
    private static final String NOT_WHOLE = "cannot.take-away";

    /** What came of it. */
    record Done(int clips, List<Path> stillHolding, Optional<String> unfinished) {}

    private record Leftover(int id, String kind, String what) {}

    private final Database database;
    private final LedgerPlace.Folder files;
    private int clips;

    Leftovers(Database database, LedgerPlace.Folder files) {
        this.database = database;
        this.files = files;
    }

    /** Once, after the tables were brought up to date: of what was kept before, there is no sum to compare. */
    static void seal(Database database) throws LedgerException {
        if (database.access() == Database.Access.READ_ONLY) {
            return;
        }
        boolean waiting = listed(database).stream().anyMatch(l -> l.kind.equals(SEAL));
        if (waiting) {
            database.write(SENTENCES.of("cannot.sum"), h -> {
                // another bay that does the same waits here, and finds nothing to do
                if (h.execute("delete from leftover where kind = ?", SEAL) > 0) {
                    new RowSums(h).sealMissing();
                }
                return true;
            });
        }
    }

    Done clear() throws LedgerException {
        Optional<String> unfinished = Optional.empty();
        boolean replaced = false;
        for (Leftover left : listed(database)) {
            try {
                take(left);
                replaced |= left.kind.equals(BACKUPS);
                if (!staysListed(left)) {
                    database.write(
                            SENTENCES.of(NOT_WHOLE), h -> h.execute("delete from leftover where id = ?", left.id));
                }
            } catch (IOException e) {
                unfinished = Optional.of(files.folder() + ": " + e.getClass().getSimpleName() + ": " + e.getMessage());
            } catch (LedgerException e) {
                unfinished = Optional.of(String.valueOf(e.getMessage()));
            }
        }
        return new Done(clips, replaced && unfinished.isEmpty() ? List.of() : holding(), unfinished);
    }

    /** Asked of a bare connection, since it is asked whenever a ledger is opened. */
    private static List<Leftover> listed(Database database) throws LedgerException {
        return database.readPlain(SENTENCES.of(NOT_WHOLE), c -> {
            try (Statement statement = c.createStatement();
                    ResultSet row = statement.executeQuery("select id, kind, what from leftover order by id")) {
                List<Leftover> listed = new ArrayList<>();
                while (row.next()) {
                    listed.add(new Leftover(row.getInt(1), row.getString(2), row.getString(3)));
                }
                return listed;
            }
        });
    }

    private boolean staysListed(Leftover left) {
        return database.place() instanceof LedgerPlace.Server && (left.kind.equals(CLIP) || left.kind.equals(PICTURES));
    }

    private void take(Leftover left) throws IOException, LedgerException {
        switch (left.kind) {
            case CLIP -> clip(left.what);
            case PICTURES -> pictures(left.what);
            case NUMBERED -> {
                if (database.place() instanceof LedgerPlace.Folder) {
                    folder(files.stills().resolve("lesson-" + Integer.parseInt(left.what)));
                }
            }
            case PAGES -> pages();
            case BACKUPS -> backups();
            default ->
                throw new LedgerException(
                        Fault.NEWER,
                        SENTENCES.of("leftovers.newer", database.place().name()));
        }
    }

    private void clip(String sha256) throws IOException, LedgerException {
        if (!database.read(SENTENCES.of(NOT_WHOLE), h -> new TakeRows(h).isUsed(sha256))
                && !isUsedByTheFolder(sha256)) {
            clips += new Media(files.media()).drop(sha256) ? 1 : 0;
        }
    }

    /** A folder that a server's bay uses for its files may hold a ledger of its own. */
    private boolean isUsedByTheFolder(String sha256) throws LedgerException {
        if (database.place() instanceof LedgerPlace.Folder || !Files.exists(files.file())) {
            return false;
        }
        try (Database own = new Database(files, Sources.writable(files.file()), Database.Access.READ_ONLY)) {
            return own.read(SENTENCES.of(NOT_WHOLE), h -> new TakeRows(h).isUsed(sha256));
        }
    }

    /** An archive may have brought the lesson back. */
    private void pictures(String identity) throws IOException, LedgerException {
        if (database.read(
                SENTENCES.of(NOT_WHOLE),
                h -> h.createQuery("select id from lesson where identity = :identity")
                        .bind("identity", identity)
                        .mapTo(Integer.class)
                        .list()
                        .isEmpty())) {
            folder(Stills.folder(files, identity));
        }
    }

    private static void folder(Path folder) throws IOException {
        if (Files.exists(folder)) {
            PathUtils.deleteDirectory(folder);
        }
    }

    /** So that no free page and no log holds what was deleted. */
    private void pages() throws LedgerException {
        boolean server = database.place() instanceof LedgerPlace.Server;
        database.alone(SENTENCES.of("cannot.overwrite"), h -> {
            if (server) {
                h.execute(
                        "vacuum player, player_word, lesson, lesson_document, lesson_word, take, finding, aside, shot");
                return true;
            }
            h.execute("vacuum");
            int busy = h.createQuery("pragma wal_checkpoint(truncate)")
                    .mapTo(Integer.class)
                    .first();
            if (busy != 0) {
                throw new LedgerException(
                        Fault.BUSY,
                        SENTENCES.of("leftovers.read", database.place().name()));
            }
            return true;
        });
    }

    private void backups() throws LedgerException, IOException {
        if (database.place() instanceof LedgerPlace.Server server) {
            ServerBackups all = new ServerBackups(server);
            all.dropAllBut(all.make(files.backups()), files.backups());
            return;
        }
        Backups.dropAllBut(Backups.make(files, Sources.writable(files.file())), files);
        for (Path aside : setAside()) {
            Files.deleteIfExists(aside);
        }
    }

    private List<Path> setAside() throws IOException {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(files.folder(), Backups.SET_ASIDE + "*")) {
            all.forEach(found::add);
        }
        return found;
    }

    /** Copies from before, which hold what was deleted since. */
    private List<Path> holding() throws LedgerException {
        try {
            if (database.place() instanceof LedgerPlace.Server server) {
                return new ServerBackups(server).all(files.backups());
            }
            List<Path> holding = new ArrayList<>(Backups.all(files));
            holding.addAll(setAside());
            return holding;
        } catch (IOException e) {
            throw new LedgerException(Fault.OTHER, SENTENCES.of("leftovers.backups", files.backups()), e);
        }
    }
}
