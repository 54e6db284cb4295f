package org.toeline.ledger.store;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.place.Database;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.Counter;
import org.toeline.ledger.store.rows.RowSums;

/**
 * Deletes for good. With the rows, in one transaction, goes what else is to be taken away into a list of leftovers; those are done
 * one after the other, and what is hindered or killed in between is taken up when the ledger is opened next. Clips that stayed
 * where they were filmed are the coach's own files and stay.
 */
final class Deletion {

    private static final Sentences SENTENCES = Sentences.of(Deletion.class);

    private final Database database;
    private final LedgerPlace.Folder files;

    /** @param files where copied clips, pictures and backups are */
    Deletion(Database database, LedgerPlace.Folder files) {
        this.database = database;
        this.files = files;
    }

    Deleted player(int id, OldBackups backups) throws LedgerException {
        return delete(
                SENTENCES.of("cannot.delete-player"),
                "select id from lesson where player_id = ?",
                "player",
                id,
                backups);
    }

    Deleted lesson(int id, OldBackups backups) throws LedgerException {
        return delete(
                SENTENCES.of("cannot.delete-lesson"), "select id from lesson where id = ?", "lesson", id, backups);
    }

    private Deleted delete(String cannot, String lessonsOf, String what, int id, OldBackups backups)
            throws LedgerException {
        int lessons = database.write(cannot, h -> {
            List<Integer> ids =
                    h.createQuery(lessonsOf).bind(0, id).mapTo(Integer.class).list();
            Set<String> clips = new LinkedHashSet<>();
            for (int lesson : ids) {
                clips.addAll(texts(h, "select sha256 from take where sha256 is not null and lesson_id = ?", lesson));
                for (String identity : texts(h, "select identity from lesson where id = ?", lesson)) {
                    add(h, Leftovers.PICTURES, identity);
                }
                add(h, Leftovers.NUMBERED, Integer.toString(lesson));
            }
            if (h.execute("delete from " + what + " where id = ?", id) == 0) {
                throw new LedgerException(
                        Fault.UNKNOWN,
                        SENTENCES.of("deletion.no-" + what, database.place().name(), id));
            }
            for (String clip : clips) {
                add(h, Leftovers.CLIP, clip);
            }
            add(h, Leftovers.PAGES, "");
            if (backups == OldBackups.REPLACE) {
                add(h, Leftovers.BACKUPS, "");
            }
            new RowSums(h).sweep();
            return ids.size();
        });
        Leftovers.Done done = new Leftovers(database, files).clear();
        return new Deleted(lessons, done.clips(), done.stillHolding(), done.unfinished());
    }

    private static List<String> texts(Handle handle, String sql, int id) {
        return handle.createQuery(sql).bind(0, id).mapTo(String.class).list();
    }

    private static void add(Handle handle, String kind, String what) {
        handle.execute(
                "insert into leftover (id, kind, what) values (?, ?, ?)", Counter.next(handle, "leftover"), kind, what);
    }
}
