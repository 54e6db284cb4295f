package org.toeline.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The quick check against the whole validator of JSON Schema. */
class SureCheckTest {

    private static final String LESSON = "org/toeline/ledger/lesson.schema.json";

    private static JsonNode resource(String name) throws IOException {
        try (InputStream in = SureCheckTest.class.getClassLoader().getResourceAsStream(name)) {
            return Json.read(in.readAllBytes());
        }
    }

    private static JsonSchema validator(JsonNode schema) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);
    }

    /** Else it would spare nothing. */
    @ParameterizedTest
    @CsvSource({
        "org/toeline/advice/ranges.schema.json, org/toeline/advice/ranges.json",
        "org/toeline/advice/causes.schema.json, org/toeline/advice/causes.json"
    })
    void whatComesWithTheProgramPasses(String schema, String document) throws IOException {
        assertThat(new SureCheck(resource(schema)).passes(resource(document))).isTrue();
    }

    @Test
    void sampleLessonsPass() throws IOException {
        SureCheck check = new SureCheck(resource(LESSON));
        for (String name : List.of("before", "after", "left-handed", "all-good")) {
            assertThat(check.passes(sample(name))).as(name).isTrue();
        }
    }

    private static JsonNode sample(String name) throws IOException {
        return Json.read(Files.readAllBytes(Path.of("sample-media", name, name + ".lesson.json")));
    }

    /** Property: 3,000 lessons with up to three things changed; whatever passes, the whole validator lets pass. */
    @Test
    void whatPassesIsWithoutFault() throws IOException {
        compare(resource(LESSON), List.of(sample("before"), sample("left-handed")), 3000);
    }

    @ParameterizedTest
    @CsvSource({
        "org/toeline/advice/ranges.schema.json, org/toeline/advice/ranges.json",
        "org/toeline/advice/causes.schema.json, org/toeline/advice/causes.json"
    })
    void whatPassesOfTheOthersIsWithoutFault(String schema, String document) throws IOException {
        compare(resource(schema), List.of(resource(document)), 500);
    }

    private static void compare(JsonNode schema, List<JsonNode> documents, int times) {
        SureCheck check = new SureCheck(schema);
        JsonSchema validator = validator(schema);
        Random random = new Random(7);
        int passed = 0;
        int refused = 0;
        for (int i = 0; i < times; i++) {
            JsonNode document = documents.get(i % documents.size()).deepCopy();
            for (int n = random.nextInt(3); n >= 0; n--) {
                change(document, random);
            }
            boolean passes = check.passes(document);
            boolean right = validator.validate(document).isEmpty();
            if (passes) {
                assertThat(right).as(document.toString()).isTrue();
                passed++;
            } else if (!right) {
                refused++;
            }
        }
        // both happen, or nothing was compared
        assertThat(passed).isGreaterThan(times / 50);
        assertThat(refused).isGreaterThan(times / 50);
    }

    private static void change(JsonNode document, Random random) {
        List<JsonNode> containers = new ArrayList<>();
        gather(document, containers);
        JsonNode in = containers.get(random.nextInt(containers.size()));
        if (in instanceof ObjectNode object && !object.isEmpty()) {
            List<String> names =
                    object.properties().stream().map(Map.Entry::getKey).toList();
            String name = names.get(random.nextInt(names.size()));
            switch (random.nextInt(3)) {
                case 0 -> object.remove(name);
                case 1 -> object.set(name + "x", object.get(name).deepCopy());
                default -> object.set(name, other(object.get(name), random));
            }
        } else if (in instanceof ArrayNode array && !array.isEmpty()) {
            int at = random.nextInt(array.size());
            switch (random.nextInt(3)) {
                case 0 -> array.remove(at);
                case 1 -> array.add(array.get(at).deepCopy());
                default -> array.set(at, other(array.get(at), random));
            }
        }
    }

    private static void gather(JsonNode tree, List<JsonNode> containers) {
        if (tree.isContainerNode()) {
            containers.add(tree);
            tree.forEach(child -> gather(child, containers));
        }
    }

    private static JsonNode other(JsonNode value, Random random) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        return switch (random.nextInt(9)) {
            case 0 -> nodes.nullNode();
            case 1 -> nodes.textNode("");
            case 2 -> nodes.textNode("x😀".repeat(1 + random.nextInt(200)));
            case 3 -> nodes.numberNode(value.isNumber() ? value.doubleValue() * (0.5 + random.nextDouble()) : 1.0);
            case 4 -> nodes.numberNode(random.nextInt(7) - 3);
            case 5 -> nodes.numberNode(1e6 * random.nextGaussian());
            case 6 -> nodes.booleanNode(random.nextBoolean());
            case 7 -> nodes.arrayNode().add(value.deepCopy());
            default -> nodes.objectNode().set("id", value.deepCopy());
        };
    }
}
