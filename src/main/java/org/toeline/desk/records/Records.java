package org.toeline.desk.records;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.toeline.advice.RangeBook;
import org.toeline.desk.work.Report;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Merged;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.Saved;

/**
 * The lesson on the desk as the ledger has it, and questions to the ledger; answers come back on the JavaFX thread. What waits to
 * be written is written before the desk closes.
 */
public final class Records {

    /** Told when another lesson is on the desk, or the same one under another number or player. */
    public interface Listener {

        void changed();

        /** Another bay changed the lesson on the desk; the desk's own stands beside it until the coach has chosen. */
        default void conflict(Saved.Conflict conflict) {}
    }

    /** A question to the ledger. */
    public interface Question<T> {

        T ask(Ledger ledger) throws Exception;
    }

    private static final Logger LOG = Logger.getLogger(Records.class.getName());
    private final Settings settings;
    private final List<Listener> listeners = new ArrayList<>();
    private final OpenLedger open;
    private final KeepingWriter writer;
    private Keeping current = Keeping.fresh(OptionalInt.empty());

    /**
     * @param ranges what findings are stated by; asked on the ledger's thread
     * @param say    what stays unkept is said there as long as it does
     */
    public Records(Settings settings, Supplier<RangeBook> ranges, Report say) {
        this.settings = settings;
        WaitingLessons waiting = new WaitingLessons(settings.folder());
        this.open = new OpenLedger(settings, waiting, say, this::changed);
        this.writer = new KeepingWriter(open, waiting, ranges, new Listener() {
            @Override
            public void changed() {
                Records.this.changed();
            }

            @Override
            public void conflict(Saved.Conflict conflict) {
                List.copyOf(listeners).forEach(l -> l.conflict(conflict));
            }
        });
    }

    public Settings settings() {
        return settings;
    }

    public void listen(Listener listener) {
        listeners.add(listener);
    }

    private void changed() {
        List.copyOf(listeners).forEach(Listener::changed);
    }

    /** Whether lessons are kept in it: it is open and can be written. */
    public boolean keeps() {
        return open.isUsable();
    }

    /** Whether it could not be opened, or not for writing; false while it is still being opened. */
    public boolean failed() {
        return !open.unusable().isEmpty();
    }

    /** Whether something of the lesson on the desk is not written yet. */
    public boolean waits() {
        return current.waits();
    }

    /** Where the ledger is, as a person reads it. */
    public String place() {
        return settings.place().name();
    }

    /** The number of the lesson on the desk; empty while it is not in the ledger. */
    public OptionalInt lessonId() {
        return current.lessonId();
    }

    /** The identity of the lesson on the desk, under which its pictures are kept; empty while it is not in the ledger. */
    public Optional<String> identity() {
        return current.identity();
    }

    /** Whose lesson is on the desk; empty when nobody was named yet. */
    public OptionalInt playerId() {
        return current.playerId();
    }

    /** Asks the ledger off the interface thread; the answer comes back on it, a failure as a sentence. */
    public <T> void ask(Question<T> question, Consumer<T> then) {
        open.inTurn(() -> {
            Optional<Ledger> ledger = open.ledger();
            if (ledger.isEmpty()) {
                open.tell(open.unusable());
                return;
            }
            try {
                T answer = question.ask(ledger.get());
                Platform.runLater(() -> then.accept(answer));
            } catch (Exception e) {
                LOG.log(Level.WARNING, "the ledger was asked in vain", e);
                open.tell(String.valueOf(e.getMessage()));
            }
        });
    }

    /** The lesson on the desk is one of the ledger from now on. */
    public void opened(KeptLesson kept) {
        Keeping before = current;
        Keeping keeping = Keeping.of(kept);
        current = keeping;
        open.inTurn(() -> {
            writer.follow(keeping, before, kept.lesson());
            // the desk may not have come to stating them
            writer.state(keeping, kept.lesson());
        });
        changed();
    }

    /** The lesson on the desk is not in the ledger yet; it goes there with its first mark. */
    public void fresh(OptionalInt player) {
        current = Keeping.fresh(player);
        changed();
    }

    /** Keeps the lesson on the desk as it is now. */
    public void keep(Lesson lesson) {
        Keeping keeping = current;
        keeping.next(lesson);
        open.inTurn(() -> writer.write(keeping));
    }

    /** The coach chose the desk's own over what another bay made of the lesson: it is saved over that. */
    public void keepOwn(Saved.Conflict conflict, Lesson own) {
        Keeping keeping = current;
        open.inTurn(() -> {
            keeping.saved(conflict.theirs().version(), conflict.theirs().lesson());
            keeping.next(own);
            writer.write(keeping);
        });
        ask(
                l -> {
                    // what could not be written yet is nowhere else
                    if (!keeping.waits()) {
                        l.dropAside(conflict.asideId());
                    }
                    return true;
                },
                done -> {});
    }

    /** The lesson on the desk is this player's. A player without a name who has no other lesson is forgotten. */
    public void give(Player player, Consumer<Player> then) {
        Keeping keeping = current;
        ask(
                l -> {
                    if (keeping.lessonId().isPresent()) {
                        keeping.givenTo(player.id(), l.give(keeping.lessonId().getAsInt(), player.id()));
                    } else {
                        keeping.givenTo(player.id(), 0);
                    }
                    return player;
                },
                given -> {
                    then.accept(given);
                    changed();
                });
    }

    /** Makes one player of two who are one; a lesson of theirs on the desk stays there, under the one who stays. */
    public void merge(int staysId, int goesId, Consumer<Merged> then) {
        Keeping keeping = current;
        ask(
                l -> {
                    Merged merged = l.merge(staysId, goesId);
                    if (keeping.playerId().equals(OptionalInt.of(goesId))) {
                        int lesson = keeping.lessonId().orElse(0);
                        keeping.givenTo(
                                staysId,
                                Optional.ofNullable(merged.versions().get(lesson))
                                        .orElse(keeping.version()));
                    }
                    return merged;
                },
                merged -> {
                    then.accept(merged);
                    changed();
                });
    }

    /** What is written of a player was changed. */
    public void named(int playerId) {
        if (playerId().equals(OptionalInt.of(playerId))) {
            changed();
        }
    }

    /**
     * Puts a backup in the place of the ledger, which is closed for it and opened again. Nothing of the ledger is on the desk any
     * more when this is asked.
     *
     * @param then is given where the ledger that was there is now
     */
    public void restore(Path backup, Consumer<Optional<Path>> then) {
        open.restore(backup, writer::finish, then, this::changed);
    }

    /** Writes what waits and closes; nothing is asked afterwards. */
    public void close() {
        Keeping keeping = current;
        open.close(() -> {
            writer.write(keeping);
            keeping.written().ifPresent(lesson -> writer.state(keeping, lesson));
        });
    }
}
