package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.mark.Handedness;

/** Many bays write a few lessons at once; each adds a letter to the notes, and none may be lost. */
final class Writers {

    private static final int LESSONS = 3;

    private Writers() {}

    /** What the bays did. */
    record Outcome(int kept, int conflicts) {}

    static Outcome run(LedgerPlace place, int bays, int savesEach) throws Exception {
        try (Ledger ledger = Ledger.open(place, "head coach")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
            List<Integer> ids = new ArrayList<>();
            for (int i = 0; i < LESSONS; i++) {
                ids.add(ledger.keep(player.id(), TestLessons.lesson("B. Trial", "n", 600 + i), List.of())
                        .id());
            }
            ExecutorService threads = Executors.newFixedThreadPool(bays);
            try {
                List<Callable<Outcome>> work = new ArrayList<>();
                for (int bay = 0; bay < bays; bay++) {
                    String name = "bay " + bay;
                    work.add(() -> write(place, name, ids, savesEach));
                }
                int conflicts = 0;
                for (Future<Outcome> done : threads.invokeAll(work)) {
                    conflicts += done.get().conflicts;
                }
                check(ledger, ids, bays * savesEach, conflicts);
                return new Outcome(bays * savesEach, conflicts);
            } finally {
                threads.shutdownNow();
            }
        }
    }

    private static Outcome write(LedgerPlace place, String bay, List<Integer> ids, int saves) throws LedgerException {
        int conflicts = 0;
        try (Ledger ledger = Ledger.open(place, bay)) {
            for (int i = 0; i < saves; i++) {
                int id = ids.get(i % ids.size());
                boolean kept = false;
                while (!kept) {
                    KeptLesson now = ledger.lesson(id).orElseThrow();
                    Lesson next = now.lesson().withNotes(now.lesson().notes() + "x");
                    kept = ledger.save(id, now.version(), next, TestLessons.findings(i)) instanceof Saved.Done;
                    conflicts += kept ? 0 : 1;
                }
            }
        }
        return new Outcome(saves, conflicts);
    }

    private static void check(Ledger ledger, List<Integer> ids, int saves, int conflicts) throws LedgerException {
        int letters = 0;
        int versions = 0;
        int asides = 0;
        for (int id : ids) {
            KeptLesson kept = ledger.lesson(id).orElseThrow();
            letters += kept.lesson().notes().length() - 1;
            versions += kept.version() - 1;
            asides += ledger.asides(id).size();
        }
        assertThat(letters).as("no save is lost").isEqualTo(saves);
        assertThat(versions).isEqualTo(saves);
        assertThat(asides).as("every conflict is kept beside").isEqualTo(conflicts);
        assertThat(ledger.check()).isEmpty();
    }
}
