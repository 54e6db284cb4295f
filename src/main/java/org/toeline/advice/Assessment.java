package org.toeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * Everything that follows from a mark sheet.
 *
 * @param posture  from all marks, those too that nobody has accepted yet
 * @param readings one for each finding, in the same order
 */
public record Assessment(MarkSheet sheet, Posture posture, List<Reading> readings, Advice advice) {

    public Assessment {
        readings = List.copyOf(readings);
    }

    /** A pure function; takes some milliseconds, more where the marks contradict each other; any thread. */
    public static Assessment of(MarkSheet sheet, RangeBook ranges, CauseChain causes) {
        Posture posture = PostureEstimator.estimate(sheet);
        if (sheet.isAccepted()) {
            return judged(sheet, posture, Readings.of(posture), posture, sheet, ranges, causes);
        }
        MarkSheet accepted = sheet.onlyAccepted();
        Posture believed = PostureEstimator.estimate(accepted);
        return judged(sheet, posture, mixed(sheet, posture, believed), believed, accepted, ranges, causes);
    }

    private static Assessment judged(
            MarkSheet sheet,
            Posture posture,
            List<Reading> readings,
            Posture believed,
            MarkSheet accepted,
            RangeBook ranges,
            CauseChain causes) {
        List<Finding> findings = readings.stream()
                .map(r -> Judge.finding(r, sheet.club(), ranges, believed.stature()))
                .map(f -> isDraft(f.kind(), sheet) ? f.instead(Verdict.DRAFT) : f)
                .toList();
        Optional<Contradiction> contradiction = Gate.of(accepted, believed);
        Advice advice = contradiction
                .map(c -> Advice.withheld(findings, c))
                .orElseGet(() -> Advice.of(findings, sheet.club(), causes));
        return new Assessment(sheet, posture, readings, advice);
    }

    /** Drafts by all marks, the others by those that were accepted alone: no suggestion has a part in a verdict. */
    private static List<Reading> mixed(MarkSheet sheet, Posture all, Posture believed) {
        List<Reading> readings = new ArrayList<>();
        for (ReadingKind kind : ReadingKind.values()) {
            Readings.of(kind, isDraft(kind, sheet) ? all : believed).ifPresent(readings::add);
        }
        return readings;
    }

    /**
     * Whether a reading waits for somebody to look: at a mark of its own in some view, or at the rods of a view of which nobody
     * has accepted one, since they alone would tell where its camera is. Other suggestions take no part in it.
     */
    private static boolean isDraft(ReadingKind kind, MarkSheet sheet) {
        return sheet.views().stream().anyMatch(v -> suggestsOneOf(kind, v) || hasOnlySuggestedRods(v));
    }

    private static boolean suggestsOneOf(ReadingKind kind, ViewMarks v) {
        return kind.needsBall()
                        && v.ball()
                                .filter(b -> b.origin() == Mark.Origin.SUGGESTED)
                                .isPresent()
                || v.marks().stream()
                        .anyMatch(m -> m.origin() == Mark.Origin.SUGGESTED
                                && kind.landmarks().contains(m.landmark()));
    }

    private static boolean hasOnlySuggestedRods(ViewMarks v) {
        return !v.floorMarks().isEmpty() && v.floorMarks().stream().allMatch(f -> f.origin() == Mark.Origin.SUGGESTED);
    }

    /** With the causes that come with the program. */
    public static Assessment of(MarkSheet sheet, RangeBook ranges) {
        return of(sheet, ranges, CauseChain.shipped());
    }

    /** With the ranges and causes that come with the program. */
    public static Assessment of(MarkSheet sheet) {
        return of(sheet, RangeBook.shipped(), CauseChain.shipped());
    }
}
