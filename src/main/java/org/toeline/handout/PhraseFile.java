package org.toeline.handout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.toeline.advice.Phrases;
import org.toeline.ledger.WholeFile;

/** The file of a coach's own phrases. One that cannot be read is said and left alone; writing then moves it aside first. */
public final class PhraseFile {

    private static final long LARGEST_BYTES = 1 << 20;

    private PhraseFile() {}

    /** No phrases, and nothing to say, where there is no file. */
    public static Phrases.Read read(Path file) {
        if (!Files.exists(file)) {
            return new Phrases.Read(Phrases.NONE, List.of(), true);
        }
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                return unreadable(file, "it is larger than a megabyte");
            }
            return Phrases.read(new String(Files.readAllBytes(file), StandardCharsets.UTF_8), file.toString());
        } catch (IOException e) {
            return unreadable(file, e.getClass().getSimpleName());
        }
    }

    private static Phrases.Read unreadable(Path file, String why) {
        return new Phrases.Read(
                Phrases.NONE,
                List.of(file + ": the own phrases could not be read (" + why
                        + "); the shipped ones are used, and the file is left as it is"),
                false);
    }

    /**
     * Keeps the phrases.
     *
     * @return where a file is now that stood in the way and could not be read
     */
    public static Optional<Path> write(Path file, Phrases phrases) throws IOException {
        Optional<Path> aside = Optional.empty();
        if (Files.exists(file) && !read(file).whole()) {
            Path moved = file.resolveSibling(file.getFileName() + ".unreadable");
            Files.move(file, moved, StandardCopyOption.REPLACE_EXISTING);
            aside = Optional.of(moved);
        }
        WholeFile.write(file, phrases.written().getBytes(StandardCharsets.UTF_8));
        return aside;
    }
}
