package org.toeline.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.toeline.document.DocumentSchema;
import org.toeline.document.Json;
import org.toeline.document.OwnDocument;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;

/**
 * The lesson document ({@code *.lesson.json}, UTF-8; its schema is {@code lesson.schema.json} beside this class): read
 * whole or refused with one sentence, written whole or not at all, unknown keys kept.
 */
public final class LessonDocument {

    private static final DocumentSchema SCHEMA = DocumentSchema.shipped(LessonDocument.class, "lesson.schema.json");
    private static final Sentences SENTENCES = Sentences.of(LessonDocument.class);

    private LessonDocument() {}

    public static Lesson read(Path file) throws DocumentException {
        try {
            if (!Files.isRegularFile(file)) {
                throw new DocumentException(SENTENCES.of("lesson.no-file", file));
            }
            if (Files.size(file) > Json.MOST_BYTES) {
                throw new DocumentException(SENTENCES.of("lesson.large", file, Json.MOST_BYTES >> 20));
            }
            return parse(Files.readAllBytes(file), file.toString());
        } catch (IOException e) {
            throw new DocumentException(SENTENCES.of("lesson.not-read", file, OwnDocument.reason(e)));
        }
    }

    /** @param name what the document is called in messages */
    public static Lesson parse(byte[] bytes, String name) throws DocumentException {
        JsonNode tree;
        try {
            tree = Json.read(bytes);
        } catch (IOException e) {
            throw new DocumentException(name + ": " + e.getMessage());
        }
        if (!(tree instanceof ObjectNode document)
                || !document.path("format").asText().equals(LessonWriter.FORMAT)) {
            throw new DocumentException(SENTENCES.of("lesson.none", name));
        }
        Optional<String> fault = SCHEMA.fault(document);
        if (fault.isPresent()) {
            throw new DocumentException(name + ": " + fault.get());
        }
        return LessonReader.read(document, name);
    }

    /** The document as it would be written. */
    public static byte[] bytes(Lesson lesson) {
        return Json.bytes(LessonWriter.tree(lesson, Json.object()));
    }

    /** The document on one line, as a store keeps it. */
    public static String line(Lesson lesson) {
        return Json.line(LessonWriter.tree(lesson, Json.object()));
    }

    /** Writes the whole document beside the old one and puts it in its place in one step. */
    public static void write(Lesson lesson, Path file) throws DocumentException {
        try {
            WholeFile.write(file, bytes(lesson));
        } catch (IOException e) {
            throw new DocumentException(SENTENCES.of("lesson.not-written", file, OwnDocument.reason(e)));
        }
    }
}
