package org.toeline.ledger.store.rows;

import org.toeline.language.Sentences;

/** What became of a lesson that was to be saved. */
public sealed interface Saved {

    /** It is kept; the next save must name this version. */
    record Done(int version) implements Saved {}

    /**
     * Somebody else changed it meanwhile. Theirs stands; the one that was to be saved is kept beside it.
     *
     * @param asideId the number under which the ledger's asides has it
     */
    record Conflict(KeptLesson theirs, int asideId) implements Saved {

        public String sentence() {
            return Sentences.of(Saved.class).of("saved.conflict", theirs.changedBy(), theirs.changedAtTime());
        }
    }

    /** Somebody else deleted it meanwhile; nothing was written, and the caller still has it. */
    record Gone(int lessonId) implements Saved {

        public String sentence() {
            return Sentences.of(Saved.class).of("saved.gone", lessonId);
        }
    }
}
