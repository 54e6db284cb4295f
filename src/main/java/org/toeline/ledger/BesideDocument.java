package org.toeline.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.toeline.mark.View;

/**
 * The clips that a document may name: files in its own folder or below. A document comes from anywhere, and what it says is no
 * reason to open, copy or hand on any other file of this machine; a link that leads out is not followed.
 */
public final class BesideDocument {

    private BesideDocument() {}

    /** The clip of that name, absolute; empty when it is not there, is no plain file, or lies outside the document's folder. */
    public static Optional<Path> clip(Path document, String name) {
        try {
            Path folder = document.toAbsolutePath().normalize().getParent();
            Path named = Path.of(name);
            if (folder == null
                    || named.isAbsolute()
                    || !folder.resolve(named).normalize().startsWith(folder)) {
                return Optional.empty();
            }
            Path clip = folder.resolve(named);
            return Files.isRegularFile(clip) && clip.toRealPath().startsWith(folder.toRealPath())
                    ? Optional.of(clip.normalize())
                    : Optional.empty();
        } catch (InvalidPathException | IOException e) {
            // a name no file can have, or a file that cannot be looked at, is a clip that is not there
            return Optional.empty();
        }
    }

    /** Where a clip of that name would be: itself when it is there, else its last name beside the document. */
    public static Path place(Path document, String name) {
        return clip(document, name)
                .orElseGet(() -> document.toAbsolutePath().normalize().resolveSibling(lastName(name)));
    }

    /** What stands after the last stroke of a path of any system; never a way out. */
    private static String lastName(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1)
                .replace("\0", "");
        return last.isBlank() || last.equals(".") || last.equals("..") ? "clip" : last;
    }

    /** The lesson with its clips named by where they are beside the document, for a place that is not beside it. */
    public static Lesson absolute(Lesson lesson, Path document) {
        Lesson absolute = lesson;
        for (Map.Entry<View, ClipMoment> clip : lesson.clips().entrySet()) {
            absolute = absolute.withClip(
                    clip.getKey(),
                    clip.getValue()
                            .moved(place(document, clip.getValue().clip()).toString()));
        }
        return absolute;
    }

    /** The lesson with nothing but the last names of its clips, for a document that leaves this machine. */
    public static Lesson named(Lesson lesson) {
        Lesson bare = lesson;
        for (Map.Entry<View, ClipMoment> clip : lesson.clips().entrySet()) {
            bare = bare.withClip(
                    clip.getKey(),
                    clip.getValue().moved(lastName(clip.getValue().clip())));
        }
        return bare;
    }
}
