package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.across.StatedFindings;
import org.toeline.ledger.LessonDocument;

/** A lesson whose rod was marked from its other end, as every command takes it. */
class ContradictoryLessonTest {

    private static final Path SAMPLE = Path.of("sample-media/before/before.lesson.json");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path dir;

    private Path turned;

    @BeforeEach
    void turnTheRod() throws Exception {
        turned = dir.resolve("turned.lesson.json");
        String text = Files.readString(SAMPLE);
        int marks = text.indexOf("\"floorMarks\"");
        String swapped = text.substring(marks)
                .replace("\"rod-near\"", "\"?\"")
                .replace("\"rod-far\"", "\"rod-near\"")
                .replace("\"?\"", "\"rod-far\"");
        Files.writeString(turned, text.substring(0, marks) + swapped);
    }

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Commands.run(args, new PrintWriter(out), new PrintWriter(err));
    }

    @Test
    void measureSaysWhatContradictsWhatAndHowToMendIt() throws Exception {
        assertThat(run("measure", "--json", turned.toString())).isZero();
        JsonNode object = new ObjectMapper().readTree(out.toString());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(Commands.class.getResourceAsStream("readings.schema.json"))
                        .validate(object))
                .isEmpty();
        assertThat(object.has("first")).isFalse();
        assertThat(object.path("withheld").path("likely").asText()).isEqualTo("rod-turned");
        assertThat(object.path("withheld").path("says").asText())
                .contains("camera")
                .contains("other end");
        object.path("readings")
                .forEach(r -> assertThat(r.path("verdict").asText()).isEqualTo("withheld"));

        assertThat(run("measure", turned.toString())).isZero();
        assertThat(out.toString()).contains("--mend rod-turned").doesNotContain("First:");

        Path mended = dir.resolve("mended.lesson.json");
        assertThat(run("measure", "--json", "--mend", "rod-turned", "--save", mended.toString(), turned.toString()))
                .isZero();
        assertThat(new ObjectMapper()
                        .readTree(out.toString())
                        .path("first")
                        .path("reading")
                        .asText())
                .isEqualTo("ball-to-lead-shoulder");
        assertThat(LessonDocument.read(mended).sheet())
                .isEqualTo(LessonDocument.read(SAMPLE).sheet());
    }

    @Test
    void nothingIsHandedOverComparedOrKeptOfIt() throws Exception {
        Path page = dir.resolve("page");
        assertThat(run("handout", turned.toString(), "--out", page.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("turned.lesson.json").contains("nothing to hand over");
        assertThat(page).doesNotExist();
        Path still = dir.resolve("still.png");
        assertThat(run("still", turned.toString(), "--out", still.toString())).isEqualTo(2);
        assertThat(still).doesNotExist();
        assertThat(run("changes", SAMPLE.toString(), turned.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("nothing to compare");
        assertThat(StatedFindings.of(LessonDocument.read(turned))).isEmpty();
    }
}
