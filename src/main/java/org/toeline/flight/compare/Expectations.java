package org.toeline.flight.compare;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.toeline.document.DocumentSchema;
import org.toeline.document.Json;
import org.toeline.flight.ShotFigure;

/** The expectations that come with the program; data, in {@code expectations.json}. */
public record Expectations(List<Expectation> all) {

    private static final Expectations SHIPPED = load();

    public Expectations {
        all = List.copyOf(all);
    }

    public static Expectations shipped() {
        return SHIPPED;
    }

    /** What is expected of the shots when a reading changes, by the reading's name in documents. */
    public List<Expectation> of(String reading) {
        return all.stream().filter(e -> e.reading().equals(reading)).toList();
    }

    private static Expectations load() {
        JsonNode document = Json.shipped(Expectations.class, "expectations.json");
        DocumentSchema.shipped(Expectations.class, "expectations.schema.json")
                .fault(document)
                .ifPresent(fault -> {
                    throw new IllegalStateException("expectations.json: " + fault);
                });
        List<Expectation> all = new ArrayList<>();
        for (JsonNode node : document.path("expectations")) {
            Set<String> clubs = new TreeSet<>();
            node.path("clubs").forEach(c -> clubs.add(c.asText()));
            all.add(new Expectation(
                    node.path("reading").asText(),
                    ShotFigure.of(node.path("figure").asText()).orElseThrow(),
                    Expectation.Goes.of(node.path("goes").asText()),
                    clubs,
                    node.path("start").asText().equals("beyond-zero")
                            ? Expectation.Start.BEYOND_ZERO
                            : Expectation.Start.ANYWHERE,
                    node.path("provenance").asText(),
                    Expectation.Strength.valueOf(node.path("strength").asText().toUpperCase(Locale.ROOT)),
                    node.path("source").asText()));
        }
        return new Expectations(all);
    }
}
