package org.toeline.desk.records;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.rows.KeptLesson;

/**
 * How one lesson on the desk is kept: under which number and version, and what of it is still to be written. All but
 * {@link #next} is read and changed on the thread that writes; numbers may be read on any.
 */
final class Keeping {

    private final AtomicReference<@Nullable Lesson> waiting = new AtomicReference<>();
    private volatile int lessonId;
    private volatile int playerId;
    private volatile String identity = "";
    private int version;
    private @Nullable Lesson written;
    private boolean stated;
    private OptionalInt aside = OptionalInt.empty();

    private Keeping(int lessonId, int version, int playerId, @Nullable Lesson written) {
        this.lessonId = lessonId;
        this.version = version;
        this.playerId = playerId;
        this.written = written;
    }

    /** A lesson that is not in the ledger yet; whose it is may be known. */
    static Keeping fresh(OptionalInt player) {
        return new Keeping(0, 0, player.orElse(0), null);
    }

    static Keeping of(KeptLesson kept) {
        Keeping keeping = new Keeping(kept.id(), kept.version(), kept.playerId(), kept.lesson());
        keeping.identity = kept.identity();
        keeping.as(kept);
        return keeping;
    }

    /** The lesson is the same in the ledger, under this version. */
    void as(KeptLesson kept) {
        version = kept.version();
        stated = !kept.findings().isEmpty();
    }

    /** What is to be written next; a later one takes the place of an earlier one that waits. Any thread. */
    void next(Lesson lesson) {
        waiting.set(lesson);
    }

    /** It could not be written and waits again, unless something newer does. Any thread. */
    void again(Lesson lesson) {
        waiting.compareAndSet(null, lesson);
    }

    /** Whether something waits to be written. Any thread. */
    boolean waits() {
        return waiting.get() != null;
    }

    /** What is to be written and was not yet. */
    Optional<Lesson> take() {
        Lesson next = waiting.getAndSet(null);
        return Optional.ofNullable(next).filter(l -> !l.equals(written));
    }

    /** What was written and has no findings yet. */
    Optional<Lesson> written() {
        return Optional.ofNullable(stated ? null : written);
    }

    /** Whether this was written last and nothing waits; findings of anything else would be stale. */
    boolean isWritten(Lesson lesson) {
        return waiting.get() == null && lesson.equals(written) && !stated && aside.isEmpty();
    }

    void stated(int asVersion) {
        version = asVersion;
        stated = true;
    }

    OptionalInt lessonId() {
        return lessonId == 0 ? OptionalInt.empty() : OptionalInt.of(lessonId);
    }

    OptionalInt playerId() {
        return playerId == 0 ? OptionalInt.empty() : OptionalInt.of(playerId);
    }

    /** Empty while it is not in the ledger. */
    Optional<String> identity() {
        return Optional.of(identity).filter(i -> !i.isEmpty());
    }

    int version() {
        return version;
    }

    /** @param lesson as the desk has it: what comes back from the ledger may differ in what it does not know */
    void added(KeptLesson kept, Lesson lesson) {
        lessonId = kept.id();
        identity = kept.identity();
        playerId = kept.playerId();
        version = kept.version();
        written = lesson;
        stated = !kept.findings().isEmpty();
    }

    void saved(int asVersion, Lesson lesson) {
        version = asVersion;
        written = lesson;
        stated = false;
        aside = OptionalInt.empty();
    }

    void givenTo(int player, int asVersion) {
        playerId = player;
        version = asVersion;
    }

    /** It stands beside another bay's; the number under which it did before, to be dropped. */
    OptionalInt aside(int id) {
        OptionalInt before = aside;
        aside = OptionalInt.of(id);
        return before;
    }

    /** It is not in the ledger any more: what is written next is written as a new lesson. */
    void gone() {
        lessonId = 0;
        identity = "";
        playerId = 0;
        written = null;
    }
}
