package org.toeline.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {

    /** RFC 8259: names should be unique (section 4), one value a text (2), numbers finite (6), strings Unicode (8.2). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "{",
                "no json",
                "{\"a\":1,\"a\":2}",
                "{} {}",
                "{\"a\":NaN}",
                "{\"a\":[1e999]}",
                "{\"a\":-Infinity}",
                "[\"\\ud800\"]",
                "{\"\\udc00\":1}"
            })
    void whatIsNotPlainJsonIsRefusedWithAClause(String text) {
        assertThatExceptionOfType(Json.NotJson.class)
                .isThrownBy(() -> Json.read(text))
                .withMessageMatching("(?s).{5,}");
    }

    @Test
    void theClauseSaysWhere() {
        assertThatExceptionOfType(Json.NotJson.class)
                .isThrownBy(() -> Json.read("{\n  \"a\": ,\n}"))
                .withMessageStartingWith("line 2, column ");
    }

    @Test
    void depthHasALimit() throws Exception {
        int deepest = Json.DEEPEST;
        assertThat(Json.read("[".repeat(deepest) + "]".repeat(deepest))).isNotNull();
        assertThatExceptionOfType(Json.NotJson.class)
                .isThrownBy(() -> Json.read("[".repeat(deepest + 1) + "]".repeat(deepest + 1)));
        assertThatExceptionOfType(Json.NotJson.class).isThrownBy(() -> Json.read("[".repeat(100_000)));
    }

    @Test
    void sizeHasALimit() throws Exception {
        byte[] large = " ".repeat(Json.MOST_BYTES - 1).concat("7").getBytes(StandardCharsets.UTF_8);
        assertThat(Json.read(large).asInt()).isEqualTo(7);
        byte[] larger = " ".repeat(Json.MOST_BYTES).concat("7").getBytes(StandardCharsets.UTF_8);
        assertThatExceptionOfType(Json.NotJson.class)
                .isThrownBy(() -> Json.read(larger))
                .withMessageContaining("20 MB");
    }

    @Test
    void aNumberThatIsNoneIsNotWritten() {
        assertThatIllegalStateException()
                .isThrownBy(() -> Json.bytes(Json.object().put("a", Double.NaN)));
        assertThatIllegalStateException()
                .isThrownBy(() -> Json.line(Json.object().put("a", Double.POSITIVE_INFINITY)));
    }

    @Test
    void whatIsWrittenIsReadAgain() throws Exception {
        var tree = Json.object().put("ä", 0.1).put("b", "“x”");
        assertThat(Json.read(Json.bytes(tree))).isEqualTo(tree);
        assertThat(Json.read(Json.line(tree))).isEqualTo(tree);
        assertThat(Json.line(tree)).doesNotContain("\n");
    }

    /** There is one mapper: no other class of the program makes one, and none moves a file into place by itself. */
    @Test
    void nobodyElseDoesIt() throws Exception {
        List<Path> others;
        try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
            others = all.filter(f -> f.toString().endsWith(".java"))
                    .filter(f -> !f.toString().contains("document"))
                    .toList();
        }
        assertThat(others).hasSizeGreaterThan(100);
        for (Path file : others) {
            assertThat(Files.readString(file))
                    .as(file.toString())
                    .doesNotContain("new ObjectMapper")
                    .doesNotContain("JsonMapper")
                    .doesNotContain("JsonSchemaFactory")
                    .doesNotContain("ATOMIC_MOVE");
        }
    }

    /** What a person reads names no class of a library. */
    @Test
    void whatComesAfterIsSaidPlainly() {
        assertThatThrownBy(() -> Json.read("{\"a\": 1} {"))
                .hasMessageContaining("line 1")
                .hasMessageContaining("something stands after its end")
                .hasMessageNotContaining("jackson");
    }
}
