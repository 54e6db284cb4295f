package org.toeline.across;

import java.util.List;
import java.util.Optional;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Range;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Verdict;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.StatedFinding.Place;
import org.toeline.ledger.store.rows.StatedFinding.StatedRange;
import org.toeline.reading.Reading;

/** An assessment's findings as the ledger keeps them: in the units a person reads, with the ranges as they are now. */
public final class StatedFindings {

    private StatedFindings() {}

    /** Nothing of marks that contradict each other or that nobody has accepted. A pure function; any thread. */
    public static List<StatedFinding> of(Assessment assessment) {
        Optional<Finding> first = assessment.advice().first().map(f -> f.finding());
        if (assessment.advice().withheld().isPresent()) {
            return List.of();
        }
        return assessment.advice().findings().stream()
                .filter(f -> !f.isDraft())
                .map(f -> stated(
                        f, first.filter(g -> g.kind() == f.kind()).isPresent() ? Place.FIRST : Place.ONE_OF_MANY))
                .toList();
    }

    /** The findings of a lesson by the ranges that come with the program. */
    public static List<StatedFinding> of(Lesson lesson) {
        return of(Assessment.of(lesson.sheet()));
    }

    /** The findings of a lesson by other ranges. */
    public static List<StatedFinding> of(Lesson lesson, RangeBook ranges) {
        return of(Assessment.of(lesson.sheet(), ranges));
    }

    private static StatedFinding stated(Finding finding, Place place) {
        Reading reading = finding.reading();
        return new StatedFinding(
                reading.kind().id(),
                reading.shownValue(),
                reading.shownStandardUncertainty(),
                reading.shownLow(),
                reading.shownHigh(),
                reading.kind().unit().id(),
                finding.range().map(StatedFindings::range),
                finding.verdict().filter(v -> v != Verdict.NOT_FOR_CHILDREN).map(Verdict::id),
                place);
    }

    private static StatedRange range(Range range) {
        return new StatedRange(
                range.shownLow(),
                range.shownHigh(),
                range.shownAim(),
                range.provenance().id());
    }
}
