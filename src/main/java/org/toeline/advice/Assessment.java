package org.toeline.advice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.mark.Landmark;
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

    /** Whether a reading rests on a mark that nobody has accepted: on one of its own, or on what tells where a camera is. */
    private static boolean isDraft(ReadingKind kind, MarkSheet sheet) {
        Set<Landmark> suggested = EnumSet.noneOf(Landmark.class);
        boolean others = false;
        for (ViewMarks v : sheet.views()) {
            v.marks().stream()
                    .filter(m -> m.origin() == Mark.Origin.SUGGESTED)
                    .forEach(m -> suggested.add(m.landmark()));
            others |= !v.withoutMarks().isAccepted();
        }
        return others || kind.landmarks().stream().anyMatch(suggested::contains);
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
