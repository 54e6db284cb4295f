package org.toeline.desk.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import org.toeline.across.StatedFindings;
import org.toeline.advice.RangeBook;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * The open ledger. All of it happens on one thread of its own, in the order it was asked for; answers come back on the
 * JavaFX thread. What waits to be written is written before the desk closes.
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
    private static final long CLOSING_S = 20;
    /** A hand that marks on does not wait this long. */
    private static final long RESTS_MS = 400;

    private final Settings settings;
    private final Supplier<RangeBook> ranges;
    private final Consumer<String> say;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(r -> {
        Thread t = new Thread(r, "ledger");
        t.setDaemon(true);
        return t;
    });
    private final List<Listener> listeners = new ArrayList<>();
    private @Nullable Ledger ledger;
    private volatile boolean usable;
    private volatile String unusable = "";
    private Keeping current = Keeping.fresh(OptionalInt.empty());

    /**
     * @param ranges what findings are stated by; asked on the ledger's thread
     * @param say    takes one sentence for the person, on the JavaFX thread
     */
    public Records(Settings settings, Supplier<RangeBook> ranges, Consumer<String> say) {
        this.settings = settings;
        this.ranges = ranges;
        this.say = say;
        inTurn(this::open);
    }

    private void open() {
        try {
            Ledger opened = Ledger.open(settings.place(), settings.bay());
            ledger = opened;
            usable = !opened.isReadOnly();
            if (!usable) {
                unusable = opened.place().name()
                        + " cannot be written; lessons are kept as documents until the ledger is put "
                        + "where it can be (Settings)";
                tell(unusable);
            }
        } catch (LedgerException e) {
            unusable = e.getMessage()
                    + e.backup().map(b -> "; the newest backup is " + b).orElse("");
            tell("The ledger could not be opened; lessons are kept as documents meanwhile: " + unusable);
        }
        Platform.runLater(this::changed);
        inTurn(this::warm);
    }

    /** What is done for the first time takes its time: not while the coach's first mark waits to be kept. */
    private void warm() {
        if (ledger == null) {
            return;
        }
        try {
            // the list first: it may be asked for already
            ledger.find(Search.RECENT);
            Lesson empty = Lesson.of(
                    MarkSheet.empty(Handedness.RIGHT, Club.DRIVER).withView(ViewMarks.empty(View.FACE_ON, 1920, 1080)));
            ledger.lessonLike(empty);
            if (!ledger.isReadOnly()) {
                ledger.rehearse(empty);
            }
        } catch (LedgerException e) {
            LOG.log(Level.WARNING, "the ledger was opened and could not be read", e);
        }
    }

    /** In the order it was asked for; nothing once the desk is closed. */
    private void inTurn(Runnable work) {
        if (!thread.isShutdown()) {
            thread.execute(work);
        }
    }

    private void tell(String sentence) {
        Platform.runLater(() -> say.accept(sentence));
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
        return usable;
    }

    /** Whether it could not be opened, or not for writing; false while it is still being opened. */
    public boolean failed() {
        return !unusable.isEmpty();
    }

    /** The number of the lesson on the desk; empty while it is not in the ledger. */
    public OptionalInt lessonId() {
        return current.lessonId();
    }

    /** Whose lesson is on the desk; empty when nobody was named yet. */
    public OptionalInt playerId() {
        return current.playerId();
    }

    /** Asks the ledger off the interface thread; the answer comes back on it, a failure as a sentence. */
    public <T> void ask(Question<T> question, Consumer<T> then) {
        inTurn(() -> {
            if (ledger == null) {
                tell(unusable);
                return;
            }
            try {
                T answer = question.ask(ledger);
                Platform.runLater(() -> then.accept(answer));
            } catch (Exception e) {
                LOG.log(Level.WARNING, "the ledger was asked in vain", e);
                tell(String.valueOf(e.getMessage()));
            }
        });
    }

    /** The lesson on the desk is one of the ledger from now on. */
    public void opened(KeptLesson kept) {
        Keeping keeping = Keeping.of(kept);
        current = keeping;
        if (kept.findings().isEmpty()) {
            // the desk did not come to stating them
            inTurn(() -> state(keeping, kept.lesson()));
        }
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
        inTurn(() -> write(keeping));
    }

    /** The marks at once; the findings when the hand rests. */
    private void write(Keeping keeping) {
        if (ledger == null || !usable) {
            return;
        }
        keeping.take().ifPresent(lesson -> {
            try {
                put(Objects.requireNonNull(ledger), keeping, lesson);
                if (!thread.isShutdown()) {
                    thread.schedule(() -> state(keeping, lesson), RESTS_MS, TimeUnit.MILLISECONDS);
                }
            } catch (LedgerException e) {
                LOG.log(Level.WARNING, "the lesson could not be kept", e);
                keeping.next(lesson);
                tell(e.getMessage() + "; what is on the desk stays there and is kept with the next change");
            }
        });
    }

    /** States what was found in what was written last; nothing when something was written since. */
    private void state(Keeping keeping, Lesson lesson) {
        if (ledger == null || !keeping.isWritten(lesson)) {
            return;
        }
        try {
            if (ledger.save(
                            keeping.lessonId().orElseThrow(),
                            keeping.version(),
                            lesson,
                            StatedFindings.of(lesson, ranges.get()))
                    instanceof Saved.Done done) {
                keeping.stated(done.version());
            }
        } catch (LedgerException e) {
            LOG.log(Level.WARNING, "the findings could not be kept", e);
            tell(e.getMessage());
        }
    }

    private void put(Ledger into, Keeping keeping, Lesson lesson) throws LedgerException {
        if (keeping.lessonId().isEmpty()) {
            OptionalInt player = keeping.playerId();
            KeptLesson kept = into.lesson(into.takeIn(
                                    lesson,
                                    List.of(),
                                    player.isPresent() ? Optional.of(player.getAsInt()) : Optional.empty())
                            .lessonId())
                    .orElseThrow();
            keeping.added(kept, lesson);
            Platform.runLater(this::changed);
            return;
        }
        Saved saved = into.saveMarks(keeping.lessonId().getAsInt(), keeping.version(), lesson);
        if (saved instanceof Saved.Done done) {
            keeping.saved(done.version(), lesson);
        } else if (saved instanceof Saved.Conflict conflict) {
            beside(into, keeping, conflict);
        } else if (saved instanceof Saved.Gone gone) {
            tell(gone.sentence() + "; it is kept as a new one");
            keeping.gone();
            put(into, keeping, lesson);
        }
    }

    private void beside(Ledger into, Keeping keeping, Saved.Conflict conflict) throws LedgerException {
        OptionalInt before = keeping.aside(conflict.asideId());
        if (before.isPresent()) {
            into.dropAside(before.getAsInt());
        }
        Platform.runLater(() -> List.copyOf(listeners).forEach(l -> l.conflict(conflict)));
    }

    /** The coach chose the desk's own over what another bay made of the lesson: it is saved over that. */
    public void keepOwn(Saved.Conflict conflict, Lesson own) {
        Keeping keeping = current;
        inTurn(() -> {
            keeping.saved(conflict.theirs().version(), conflict.theirs().lesson());
            keeping.next(own);
            write(keeping);
        });
        ask(
                l -> {
                    l.dropAside(conflict.asideId());
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

    /** What is written of a player was changed. */
    public void named(int playerId) {
        if (playerId().equals(OptionalInt.of(playerId))) {
            changed();
        }
    }

    /** Writes what waits and closes; nothing is asked afterwards. */
    public void close() {
        Keeping keeping = current;
        thread.execute(() -> {
            keeping.written().ifPresent(lesson -> state(keeping, lesson));
            Optional.ofNullable(ledger).ifPresent(Ledger::close);
            ledger = null;
        });
        thread.shutdown();
        try {
            if (!thread.awaitTermination(CLOSING_S, TimeUnit.SECONDS)) {
                LOG.warning("the ledger did not finish in " + CLOSING_S + " s");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
