package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.toeline.document.DocumentSchema;
import org.toeline.document.Json;
import org.toeline.language.Sentences;
import org.toeline.reading.ReadingKind;

/** The JSON documents of ranges, causes and phrases, checked against their schemas. */
final class Data {

    private static final Map<String, DocumentSchema> SCHEMAS = new ConcurrentHashMap<>();
    private static final Sentences SENTENCES = Sentences.of(Data.class);

    private Data() {}

    static JsonNode shipped(String name) {
        JsonNode document = Json.shipped(Data.class, name + ".json");
        fault(document, name).ifPresent(fault -> {
            throw new IllegalStateException(name + ".json: " + fault);
        });
        return document;
    }

    /** @throws IllegalArgumentException with a clause, when it is not what the schema of that name says */
    static JsonNode checked(JsonNode document, String schema) {
        fault(document, schema).ifPresent(fault -> {
            throw new IllegalArgumentException(SENTENCES.of("document.not-as-needed", fault));
        });
        return document;
    }

    /** @throws IllegalArgumentException with a clause, when there is no such reading */
    static ReadingKind reading(String id) {
        return ReadingKind.of(id)
                .orElseThrow(() -> new IllegalArgumentException(SENTENCES.of(
                        "document.no-reading",
                        id,
                        Arrays.stream(ReadingKind.values()).map(ReadingKind::id).collect(Collectors.joining(", ")))));
    }

    private static Optional<String> fault(JsonNode document, String schema) {
        return SCHEMAS.computeIfAbsent(schema, name -> DocumentSchema.shipped(Data.class, name + ".schema.json"))
                .fault(document);
    }
}
