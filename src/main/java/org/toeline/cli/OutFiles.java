package org.toeline.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;

/** Writes what a person asked for; a file that is there already is another player's until the person says it is not. */
final class OutFiles {

    private static final Sentences SENTENCES = Sentences.of(OutFiles.class);

    private OutFiles() {}

    /** Writes a file under the very name that was asked for. */
    static void write(Path file, byte[] bytes, boolean replaces) throws DocumentException, IOException {
        if (!replaces && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new DocumentException(SENTENCES.of("out.exists", file));
        }
        put(file, bytes);
    }

    /** Writes files of those names into a folder, in the order of their names; returns where they are. */
    static List<Path> write(Path folder, Map<String, byte[]> files) throws DocumentException, IOException {
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : new TreeMap<>(files).entrySet()) {
            Path path = folder.resolve(file.getKey());
            put(path, file.getValue());
            written.add(path);
        }
        return written;
    }

    private static void put(Path file, byte[] bytes) throws DocumentException, IOException {
        try {
            WholeFile.write(file, bytes);
        } catch (FileSystemException e) {
            Path folder = file.toAbsolutePath().getParent();
            boolean denied = e instanceof AccessDeniedException || e.getReason() == null;
            throw new DocumentException(SENTENCES.of(
                    "out.not-written",
                    folder == null ? file : folder,
                    file.getFileName() == null ? file : file.getFileName(),
                    denied ? SENTENCES.of("out.denied") : String.valueOf(e.getReason())));
        }
    }
}
