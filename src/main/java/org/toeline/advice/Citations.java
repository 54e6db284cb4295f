package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.document.Json;

/**
 * On whose word ranges and links stand, in a person's language. What came with the program is written in English in its data, as
 * clauses with a semicolon between; {@code sources_de.json} has each clause in German. A coach's own words stay as they are.
 */
public final class Citations {

    private static final String BETWEEN = "; ";
    private static final String LEAD = ": ";
    /** What nobody in particular says: how sources in the data begin. */
    static final String COMMON = Provenance.COMMON_PRACTICE.id().replace('-', ' ');

    private static final Map<String, String> GERMAN = read(Json.shipped(Citations.class, "sources_de.json"));

    private Citations() {}

    private static Map<String, String> read(JsonNode clauses) {
        Map<String, String> all = new HashMap<>();
        clauses.fields().forEachRemaining(e -> all.put(e.getKey(), e.getValue().asText()));
        return Map.copyOf(all);
    }

    /** In the language of the words, when all of it is known there; else as it is. */
    public static String in(Words words, String text) {
        return words.language().equals("de") ? german(text).orElse(text) : text;
    }

    static Optional<String> german(String text) {
        if (text.isEmpty()) {
            return Optional.of("");
        }
        List<String> clauses = new ArrayList<>();
        for (String clause : text.split(BETWEEN, -1)) {
            String common = COMMON + LEAD;
            boolean led = clause.startsWith(common);
            Optional<String> known = Optional.ofNullable(GERMAN.get(led ? clause.substring(common.length()) : clause));
            if (known.isEmpty()) {
                return Optional.empty();
            }
            clauses.add((led ? GERMAN.get(COMMON) + LEAD : "") + known.get());
        }
        return Optional.of(String.join(BETWEEN, clauses));
    }
}
