package org.toeline.desk.players;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.toeline.ledger.store.rows.LessonLine;

/** Lessons by when they took place, the latest first; those without a date last, by when they were put into the ledger. */
final class RecentFirst {

    private static final Comparator<LessonLine> ORDER = Comparator.comparing((LessonLine line) ->
                    when(line).map(OffsetDateTime::toEpochSecond).orElse(Long.MIN_VALUE))
            .thenComparing(LessonLine::id)
            .reversed();

    private RecentFirst() {}

    static List<LessonLine> of(List<LessonLine> lines) {
        return lines.stream().sorted(ORDER).toList();
    }

    private static Optional<OffsetDateTime> when(LessonLine line) {
        try {
            return line.recorded().map(OffsetDateTime::parse);
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
