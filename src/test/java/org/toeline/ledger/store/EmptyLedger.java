package org.toeline.ledger.store;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Handedness;

/** An empty ledger for each test, whatever database keeps it. */
abstract class EmptyLedger {

    Ledger ledger;

    /** A ledger on the same empty database for each call within a test. */
    abstract Ledger open(String bay, Clock clock) throws Exception;

    @BeforeEach
    void openOne() throws Exception {
        ledger = open("bay 1", Clock.systemDefaultZone());
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    Player player(String name) throws LedgerException {
        return ledger.addPlayer(PlayerDetails.of(Optional.of(name), Handedness.RIGHT));
    }

    KeptLesson keep(Player player, Lesson lesson) throws LedgerException {
        return ledger.keep(player.id(), lesson, TestLessons.findings(7.4));
    }

    List<Integer> ids(Search search) throws LedgerException {
        return ledger.find(search).stream().map(LessonLine::id).toList();
    }
}
