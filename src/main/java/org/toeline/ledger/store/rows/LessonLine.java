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
        Optional<String> first) {}
