package org.toeline.ledger.store.rows;

import org.toeline.ledger.Lesson;

/**
 * A lesson that could not be saved over another bay's change, kept beside it until somebody has looked.
 *
 * @param baseVersion the version it was made from
 */
public record Aside(int id, int lessonId, int baseVersion, Lesson lesson, String keptAt, String keptBy) {}
