package org.toeline.ledger.store.rows;

/** What became of a lesson that was to be taken in. */
public sealed interface TakenIn {

    int lessonId();

    /** It is kept now. */
    record New(int lessonId, int playerId) implements TakenIn {}

    /** The very same document was taken in before, whatever was done to it since; nothing was written. */
    record Already(int lessonId) implements TakenIn {}
}
