package org.toeline.advice;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Set;

/** The JSON documents that come with the program, checked against their schemas when first used. */
final class Data {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final JsonMapper STRICT = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(50).build())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private Data() {}

    static JsonNode shipped(String name) {
        JsonNode document = resource(name + ".json");
        Set<ValidationMessage> faults = faults(document, name);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(
                    name + ".json: " + faults.iterator().next().getMessage());
        }
        return document;
    }

    /**
     * A document from elsewhere.
     *
     * @throws IllegalArgumentException with a sentence, when it is no JSON or not what the schema says
     */
    static JsonNode parsed(String json, String schema) {
        try {
            JsonNode document = STRICT.readTree(json);
            Set<ValidationMessage> faults = document == null ? Set.of() : faults(document, schema);
            if (document == null || !faults.isEmpty()) {
                throw new IllegalArgumentException("not what is needed: "
                        + (document == null
                                ? "it is empty"
                                : faults.iterator().next().getMessage()));
            }
            return document;
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("no JSON: " + e.getOriginalMessage(), e);
        }
    }

    /** What the schema of that name has against a document. */
    static Set<ValidationMessage> faults(JsonNode document, String schema) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(resource(schema + ".schema.json"))
                .validate(document);
    }

    private static JsonNode resource(String file) {
        try (InputStream in = Data.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own " + file);
            }
            return JSON.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
