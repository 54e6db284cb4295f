package org.toeline.flight.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.toeline.document.DocumentSchema;
import org.toeline.document.Json;
import org.toeline.flight.FigureUnit;

/** A template as a JSON document; its schema is {@code template.schema.json}. */
public final class TemplateDocument {

    private static final DocumentSchema SCHEMA = DocumentSchema.shipped(TemplateDocument.class, "template.schema.json");

    private TemplateDocument() {}

    public static byte[] write(Template template) {
        ObjectNode root = Json.object();
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
        return Json.bytes(root);
    }

    /** @throws IllegalArgumentException with a clause that says where and why, when it is no template */
    public static Template read(byte[] bytes) throws Json.NotJson {
        JsonNode root = Json.read(bytes);
        Optional<String> fault = SCHEMA.fault(root);
        if (fault.isPresent()) {
            throw new IllegalArgumentException(fault.get());
        }
        return template(root);
    }

    private static Template template(JsonNode root) {
        List<Column> columns = new ArrayList<>();
        for (JsonNode node : root.path("columns")) {
            String plus = node.path("plus").asText(PositiveSide.RIGHT.id());
            PositiveSide side = Arrays.stream(PositiveSide.values())
                    .filter(p -> p.id().equals(plus))
                    .findFirst()
                    .orElseThrow();
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
