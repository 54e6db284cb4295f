package org.toeline.ledger.store.rows;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** Who changes something, and when by their clock. The time is shown; nothing is ordered by it. */
public record Stamp(String bay, Clock clock) {

    /** ISO 8601 with offset, to the second. */
    String now() {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS));
    }
}
