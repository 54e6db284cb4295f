package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.toeline.document.WholeFile;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.rows.Take;

/**
 * The folder of clips that were copied into the ledger, each under its fingerprint, so that a clip is there once and its name
 * is nobody's; and the search for clips that were moved.
 */
public final class Media {

    private static final String UNFINISHED = ".copy-";
    /** A search looks no deeper into folders, and at no more files, than these. */
    private static final int DEEPEST = 8;

    private static final int MOST_FILES = 200_000;

    private final Path folder;

    public Media(Path folder) {
        this.folder = folder;
    }

    /** Copies a clip in; the original stays. */
    public Path copyIn(Path clip, Fingerprint fingerprint) throws IOException {
        Path target = folder.resolve(fingerprint.sha256() + ending(clip));
        if (Files.exists(target) && Files.size(target) == fingerprint.sizeBytes()) {
            return target;
        }
        Files.createDirectories(folder);
        Path beside = folder.resolve(UNFINISHED + UUID.randomUUID());
        try {
            Files.copy(clip, beside);
            return WholeFile.putInPlace(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** The copy that holds this, if there is one. */
    public Optional<Path> copyOf(Fingerprint fingerprint) throws IOException {
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (DirectoryStream<Path> copies = Files.newDirectoryStream(folder, fingerprint.sha256() + "*")) {
            for (Path copy : copies) {
                return Optional.of(copy);
            }
        }
        return Optional.empty();
    }

    /**
     * Where a lesson's clip is now: where the document says, if that still holds the same, else the copy. A file of that name
     * that holds something else is not it.
     *
     * @param document the folder relative names are relative to
     */
    public Optional<Path> locate(Take take, Path document) throws IOException {
        Path named = document.resolve(take.path());
        if (take.fingerprint().isEmpty()) {
            return Files.isRegularFile(named) ? Optional.of(named) : Optional.empty();
        }
        if (holds(named, take.fingerprint().get())) {
            return Optional.of(named);
        }
        return copyOf(take.fingerprint().get());
    }

    private static boolean holds(Path file, Fingerprint fingerprint) throws IOException {
        return Files.isRegularFile(file)
                && Files.size(file) == fingerprint.sizeBytes()
                && Fingerprint.of(file).equals(fingerprint);
    }

    /** Looks below a folder for files that hold what is looked for; only those of the right size are read. */
    public static Map<Fingerprint, Path> search(Collection<Fingerprint> wanted, Path below) throws IOException {
        Set<Long> sizes = new HashSet<>();
        wanted.forEach(f -> sizes.add(f.sizeBytes()));
        Map<Fingerprint, Path> found = new HashMap<>();
        int[] seen = {0};
        Files.walkFileTree(below, Set.of(), DEEPEST, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                if (attributes.isRegularFile() && sizes.contains(attributes.size())) {
                    Fingerprint fingerprint = Fingerprint.of(file);
                    if (wanted.contains(fingerprint)) {
                        found.putIfAbsent(fingerprint, file);
                    }
                }
                return found.size() == Set.copyOf(wanted).size() || ++seen[0] >= MOST_FILES
                        ? FileVisitResult.TERMINATE
                        : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                return FileVisitResult.CONTINUE;
            }
        });
        return found;
    }

    /** Takes a copy away; true when there was one. */
    public boolean drop(Fingerprint fingerprint) throws IOException {
        Optional<Path> copy = copyOf(fingerprint);
        return copy.isPresent() && Files.deleteIfExists(copy.get());
    }

    /** A short, plain ending such as .mp4, or none. */
    private static String ending(Path clip) {
        String name = clip.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String ending = dot < 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
        return ending.matches("\\.[a-z0-9]{1,5}") ? ending : "";
    }
}
