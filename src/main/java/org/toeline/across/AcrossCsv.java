package org.toeline.across;

import java.util.Optional;
import org.toeline.ledger.store.exchange.ReadingsCsv;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.StatedFinding.StatedRange;

/**
 * What changed across lessons as a table, a reading of a lesson a row, written as {@link ReadingsCsv} is. Figures are in
 * {@code unit} and as they were stated that day; the row of the later of the two compared lessons has the change too, and a
 * reading's last row its trend.
 */
public final class AcrossCsv {

    private static final String HEAD =
            "reading,unit,lesson,recorded,setup,value,u,low,high,range_low,range_high,range_aim,provenance,verdict,compared,change,change_u,smallest_detectable,call,own_spread,trend_per_lesson,trend_u,trend_call\r\n";

    private final Comparison comparison;
    private final StringBuilder out = new StringBuilder(HEAD);

    private AcrossCsv(Comparison comparison) {
        this.comparison = comparison;
    }

    /** A pure function; any thread. */
    public static String of(Comparison comparison) {
        AcrossCsv csv = new AcrossCsv(comparison);
        for (Comparison.Row row : comparison.rows()) {
            AcrossLessons across = row.across();
            for (int i = 0; i < across.points().size(); i++) {
                csv.line(
                        row,
                        across.points().get(i),
                        i == across.points().size() - 1 ? across.trend() : Optional.empty());
            }
        }
        return csv.out.toString();
    }

    private void line(Comparison.Row row, AcrossLessons.Point point, Optional<Trend> trend) {
        StatedFinding finding = point.finding();
        LessonFindings lesson = comparison.lessons().get(comparison.indexOf(point.lessonId()));
        boolean later = point.lessonId() == comparison.later();
        String compared = later ? "later" : point.lessonId() == comparison.earlier() ? "earlier" : "";
        Optional<LessonChange> change = row.change().filter(c -> later);
        Optional<StatedRange> range = finding.range();
        text(finding.reading());
        cell(finding.unit());
        out.append(',').append(point.lessonId());
        cell(lesson.recorded().orElse(""));
        cell(lesson.setup());
        number(finding.value());
        number(finding.u());
        number(finding.low());
        number(finding.high());
        number(range.map(StatedRange::low));
        number(range.map(StatedRange::high));
        number(range.map(StatedRange::aim));
        cell(range.map(StatedRange::provenance).orElse(""));
        cell(finding.verdict().orElse(""));
        cell(compared);
        number(change.map(LessonChange::difference));
        number(change.map(LessonChange::standardUncertainty));
        number(change.map(LessonChange::smallestDetectable));
        cell(change.map(c -> c.call().id()).orElse(""));
        number(change.filter(c -> c.spread().isKnown()).map(c -> c.spread().standardDeviation()));
        number(trend.map(Trend::slope));
        number(trend.map(Trend::slopeStandardUncertainty));
        cell(trend.map(t -> t.call().id()).orElse(""));
        out.append("\r\n");
    }

    private void text(String text) {
        out.append(ReadingsCsv.cell(text));
    }

    private void cell(String text) {
        out.append(',');
        text(text);
    }

    private void number(double value) {
        out.append(',').append(value);
    }

    private void number(Optional<Double> value) {
        out.append(',').append(value.map(Object::toString).orElse(""));
    }
}
