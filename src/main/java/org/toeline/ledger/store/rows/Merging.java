package org.toeline.ledger.store.rows;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;

/** Makes one player of two who are one person, within one transaction. */
public record Merging(Handle handle, Players players, Lessons lessons, LedgerPlace place) {

    private static final Sentences SENTENCES = Sentences.of(Merging.class);

    /**
     * All lessons of one player become another's, under whose name their documents go from then on. What is written of the one who
     * stays counts; what is missing there is filled from the other, and both notes stand.
     */
    public Merged into(int staysId, int goesId) throws LedgerException {
        if (staysId == goesId) {
            throw refused("merge.same", staysId);
        }
        hold(staysId, goesId);
        Player stays = whole(staysId);
        Player goes = whole(goesId);
        if (stays.details().handedness() != goes.details().handedness()) {
            throw refused("merge.hands", staysId, goesId);
        }
        Player kept = fill(stays, goes.details());
        Map<Integer, Integer> versions = new TreeMap<>();
        for (int id : lessonsOf(goesId)) {
            versions.put(id, lessons.give(id, kept));
        }
        handle.execute("delete from player where id = ?", goesId);
        new RowSums(handle).sweep();
        return new Merged(kept, versions);
    }

    /** Nobody begins a lesson meanwhile, and on a server nobody gives one to either: it would go with the player who goes. */
    private void hold(int... ids) {
        Counter.inTurn(handle);
        if (place instanceof LedgerPlace.Server) {
            for (int id : ids) {
                handle.createQuery("select id from player where id = :id for update")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .list();
            }
        }
    }

    private Player whole(int id) throws LedgerException {
        Player player = players.get(id).orElseThrow(() -> refused("merge.none", id));
        if (!new RowSums(handle).isPlayerWhole(id)) {
            throw new LedgerException(Fault.DAMAGED, SENTENCES.of("merge.damaged", place.name(), id));
        }
        return player;
    }

    private LedgerException refused(String key, Object... ids) {
        Object[] all = new Object[ids.length + 1];
        all[0] = place.name();
        System.arraycopy(ids, 0, all, 1, ids.length);
        return new LedgerException(Fault.UNKNOWN, SENTENCES.of(key, all));
    }

    private Player fill(Player stays, PlayerDetails other) throws LedgerException {
        PlayerDetails details = stays.details().filledFrom(other);
        if (details.equals(stays.details())) {
            return stays;
        }
        players.change(new Player(stays.id(), stays.version(), details));
        if (!details.name().equals(stays.details().name())) {
            lessons.rename(stays.id(), details.name());
        }
        return players.get(stays.id()).orElseThrow();
    }

    private List<Integer> lessonsOf(int player) {
        return handle.createQuery("select id from lesson where player_id = :id order by id")
                .bind("id", player)
                .mapTo(Integer.class)
                .list();
    }
}
