package org.toeline.advice;

import java.util.List;
import org.toeline.mark.MarkSheet;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.Readings;

/** Everything that follows from a mark sheet. */
public record Assessment(MarkSheet sheet, Posture posture, List<Reading> readings, Advice advice) {

    public Assessment {
        readings = List.copyOf(readings);
    }

    /** A pure function; takes some milliseconds; any thread. */
    public static Assessment of(MarkSheet sheet, RangeBook ranges, CauseChain causes) {
        Posture posture = PostureEstimator.estimate(sheet);
        List<Reading> readings = Readings.of(posture);
        return new Assessment(sheet, posture, readings, Judge.advise(readings, sheet.club(), ranges, causes));
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
