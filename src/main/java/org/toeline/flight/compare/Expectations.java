package org.toeline.flight.compare;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
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
        JsonNode document = resource("expectations.json");
        var faults = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(resource("expectations.schema.json"))
                .validate(document);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(
                    "expectations.json: " + faults.iterator().next().getMessage());
        }
        List<Expectation> all = new ArrayList<>();
        for (JsonNode node : document.path("expectations")) {
            all.add(new Expectation(
                    node.path("reading").asText(),
                    ShotFigure.of(node.path("figure").asText()).orElseThrow(),
                    Expectation.Goes.of(node.path("goes").asText()),
                    node.path("provenance").asText(),
                    node.path("source").asText()));
        }
        return new Expectations(all);
    }

    private static JsonNode resource(String file) {
        try (InputStream in = Expectations.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own " + file);
            }
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
