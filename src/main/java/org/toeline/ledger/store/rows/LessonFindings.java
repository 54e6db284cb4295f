package org.toeline.ledger.store.rows;

import java.util.List;
import java.util.Optional;

/**
 * The findings of one lesson, for comparing it with others of the player.
 *
 * @param setup lessons with one name, not empty, are one setup addressed again
 */
public record LessonFindings(int lessonId, Optional<String> recorded, String setup, List<StatedFinding> findings) {

    public LessonFindings {
        findings = List.copyOf(findings);
    }
}
