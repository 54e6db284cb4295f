package org.toeline.scene;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The lesson with nothing to change lies well inside every range that ships, the others outside where they say so. */
class AllGoodTest {

    /** Share of a range's width that must be left to its nearer limit. */
    private static final double COMFORT = 0.12;

    @Test
    void everyReadingLiesComfortablyInItsRange() throws Exception {
        Map<String, Truth.Value> readings = Truth.of(Scenarios.allGood()).readings();
        int checked = 0;
        for (JsonNode range : ranges()) {
            if (!isFor(range, "driver")) {
                continue;
            }
            double low = range.get("low").asDouble();
            double high = range.get("high").asDouble();
            double spare = COMFORT * (high - low);
            String id = range.get("reading").asText();
            assertThat(readings.get(id).value()).as(id).isBetween(low + spare, high - spare);
            checked++;
        }
        assertThat(checked).isGreaterThan(14);
    }

    @Test
    void beforeTheLessonBallShouldersAndTeeAreOut() throws Exception {
        Map<String, Truth.Value> readings = Truth.of(Scenarios.before()).readings();
        for (JsonNode range : ranges()) {
            if (!isFor(range, "driver")) {
                continue;
            }
            double value = readings.get(range.get("reading").asText()).value();
            boolean above = value > range.get("high").asDouble();
            boolean below = value < range.get("low").asDouble();
            switch (range.get("reading").asText()) {
                case "ball-to-lead-shoulder",
                        "ball-in-stance",
                        "shoulders-to-feet",
                        "shoulders-to-target",
                        "ball-to-lead-heel" -> assertThat(above).isTrue();
                case "shoulder-tilt", "ball-above-crown", "tee-height" ->
                    assertThat(below).isTrue();
                default ->
                    assertThat(above || below).as(range.get("reading").asText()).isFalse();
            }
        }
    }

    @Test
    void afterTheLessonNothingIsOut() throws Exception {
        Map<String, Truth.Value> readings = Truth.of(Scenarios.after()).readings();
        for (JsonNode range : ranges()) {
            if (isFor(range, "driver")) {
                assertThat(readings.get(range.get("reading").asText()).value())
                        .as(range.get("reading").asText())
                        .isBetween(
                                range.get("low").asDouble(), range.get("high").asDouble());
            }
        }
    }

    @Test
    void theLeftHandedPlayersBallIsTooFarBackAndNothingElseIsOut() throws Exception {
        Map<String, Truth.Value> readings = Truth.of(Scenarios.leftHanded()).readings();
        for (JsonNode range : ranges()) {
            if (isFor(range, "mid-iron")) {
                String id = range.get("reading").asText();
                double value = readings.get(id).value();
                // one fault, measured against the stance, the shoulder, the heel and the head
                if (id.equals("ball-in-stance") || id.startsWith("ball-to-lead")) {
                    assertThat(value).isLessThan(range.get("low").asDouble());
                } else if (!id.equals("head-to-ball")) {
                    assertThat(value)
                            .as(id)
                            .isBetween(
                                    range.get("low").asDouble(),
                                    range.get("high").asDouble());
                }
            }
        }
    }

    private static boolean isFor(JsonNode range, String club) {
        for (JsonNode c : range.get("clubs")) {
            if (c.asText().equals(club)) {
                return true;
            }
        }
        return false;
    }

    private static JsonNode ranges() throws Exception {
        try (InputStream in = AllGoodTest.class.getResourceAsStream("/org/toeline/advice/ranges.json")) {
            return new ObjectMapper().readTree(in).get("ranges");
        }
    }
}
