package org.toeline.desk.records;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Report;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** The ledger of the settings, and the one thread on which everything happens to it, in the order it was asked for. */
final class OpenLedger {

    private static final Logger LOG = Logger.getLogger(OpenLedger.class.getName());
    private static final long CLOSING_S = 20;

    private final Settings settings;
    private final WaitingLessons waiting;
    private final Report say;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(r -> {
        Thread t = new Thread(r, "ledger");
        t.setDaemon(true);
        return t;
    });
    private @Nullable Ledger ledger;
    private volatile boolean usable;
    private volatile String unusable = "";

    /**
     * @param waiting what is put into it once it is open
     * @param say     takes sentences on the JavaFX thread
     * @param opened  done on the JavaFX thread when it is open, or is known not to open
     */
    OpenLedger(Settings settings, WaitingLessons waiting, Report say, Runnable opened) {
        this.settings = settings;
        this.waiting = waiting;
        this.say = say;
        inTurn(() -> open(opened));
    }

    private void open(Runnable then) {
        try {
            Ledger opened = Ledger.open(settings.place(), settings.bay());
            ledger = opened;
            if (opened.place() instanceof LedgerPlace.Server) {
                opened.finishDeletions(settings.folder());
            }
            usable = !opened.isReadOnly();
            if (usable) {
                lasting(Report.Trouble.NO_LEDGER, "");
                takeUp(opened);
            } else {
                unusable = opened.limits()
                        .map(limits ->
                                Texts.of("records.not-allowed", opened.place().name(), limits))
                        .orElseGet(() ->
                                Texts.of("records.read-only", opened.place().name()));
                lasting(Report.Trouble.NO_LEDGER, unusable);
            }
        } catch (LedgerException e) {
            unusable = e.getMessage();
            lasting(Report.Trouble.NO_LEDGER, Texts.of("records.not-opened", unusable));
        } catch (RuntimeException | Error e) {
            // whatever stands in the way, nothing may wait for it without a word
            LOG.log(Level.WARNING, "the ledger was not opened", e);
            unusable = e.toString();
            lasting(Report.Trouble.NO_LEDGER, Texts.of("records.not-opened", unusable));
        }
        Platform.runLater(then);
        inTurn(this::warm);
    }

    /**
     * Puts a backup in the place of the folder's ledger, which is closed for it and opened again, whatever came of it.
     *
     * @param last  done before it is closed
     * @param then  done on the JavaFX thread with where the ledger that was there is now; not where it could not be done
     * @param after done on the JavaFX thread once a ledger is open again, or is known not to open
     */
    void restore(Path backup, Runnable last, Consumer<Optional<Path>> then, Runnable after) {
        inTurn(() -> {
            last.run();
            ledger().ifPresent(Ledger::close);
            ledger = null;
            usable = false;
            unusable = "";
            Optional<Optional<Path>> aside = Optional.empty();
            try {
                aside = Optional.of(Ledger.restore(settings.folder(), backup));
            } catch (LedgerException e) {
                LOG.log(Level.WARNING, "a backup was not put in place", e);
                tell(e.getMessage());
            }
            open(after);
            aside.ifPresent(where -> Platform.runLater(() -> then.accept(where)));
        });
    }

    /** What a server or a disk refused when the desk was open last. */
    private void takeUp(Ledger opened) throws LedgerException {
        int taken = waiting.takeUp(opened);
        if (taken > 0) {
            tell(Texts.of("records.taken-up", taken));
        }
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

    void tell(String sentence) {
        Platform.runLater(() -> say.accept(sentence));
    }

    /** @param sentence empty when it is over */
    void lasting(Report.Trouble trouble, String sentence) {
        Platform.runLater(() -> say.lasting(trouble, sentence));
    }

    boolean isOfServer() {
        return settings.server().isPresent();
    }

    /** Open, and can be written. */
    boolean isUsable() {
        return usable;
    }

    /** Why it cannot be written or was not opened; empty where it can, or while it is being opened. */
    String unusable() {
        return unusable;
    }

    /** The ledger; empty where it could not be opened. Asked on its own thread. */
    Optional<Ledger> ledger() {
        return Optional.ofNullable(ledger);
    }

    /** In the order it was asked for; nothing once it is closed. */
    void inTurn(Runnable work) {
        if (!thread.isShutdown()) {
            thread.execute(() -> told(work));
        }
    }

    void later(Runnable work, long delayMs) {
        if (!thread.isShutdown()) {
            thread.schedule(() -> told(work), delayMs, TimeUnit.MILLISECONDS);
        }
    }

    /** A thread that takes its work from a queue of times keeps to itself what its work throws. */
    private void told(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException | Error e) {
            LOG.log(Level.WARNING, "what was asked of the ledger failed", e);
            tell(Texts.of("work.failed", e));
        }
    }

    /** The last that is done, then it is closed. */
    void close(Runnable last) {
        thread.execute(() -> {
            told(last);
            ledger().ifPresent(Ledger::close);
            ledger = null;
        });
        thread.shutdown();
        try {
            if (!thread.awaitTermination(CLOSING_S, TimeUnit.SECONDS)) {
                LOG.log(Level.WARNING, "the ledger did not finish in {0} s", CLOSING_S);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
