package org.toeline.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.toeline.language.Sentences;

/**
 * The one way JSON is read and written (RFC 8259). Refused: a key twice in one object, anything after the document, more than
 * {@value #DEEPEST} levels, more than {@value #MOST_BYTES} bytes, a number that is none or too large for a double, half a
 * character, and nothing at all. Any thread.
 */
public final class Json {

    /** Deepest nesting read. */
    public static final int DEEPEST = 50;
    /** Largest document read; none of ours comes near it. */
    public static final int MOST_BYTES = 20 << 20;

    private static final int LONGEST_REASON = 300;
    private static final Sentences SENTENCES = Sentences.of(Json.class);

    private static final JsonFactory TOKENS = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxDocumentLength(MOST_BYTES)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private Json() {}

    /** Bytes are not the JSON that is needed; the message is a clause that says where and why. */
    public static final class NotJson extends IOException {

        private static final long serialVersionUID = 1;

        private NotJson(String message) {
            super(message);
        }
    }

    /** An object to be filled. */
    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    public static JsonNode read(byte[] bytes) throws NotJson {
        if (bytes.length > MOST_BYTES) {
            throw new NotJson(SENTENCES.of("json.large", MOST_BYTES >> 20));
        }
        for (byte b : bytes) {
            if (b == 0) {
                // JSON between programs is UTF-8 (RFC 8259, section 8.1), where no byte is nought; in UTF-16 every
                // other is
                throw new NotJson(SENTENCES.of("json.no-text"));
            }
        }
        try (JsonParser tokens = TOKENS.createParser(bytes)) {
            if (tokens.nextToken() == null) {
                throw new NotJson(SENTENCES.of("json.empty"));
            }
            JsonNode tree = tree(tokens);
            if (tokens.nextToken() != null) {
                throw new NotJson(where(tokens.currentTokenLocation()) + SENTENCES.of("json.after"));
            }
            if (!isFinite(tree)) {
                throw new NotJson(SENTENCES.of("json.infinite"));
            }
            if (!isWhole(tree, StandardCharsets.UTF_8.newEncoder())) {
                throw new NotJson(SENTENCES.of("json.half-character"));
            }
            return tree;
        } catch (JsonProcessingException e) {
            throw new NotJson(where(e.getLocation()) + SENTENCES.of("json.none", firstLine(e.getOriginalMessage())));
        } catch (NotJson e) {
            throw e;
        } catch (IOException e) {
            throw new NotJson(SENTENCES.of("json.no-text"));
        }
    }

    public static JsonNode read(String text) throws NotJson {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * A document that comes with the program, beside a class.
     *
     * @throws IllegalStateException when the program lacks it or it is no JSON
     */
    public static JsonNode shipped(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own " + name);
            }
            return read(in.readAllBytes());
        } catch (IOException e) {
            throw new IllegalStateException("the program's own " + name + " cannot be read", e);
        }
    }

    /** As a file has it: indented, in UTF-8, with a line's end at its end. */
    public static byte[] bytes(JsonNode tree) {
        return (written(tree).toPrettyString() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** As a row of a table or one of many lines has it. */
    public static String line(JsonNode tree) {
        return written(tree).toString();
    }

    private static JsonNode written(JsonNode tree) {
        if (!isFinite(tree)) {
            throw new IllegalStateException("a number that is none is not written: " + tree);
        }
        return tree;
    }

    /**
     * The value that begins at this token. Built here, since the library's mapper, which maps onto classes too, takes longer to
     * be made than a lesson takes to be read.
     */
    private static JsonNode tree(JsonParser tokens) throws IOException {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        switch (tokens.currentToken()) {
            case START_OBJECT -> {
                ObjectNode object = nodes.objectNode();
                while (tokens.nextToken() == JsonToken.FIELD_NAME) {
                    String name = tokens.currentName();
                    tokens.nextToken();
                    object.set(name, tree(tokens));
                }
                return object;
            }
            case START_ARRAY -> {
                ArrayNode array = nodes.arrayNode();
                while (tokens.nextToken() != JsonToken.END_ARRAY) {
                    array.add(tree(tokens));
                }
                return array;
            }
            case VALUE_STRING -> {
                return nodes.textNode(tokens.getText());
            }
            case VALUE_NUMBER_INT -> {
                return switch (tokens.getNumberType()) {
                    case INT -> nodes.numberNode(tokens.getIntValue());
                    case LONG -> nodes.numberNode(tokens.getLongValue());
                    default -> nodes.numberNode(tokens.getBigIntegerValue());
                };
            }
            case VALUE_NUMBER_FLOAT -> {
                return nodes.numberNode(tokens.getDoubleValue());
            }
            case VALUE_TRUE, VALUE_FALSE -> {
                return nodes.booleanNode(tokens.getBooleanValue());
            }
            default -> {
                return nodes.nullNode();
            }
        }
    }

    /** Whether every name and text can be written as UTF-8: half of a character beyond the first plane cannot. */
    private static boolean isWhole(JsonNode tree, CharsetEncoder utf8) {
        for (Map.Entry<String, JsonNode> field : tree.properties()) {
            if (!utf8.canEncode(field.getKey())) {
                return false;
            }
        }
        for (JsonNode child : tree) {
            if (!isWhole(child, utf8)) {
                return false;
            }
        }
        return !tree.isTextual() || utf8.canEncode(tree.textValue());
    }

    private static boolean isFinite(JsonNode tree) {
        if (tree.isContainerNode()) {
            for (JsonNode child : tree) {
                if (!isFinite(child)) {
                    return false;
                }
            }
            return true;
        }
        return !tree.isNumber() || Double.isFinite(tree.doubleValue());
    }

    private static String where(JsonLocation at) {
        return at == null || at.getLineNr() < 1 ? "" : SENTENCES.of("json.at", at.getLineNr(), at.getColumnNr());
    }

    private static String firstLine(String text) {
        String line = text.lines().findFirst().orElse("").strip();
        return line.length() > LONGEST_REASON ? line.substring(0, LONGEST_REASON) + " …" : line;
    }
}
