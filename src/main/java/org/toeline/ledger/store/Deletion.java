package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.io.file.PathUtils;
import org.jdbi.v3.core.Handle;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.place.Database;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.TakeRows;

/**
 * Deletes for good: rows, the free pages and the log they stood in, copied clips that nobody else uses, stills. Clips that
 * stayed where they were filmed are the coach's own files and stay.
 */
final class Deletion {

    private final Database database;

    Deletion(Database database) {
        this.database = database;
    }

    /** What a deletion takes with it besides the rows. */
    private record Traces(List<Integer> lessons, Set<Fingerprint> clips) {}

    Deleted player(int id, OldBackups backups) throws LedgerException {
        Traces traces = database.write("the player could not be deleted", h -> {
            List<Integer> lessons = h.createQuery("select id from lesson where player_id = :id order by id")
                    .bind("id", id)
                    .mapTo(Integer.class)
                    .list();
            Set<Fingerprint> clips = new LinkedHashSet<>();
            for (int lesson : lessons) {
                clips.addAll(ownClips(h, lesson, id));
            }
            if (h.execute("delete from player where id = ?", id) == 0) {
                throw new LedgerException(
                        Fault.UNKNOWN,
                        database.place().name() + ": there is no player " + id + "; nothing was deleted");
            }
            return new Traces(lessons, clips);
        });
        return finish(traces, backups);
    }

    private static Set<Fingerprint> ownClips(Handle handle, int lessonId, int playerId) {
        TakeRows takes = new TakeRows(handle);
        Set<Fingerprint> own = new LinkedHashSet<>();
        takes.of(lessonId)
                .forEach(take -> take.fingerprint()
                        .filter(f -> !takes.isUsedElsewhere(f.sha256(), playerId))
                        .ifPresent(own::add));
        return own;
    }

    Deleted lesson(int id, OldBackups backups) throws LedgerException {
        Traces traces = database.write("the lesson could not be deleted", h -> {
            Set<Fingerprint> clips = new LinkedHashSet<>();
            TakeRows takes = new TakeRows(h);
            takes.of(id).forEach(t -> t.fingerprint().ifPresent(clips::add));
            if (h.execute("delete from lesson where id = ?", id) == 0) {
                throw new LedgerException(
                        Fault.UNKNOWN,
                        database.place().name() + ": there is no lesson " + id + "; nothing was deleted");
            }
            clips.removeIf(f -> takes.isUsedElsewhere(f.sha256(), -1));
            return new Traces(List.of(id), clips);
        });
        return finish(traces, backups);
    }

    private Deleted finish(Traces traces, OldBackups backups) throws LedgerException {
        overwrite();
        if (!(database.place() instanceof LedgerPlace.Folder folder)) {
            return new Deleted(traces.lessons.size(), 0, List.of());
        }
        try {
            int clips = 0;
            for (Fingerprint clip : traces.clips) {
                clips += new Media(folder.media()).drop(clip) ? 1 : 0;
            }
            for (int lesson : traces.lessons) {
                Path stills = Stills.folder(folder, lesson);
                if (Files.exists(stills)) {
                    PathUtils.deleteDirectory(stills);
                }
            }
            if (backups == OldBackups.REPLACE) {
                Backups.dropAllBut(Backups.make(folder, Sources.writable(folder.file())), folder);
                return new Deleted(traces.lessons.size(), clips, List.of());
            }
            return new Deleted(traces.lessons.size(), clips, Backups.all(folder));
        } catch (IOException e) {
            throw new LedgerException(
                    Fault.OTHER,
                    folder.folder() + ": the rows are deleted, but a file that belonged to them " + "could not be ("
                            + e.getMessage() + "); delete it by hand",
                    e);
        }
    }

    /** So that no free page and no log holds what was deleted. */
    private void overwrite() throws LedgerException {
        boolean server = database.place() instanceof LedgerPlace.Server;
        database.read("it is deleted, but what it left on the disk could not be overwritten", h -> {
            if (server) {
                h.execute(
                        "vacuum player, player_word, lesson, lesson_document, lesson_word, take, finding, aside, shot");
            } else {
                h.execute("vacuum");
                int busy = h.createQuery("pragma wal_checkpoint(truncate)")
                        .mapTo(Integer.class)
                        .first();
                if (busy != 0) {
                    throw new LedgerException(
                            Fault.BUSY,
                            database.place().name() + ": it is deleted, but what it left on the disk could not be"
                                    + " overwritten, since another program reads the ledger; close"
                                    + " that and back up once");
                }
            }
            return true;
        });
    }
}
