package org.toeline.advice;

import java.util.Optional;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/**
 * A reading judged against its range; a reading without a range for this club is shown and not judged.
 *
 * @param judged the range and the verdict, empty when there is no range
 */
public record Finding(Reading reading, Optional<Judged> judged) {

    /** A range and what became of the reading against it. */
    public record Judged(Range range, Verdict verdict) {}

    public ReadingKind kind() {
        return reading.kind();
    }

    public Optional<Verdict> verdict() {
        return judged.map(Judged::verdict);
    }

    public Optional<Range> range() {
        return judged.map(Judged::range);
    }
}
