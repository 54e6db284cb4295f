package org.toeline.ledger.store.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.document.Json;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.StatedFinding.Place;
import org.toeline.ledger.store.rows.StatedFinding.StatedRange;
import org.toeline.mark.View;

/** The {@code archive.json} of an archive: which clip is which view's, and the findings as they were stated. */
record ArchiveIndex(Optional<String> identity, Map<View, Clip> clips, List<StatedFinding> findings) {

    private static final Sentences SENTENCES = Sentences.of(ArchiveIndex.class);

    /** A clip's entry and what it must hold. */
    record Clip(String entry, Fingerprint fingerprint) {}

    byte[] bytes() {
        ObjectNode out = Json.object();
        out.put("format", "toeline-archive").put("version", 1);
        identity.ifPresent(i -> out.put("lesson", i));
        ArrayNode clipNodes = out.putArray("clips");
        clips.forEach((view, clip) -> clipNodes
                .addObject()
                .put("view", view.id())
                .put("file", clip.entry)
                .put("size", clip.fingerprint.sizeBytes())
                .put("sha256", clip.fingerprint.sha256()));
        ArrayNode findingNodes = out.putArray("findings");
        findings.forEach(f -> findingNodes.add(node(f)));
        return Json.bytes(out);
    }

    private static ObjectNode node(StatedFinding f) {
        ObjectNode node = Json.object();
        node.put("reading", f.reading())
                .put("value", f.value())
                .put("u", f.u())
                .put("low", f.low())
                .put("high", f.high())
                .put("unit", f.unit());
        f.range()
                .ifPresent(r -> node.putObject("range")
                        .put("low", r.low())
                        .put("high", r.high())
                        .put("aim", r.aim())
                        .put("provenance", r.provenance()));
        f.verdict().ifPresent(v -> node.put("verdict", v));
        if (f.place() == Place.FIRST) {
            node.put("first", true);
        }
        return node;
    }

    static ArchiveIndex parse(byte[] bytes, String name) throws DocumentException {
        try {
            JsonNode tree = Json.read(bytes);
            if (!tree.path("format").asText().equals("toeline-archive")
                    || tree.path("version").asInt() != 1) {
                throw new DocumentException(SENTENCES.of("archive.index", name, SENTENCES.of("archive.index-format")));
            }
            Map<View, Clip> clips = new EnumMap<>(View.class);
            for (JsonNode node : tree.path("clips")) {
                View view = View.of(node.path("view").asText())
                        .orElseThrow(() -> new IllegalArgumentException(SENTENCES.of(
                                "archive.no-view", node.path("view").asText())));
                clips.put(
                        view,
                        new Clip(
                                node.path("file").asText(),
                                new Fingerprint(
                                        node.path("size").asLong(-1),
                                        node.path("sha256").asText())));
            }
            List<StatedFinding> findings = new ArrayList<>();
            for (JsonNode node : tree.path("findings")) {
                findings.add(finding(node));
            }
            Optional<String> identity =
                    Optional.of(tree.path("lesson").asText()).filter(Stills::isIdentity);
            return new ArchiveIndex(identity, clips, findings);
        } catch (IOException | IllegalArgumentException e) {
            throw new DocumentException(SENTENCES.of(
                    "archive.index",
                    name,
                    String.valueOf(e.getMessage()).lines().findFirst().orElse(SENTENCES.of("archive.no-json"))));
        }
    }

    private static StatedFinding finding(JsonNode node) {
        JsonNode range = node.path("range");
        return new StatedFinding(
                text(node, "reading"),
                number(node, "value"),
                number(node, "u"),
                number(node, "low"),
                number(node, "high"),
                text(node, "unit"),
                range.isObject()
                        ? Optional.of(new StatedRange(
                                number(range, "low"),
                                number(range, "high"),
                                number(range, "aim"),
                                text(range, "provenance")))
                        : Optional.empty(),
                node.has("verdict") ? Optional.of(text(node, "verdict")) : Optional.empty(),
                node.path("first").asBoolean() ? Place.FIRST : Place.ONE_OF_MANY);
    }

    private static double number(JsonNode node, String key) {
        if (!node.path(key).isNumber()) {
            throw new IllegalArgumentException(SENTENCES.of("archive.no-number", key));
        }
        return node.path(key).asDouble();
    }

    private static String text(JsonNode node, String key) {
        String text = node.path(key).asText();
        if (!text.matches("[a-z-]{1,40}")) {
            throw new IllegalArgumentException(SENTENCES.of("archive.no-name", key));
        }
        return text;
    }
}
