package org.toeline.assist.learn;

import java.util.List;
import org.toeline.assist.LandmarkSuggester;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/** A coach's corrections of landmarks in both views, from a few to many. */
public final class SomeCorrections {

    private static final double SPAN_PX = 600;

    private SomeCorrections() {}

    /** Of every landmark that is suggested. */
    public static CorrectionBook all() {
        return of(List.of(Landmark.values()));
    }

    public static CorrectionBook of(List<Landmark> landmarks) {
        CorrectionBook book = CorrectionBook.EMPTY;
        for (View view : View.values()) {
            for (Landmark landmark : landmarks) {
                if (LandmarkSuggester.spread(landmark, view).isPresent()) {
                    book = corrected(book, view, landmark);
                }
            }
        }
        return book;
    }

    private static CorrectionBook corrected(CorrectionBook book, View view, Landmark landmark) {
        double sigma = SPAN_PX * LandmarkSuggester.spread(landmark, view).orElseThrow();
        ImagePoint at = new ImagePoint(900, 500);
        Mark shown = new Mark(landmark, at, sigma, Mark.Origin.SUGGESTED);
        Shown one = new Shown(view, shown, shown, SPAN_PX, Handedness.RIGHT);
        int n = 5 + landmark.ordinal();
        double way = landmark.ordinal() % 2 == 0 ? 0.9 : -0.9;
        CorrectionBook with = one.onto(book, Mark.placed(landmark, at.plus(9 * sigma, 0), 2), Shown.Look.ALONE);
        for (int i = 0; i < n; i++) {
            ImagePoint to = at.plus(way * sigma, 0.1 * (i % 5) * sigma);
            with = one.onto(with, Mark.placed(landmark, to, 2), Shown.Look.OTHERWISE);
        }
        return one.onto(with, Mark.placed(landmark, at, 2), Shown.Look.ALONE);
    }
}
