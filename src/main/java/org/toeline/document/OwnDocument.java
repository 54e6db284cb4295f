package org.toeline.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.toeline.language.Sentences;

/**
 * A document in which the program keeps something of the person's (settings, ranges, phrases, lenses). One that cannot be
 * read is moved to a name beside it that nothing has, said once, and what is usual counts meanwhile; so nothing is ever
 * written over it. One writer at a time.
 */
public final class OwnDocument {

    private static final Sentences SENTENCES = Sentences.of(OwnDocument.class);

    private OwnDocument() {}

    /** What makes a value of a document's bytes. */
    @FunctionalInterface
    public interface Reading<T> {

        /** @throws IllegalArgumentException with a clause that says why, when it is not such a document */
        T of(byte[] bytes) throws IOException;
    }

    /**
     * What was read.
     *
     * @param remark one sentence for the person; empty when all is well
     */
    public record Read<T>(T value, String remark) {}

    /** @param file need not exist */
    public static <T> Read<T> read(Path file, T usual, Reading<T> reading) {
        if (!Files.exists(file)) {
            return new Read<>(usual, "");
        }
        try {
            if (Files.size(file) > Json.MOST_BYTES) {
                throw new IllegalArgumentException(SENTENCES.of("json.large", Json.MOST_BYTES >> 20));
            }
            return new Read<>(reading.of(Files.readAllBytes(file)), "");
        } catch (IOException | IllegalArgumentException e) {
            return new Read<>(usual, setAside(file, reason(e)));
        }
    }

    private static String setAside(Path file, String why) {
        try {
            return SENTENCES.of("own.aside", file, why, setAside(file).getFileName());
        } catch (IOException e) {
            return SENTENCES.of("own.left", file, why);
        }
    }

    /** Moves a file that cannot be read to a name beside it that nothing has. */
    public static Path setAside(Path file) throws IOException {
        Path aside = file.resolveSibling(file.getFileName() + ".unreadable");
        for (int n = 2; Files.exists(aside); n++) {
            aside = file.resolveSibling(file.getFileName() + ".unreadable-" + n);
        }
        return Files.move(file, aside, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Why something could not be read or written, as a clause. */
    public static String reason(Exception e) {
        String message = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
        return e instanceof Json.NotJson || e instanceof IllegalArgumentException
                ? message
                : e.getClass().getSimpleName().replace("Exception", "") + ": " + message;
    }
}
