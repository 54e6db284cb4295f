package org.toeline.flight.table;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.toeline.flight.FigureUnit;

/** A template as a JSON document; its schema is {@code template.schema.json}. */
public final class TemplateDocument {

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(TemplateDocument.class.getResourceAsStream("template.schema.json"));

    private TemplateDocument() {}

    /** A document is not a template; the message says where and why, in the middle of a sentence. */
    public static final class Unreadable extends Exception {

        private static final long serialVersionUID = 1;

        Unreadable(String message) {
            super(message);
        }
    }

    public static String write(Template template) {
        ObjectNode root = JSON.createObjectNode();
        root.put("format", "toeline-shot-template").put("version", 1).put("name", template.name());
        root.put("separator", template.separator().id())
                .put("decimalMark", template.decimalMark().id());
        ArrayNode columns = root.putArray("columns");
        for (Column column : template.columns()) {
            ObjectNode node = columns.addObject();
            node.put("header", column.header())
                    .put("meaning", column.meaning().id())
                    .put("unit", column.unit().id());
            if (column.meaning().sided()) {
                node.put("plus", column.positiveSide().id());
            }
        }
        ArrayNode remarks = root.putArray("remarks");
        template.remarks().forEach(remarks::add);
        try {
            return JSON.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Template read(byte[] bytes) throws Unreadable {
        JsonNode root;
        try {
            root = JSON.readTree(bytes);
        } catch (IOException e) {
            throw new Unreadable("it is not JSON");
        }
        var faults = SCHEMA.validate(root);
        if (!faults.isEmpty()) {
            throw new Unreadable(faults.iterator().next().getMessage());
        }
        try {
            return template(root);
        } catch (IllegalArgumentException e) {
            throw new Unreadable(String.valueOf(e.getMessage()));
        }
    }

    private static Template template(JsonNode root) {
        List<Column> columns = new ArrayList<>();
        for (JsonNode node : root.path("columns")) {
            PositiveSide side = node.path("plus").asText("right").equals(PositiveSide.LEFT.id())
                    ? PositiveSide.LEFT
                    : PositiveSide.RIGHT;
            columns.add(new Column(
                    node.path("header").asText(),
                    Meaning.of(node.path("meaning").asText()).orElseThrow(),
                    FigureUnit.of(node.path("unit").asText()).orElseThrow(),
                    side));
        }
        List<String> remarks = new ArrayList<>();
        root.path("remarks").forEach(r -> remarks.add(r.asText()));
        Separator separator = Arrays.stream(Separator.values())
                .filter(s -> s.id().equals(root.path("separator").asText("guess")))
                .findFirst()
                .orElseThrow();
        DecimalMark mark = Arrays.stream(DecimalMark.values())
                .filter(d -> d.id().equals(root.path("decimalMark").asText("guess")))
                .findFirst()
                .orElseThrow();
        return new Template(root.path("name").asText(), separator, mark, columns, remarks);
    }
}
