package org.toeline.ledger.store.rows;

import java.util.List;
import org.toeline.ledger.Lesson;

/**
 * A lesson as the ledger has it.
 *
 * @param id        number, rising in the order of keeping: the order of lessons
 * @param identity its own wherever it goes, which its number is not
 * @param version   rises with every change; what is saved must name the version it was made from
 * @param changedAt ISO 8601 with offset, by the clock of the bay that changed it
 * @param changedBy the bay that changed it last
 */
public record KeptLesson(
        int id,
        String identity,
        int playerId,
        int version,
        Lesson lesson,
        List<StatedFinding> findings,
        String changedAt,
        String changedBy) {

    public KeptLesson {
        findings = List.copyOf(findings);
    }

    /** The time of day of the last change, such as 10:42. */
    String changedAtTime() {
        return changedAt.length() >= 16 ? changedAt.substring(11, 16) : changedAt;
    }
}
