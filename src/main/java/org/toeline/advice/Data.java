package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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

    private Data() {
    }

    static JsonNode shipped(String name) {
        JsonNode document = resource(name + ".json");
        Set<ValidationMessage> faults = faults(document, name);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(name + ".json: " + faults.iterator().next().getMessage());
        }
        return document;
    }

    /** What the schema of that name has against a document. */
    static Set<ValidationMessage> faults(JsonNode document, String schema) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(resource(schema + ".schema.json")).validate(document);
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
