package org.toeline.desk.records;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.WeakHashMap;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.toeline.across.StatedFindings;
import org.toeline.advice.RangeBook;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Report;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Saved;

/** Writes what waits of a lesson on the desk into the ledger, on the ledger's thread; what cannot be written is not given up. */
final class KeepingWriter {

    private static final Logger LOG = Logger.getLogger(KeepingWriter.class.getName());
    /** A server may be back by then. */
    private static final long TRIED_AGAIN_MS = 15_000;

    /** A hand that marks on does not wait this long. */
    private static final long RESTS_MS = 400;

    private final OpenLedger open;
    private final WaitingLessons waiting;
    private final Supplier<RangeBook> ranges;
    private final Records.Listener told;
    private final Set<Keeping> known = Collections.newSetFromMap(new WeakHashMap<>());
    private final Set<Keeping> notKept = new HashSet<>();

    /** @param told on the JavaFX thread: of a lesson's first writing, and of another bay's change */
    KeepingWriter(OpenLedger open, WaitingLessons waiting, Supplier<RangeBook> ranges, Records.Listener told) {
        this.open = open;
        this.waiting = waiting;
        this.ranges = ranges;
        this.told = told;
    }

    /** The marks at once; the findings when the hand rests. */
    void write(Keeping keeping) {
        known.add(keeping);
        Optional<Lesson> next = keeping.take();
        if (next.isEmpty()) {
            // undone to what is written: nothing waits any more
            kept(keeping);
            return;
        }
        Lesson lesson = next.get();
        Optional<Ledger> ledger = open.ledger();
        if (ledger.isEmpty() || !open.isUsable()) {
            keeping.again(lesson);
            if (open.isOfServer()) {
                waiting.keep(keeping, lesson);
            }
            return;
        }
        try {
            put(ledger.get(), keeping, lesson);
            kept(keeping);
            open.later(() -> state(keeping, lesson), RESTS_MS);
        } catch (LedgerException e) {
            LOG.log(Level.WARNING, "the lesson could not be kept", e);
            keeping.again(lesson);
            notKept.add(keeping);
            open.lasting(
                    Report.Trouble.NOT_KEPT,
                    Texts.of(
                            waiting.keep(keeping, lesson) ? "records.waits-on-disk" : "records.waits", e.getMessage()));
            open.later(() -> write(keeping), TRIED_AGAIN_MS);
        }
    }

    private void kept(Keeping keeping) {
        waiting.done(keeping);
        if (notKept.remove(keeping) && notKept.isEmpty()) {
            open.lasting(Report.Trouble.NOT_KEPT, "");
            open.tell(Texts.of("records.kept-again"));
        }
    }

    /**
     * A lesson that was on the desk is opened again. What still waits of it is written by the one that goes, and nothing later: else
     * the one that comes would find it changed by another, which is the desk itself.
     *
     * @param opened as it was read
     */
    void follow(Keeping keeping, Keeping before, Lesson opened) {
        Optional<Ledger> ledger = open.ledger();
        if (ledger.isEmpty() || !before.lessonId().equals(keeping.lessonId())) {
            return;
        }
        write(before);
        before.stated(before.version());
        try {
            ledger.get()
                    .lesson(keeping.lessonId().orElseThrow())
                    .filter(now -> now.lesson().equals(opened))
                    .ifPresent(keeping::as);
        } catch (LedgerException e) {
            LOG.log(Level.WARNING, "the lesson could not be looked at again", e);
        }
    }

    /** States what was found in what was written last; nothing when something was written since. */
    void state(Keeping keeping, Lesson lesson) {
        Optional<Ledger> ledger = open.ledger();
        if (ledger.isEmpty() || !keeping.isWritten(lesson)) {
            return;
        }
        try {
            if (ledger.get()
                            .save(
                                    keeping.lessonId().orElseThrow(),
                                    keeping.version(),
                                    lesson,
                                    StatedFindings.of(lesson, ranges.get()))
                    instanceof Saved.Done done) {
                keeping.stated(done.version());
            }
        } catch (LedgerException e) {
            LOG.log(Level.WARNING, "the findings could not be kept", e);
            open.tell(e.getMessage());
        }
    }

    /**
     * Another ledger comes: numbers mean other lessons there. What can be written of all lessons so far is written, and what cannot is
     * a new one there.
     */
    void finish() {
        for (Keeping keeping : List.copyOf(known)) {
            write(keeping);
            keeping.written().ifPresent(lesson -> state(keeping, lesson));
            keeping.gone();
        }
        known.clear();
    }

    private void put(Ledger into, Keeping keeping, Lesson lesson) throws LedgerException {
        if (keeping.lessonId().isEmpty()) {
            OptionalInt player = keeping.playerId();
            KeptLesson kept =
                    into.begin(lesson, player.isPresent() ? Optional.of(player.getAsInt()) : Optional.empty());
            keeping.added(kept, lesson);
            Platform.runLater(told::changed);
            return;
        }
        Saved saved = into.saveMarks(keeping.lessonId().getAsInt(), keeping.version(), lesson);
        if (saved instanceof Saved.Done done) {
            keeping.saved(done.version(), lesson);
        } else if (saved instanceof Saved.Conflict conflict) {
            beside(into, keeping, conflict);
        } else if (saved instanceof Saved.Gone gone) {
            open.tell(Texts.of("records.kept-as-new", gone.sentence()));
            keeping.gone();
            put(into, keeping, lesson);
        }
    }

    private void beside(Ledger into, Keeping keeping, Saved.Conflict conflict) throws LedgerException {
        OptionalInt before = keeping.aside(conflict.asideId());
        if (before.isPresent()) {
            into.dropAside(before.getAsInt());
        }
        Platform.runLater(() -> told.conflict(conflict));
    }
}
