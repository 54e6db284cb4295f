package org.toeline.ledger.store;

import java.util.List;
import java.util.Optional;

/**
 * The findings of one lesson, for comparing it with others of the player.
 *
 * @param day the day by the lesson's own offset, ISO 8601; lessons of one day with one club are the same setup addressed again
 */
public record LessonFindings(int lessonId, Optional<String> recorded, Optional<String> day, List<StatedFinding> findings) {

    public LessonFindings {
        findings = List.copyOf(findings);
    }
}
