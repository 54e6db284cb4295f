package org.toeline.ledger.store.rows;

import java.util.Optional;

/**
 * A lesson as a list shows it.
 *
 * @param recorded ISO 8601 with offset, as the document states it
 * @param first    the id of the reading that was to be changed first
 */
public record LessonLine(
        int id,
        int playerId,
        Optional<String> playerName,
        Optional<String> recorded,
        String club,
        String place,
        String notes,
        Optional<String> first,
        Judged judged) {

    /** Whether any of its findings was judged: where none was, nothing can be said to be in order. */
    public enum Judged {
        YES,
        NOT_YET,
        /** Its rows are not what was written, and nothing of them is shown. */
        DAMAGED
    }

    static LessonLine damaged(int id, int playerId) {
        return new LessonLine(
                id, playerId, Optional.empty(), Optional.empty(), "", "", "", Optional.empty(), Judged.DAMAGED);
    }
}
