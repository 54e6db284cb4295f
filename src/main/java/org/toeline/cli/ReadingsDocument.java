package org.toeline.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.advice.CameraStand;
import org.toeline.advice.Contradiction;
import org.toeline.advice.ContradictionWords;
import org.toeline.advice.Finding;
import org.toeline.advice.Range;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.document.Json;
import org.toeline.mark.View;
import org.toeline.posture.Doubt;
import org.toeline.reading.Reading;

/** The readings of a lesson as a JSON object; its schema is {@code readings.schema.json}. */
final class ReadingsDocument {

    private static final MathContext DIGITS = new MathContext(7);

    private static final Words WORDS = Words.english();

    private ReadingsDocument() {}

    static ObjectNode of(Assessment assessment) {
        ObjectNode out = Json.object();
        out.put("format", "toeline-readings").put("version", 1);
        Advice advice = assessment.advice();
        ArrayNode readings = out.putArray("readings");
        advice.findings().forEach(f -> readings.add(finding(f)));
        if (advice.withheld().isPresent()) {
            Contradiction c = advice.withheld().get();
            ObjectNode withheld = out.putObject("withheld");
            withheld.put("says", new ContradictionWords(WORDS).sentence(c));
            withheld.put("likely", c.likely().id());
            withheld.put("mend", new ContradictionWords(WORDS).mend(c));
        } else if (advice.first().isPresent()) {
            ObjectNode first = out.putObject("first");
            first.put("reading", advice.first().get().finding().kind().id());
            ArrayNode because = first.putArray("because");
            advice.first().get().mayFollow().forEach(kind -> because.add(kind.id()));
        } else {
            out.putNull("first");
        }
        ArrayNode doubtful = out.putArray("doubtful");
        for (Doubt doubt : assessment.posture().doubts()) {
            ObjectNode node = doubtful.addObject();
            node.put("view", doubt.view().id()).put("mark", doubt.mark());
            node.put("offPx", rounded(doubt.offPx()));
            node.put("odds", rounded(doubt.odds())).put("moves", doubt.moves());
        }
        ArrayNode cameras = out.putArray("cameras");
        for (View view : View.values()) {
            CameraStand.of(assessment.posture(), view)
                    .ifPresent(stand -> cameras.addObject()
                            .put("view", view.id())
                            .put("distance", rounded(stand.distanceM()))
                            .put("height", rounded(stand.heightM()))
                            .put("beside", rounded(stand.besideM()))
                            .put("leanDeg", rounded(Math.toDegrees(stand.leanRad()))));
        }
        return out;
    }

    private static ObjectNode finding(Finding finding) {
        Reading reading = finding.reading();
        ObjectNode node = Json.object();
        node.put("reading", reading.kind().id());
        node.put("value", rounded(reading.shownValue()));
        node.put("u", rounded(reading.shownStandardUncertainty()));
        node.put("low", Verdict.rounded(reading.shownLow()));
        node.put("high", Verdict.rounded(reading.shownHigh()));
        node.put("unit", reading.kind().unit().id());
        finding.range().ifPresent(range -> node.set("range", range(range)));
        if (finding.verdict().equals(Optional.of(Verdict.NOT_FOR_CHILDREN))) {
            node.put("notJudged", WORDS.verdict(finding));
        } else {
            finding.verdict().ifPresent(verdict -> node.put("verdict", verdict.id()));
        }
        if (finding.isDraft()) {
            node.put("draft", true);
        }
        node.put("dominatedBy", reading.dominatedBy().id());
        return node;
    }

    private static ObjectNode range(Range range) {
        ObjectNode node = Json.object();
        node.put("low", Verdict.rounded(range.shownLow()));
        node.put("high", Verdict.rounded(range.shownHigh()));
        node.put("aim", Verdict.rounded(range.shownAim()));
        range.statureM().ifPresent(m -> node.put("stature", rounded(m)));
        node.put("provenance", range.provenance().id());
        return node;
    }

    static double rounded(double value) {
        return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
    }
}
