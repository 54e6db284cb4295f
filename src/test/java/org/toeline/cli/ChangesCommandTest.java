package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The sample player's two lessons, filmed from different places, against the truth they were made from. */
class ChangesCommandTest {

    private static final String BEFORE = "sample-media/before/before.lesson.json";
    private static final String AFTER = "sample-media/after/after.lesson.json";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Commands.run(args, new PrintWriter(out), new PrintWriter(err));
    }

    private static JsonNode truth(String id) throws Exception {
        return new ObjectMapper()
                .readTree(Path.of("sample-media", id, "face-on.truth.json").toFile())
                .path("readings");
    }

    /** Against truth: each difference within three standard uncertainties; what is called real went that way. */
    @Test
    void whatIsCalledRealDidChange() throws Exception {
        assertThat(run("changes", BEFORE, AFTER, "--json")).isZero();
        JsonNode answer = new ObjectMapper().readTree(out.toString());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(Commands.class.getResourceAsStream("changes.schema.json"))
                        .validate(answer))
                .isEmpty();
        JsonNode before = truth("before");
        JsonNode after = truth("after");
        Map<String, String> calls = new HashMap<>();
        for (JsonNode change : answer.path("changes")) {
            String id = change.path("reading").asText();
            double was = after.path(id).path("value").asDouble()
                    - before.path(id).path("value").asDouble();
            double said = change.path("difference").asDouble();
            calls.put(id, change.path("call").asText());
            assertThat(said).as(id).isCloseTo(was, within(3 * change.path("u").asDouble()));
            if (calls.get(id).equals("real")) {
                assertThat(said * was)
                        .as("%s went from %s by %s", id, before.path(id), was)
                        .isPositive();
            }
        }
        assertThat(calls).containsEntry("ball-to-lead-shoulder", "real");
        for (String turned : new String[] {"shoulders-to-target", "shoulders-to-feet", "shoulder-tilt"}) {
            assertThat(calls.get(turned))
                    .as("%s: one of twenty, it has to change by more to be sure of", turned)
                    .isIn("real", "too-close");
        }
        assertThat(calls)
                .as("3.5 cm wider, which is less than may be chance")
                .containsEntry("stance-width", "not-shown");
        assertThat(calls.get("feet-to-target")).as("half a degree").isEqualTo("not-shown");
    }

    @Test
    void theSameTwiceShowsNoChange() throws Exception {
        assertThat(run("changes", BEFORE, BEFORE, "--json")).isZero();
        for (JsonNode change : new ObjectMapper().readTree(out.toString()).path("changes")) {
            assertThat(change.path("call").asText()).isEqualTo("not-shown");
            assertThat(change.path("smallestDetectable").asDouble())
                    .as("more than measuring alone, of one reading alone")
                    .isGreaterThan(1.96
                            * Math.sqrt(2)
                            * change.path("earlier").path("u").asDouble());
        }
    }

    @Test
    void twoHandednessesAreTwoPlayers() {
        assertThat(run("changes", BEFORE, "sample-media/left-handed/left-handed.lesson.json"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("two lessons of one player").hasLineCount(1);
    }
}
