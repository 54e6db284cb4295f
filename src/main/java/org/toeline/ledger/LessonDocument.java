package org.toeline.ledger;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;

/**
 * The lesson document ({@code *.lesson.json}, UTF-8; its schema is {@code lesson.schema.json} beside this class): read
 * whole or refused with one sentence, written whole or not at all, unknown keys kept.
 */
public final class LessonDocument {

    /** A document larger than this is none of ours. */
    private static final long MOST_BYTES = 20L << 20;

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();
    private static final JsonSchema SCHEMA = schema();

    private LessonDocument() {}

    private static JsonSchema schema() {
        try (InputStream in = LessonDocument.class.getResourceAsStream("lesson.schema.json")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own lesson.schema.json");
            }
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Lesson read(Path file) throws DocumentException {
        try {
            if (!Files.isRegularFile(file)) {
                throw new DocumentException(file + ": there is no such file");
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new DocumentException(file + ": larger than 20 MB, which no lesson is");
            }
            return parse(Files.readAllBytes(file), file.toString());
        } catch (IOException e) {
            throw new DocumentException(file + ": the file cannot be read (" + reason(e) + ")");
        }
    }

    /** @param name what the document is called in messages */
    public static Lesson parse(byte[] bytes, String name) throws DocumentException {
        JsonNode tree;
        try {
            tree = JSON.readTree(bytes);
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String where = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
            throw new DocumentException(name + where + ": not JSON (" + firstLine(e.getOriginalMessage()) + ")");
        } catch (IOException e) {
            throw new DocumentException(name + ": not JSON text in UTF-8");
        }
        if (!(tree instanceof ObjectNode document)) {
            throw new DocumentException(
                    name + ": not a lesson; a JSON object with the format “toeline-lesson” is needed");
        }
        if (!isText(document)) {
            throw new DocumentException(name + ": holds half of a character (a lone surrogate), which is no text");
        }
        Optional<ValidationMessage> fault = faults(document);
        if (fault.isPresent()) {
            throw new DocumentException(name + ": " + sentence(fault.get()));
        }
        return LessonReader.read(document, name);
    }

    /** Whether it could be written again: an escape can name half a character, which no file can hold. */
    private static boolean isText(ObjectNode document) {
        return StandardCharsets.UTF_8.newEncoder().canEncode(document.toString());
    }

    private static Optional<ValidationMessage> faults(ObjectNode document) {
        return SCHEMA.validate(document).stream()
                .min(Comparator.comparing(
                        (ValidationMessage m) -> m.getInstanceLocation().toString()));
    }

    /** “views[0].marks[3].x: string found, number expected”. */
    private static String sentence(ValidationMessage fault) {
        String message = firstLine(fault.getMessage());
        return message.startsWith("$.")
                ? message.substring(2)
                : message.startsWith("$: ") ? message.substring(3) : message;
    }

    private static String firstLine(String text) {
        String line = text.lines().findFirst().orElse("").strip();
        return line.length() > 300 ? line.substring(0, 300) + " …" : line;
    }

    /** The document as it would be written. */
    public static byte[] bytes(Lesson lesson) {
        try {
            return JSON.writeValueAsBytes(LessonWriter.tree(lesson, JSON.createObjectNode()));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can be written", e);
        }
    }

    /** The document on one line, as a store keeps it. */
    public static String line(Lesson lesson) {
        return LessonWriter.tree(lesson, JSON.createObjectNode()).toString();
    }

    /** Writes the whole document beside the old one and puts it in its place in one step. */
    public static void write(Lesson lesson, Path file) throws DocumentException {
        try {
            WholeFile.write(file, bytes(lesson));
        } catch (IOException e) {
            throw new DocumentException(
                    file + ": could not be written (" + reason(e) + "); what was there before is untouched");
        }
    }

    private static String reason(IOException e) {
        String message = e.getMessage();
        return e.getClass().getSimpleName().replace("Exception", "")
                + (message == null ? "" : ": " + firstLine(message));
    }
}
