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
        return named(document, name).filter(Files::isRegularFile).filter(clip -> !leadsOut(document, name));
    }

    /** Whether a name stands for something outside the document's folder, be it there or not, or for nothing that can be. */
    public static boolean leadsOut(Path document, String name) {
        Optional<Path> clip = named(document, name);
        try {
            return clip.isEmpty()
                    || Files.exists(clip.get())
                            && !clip.get()
                                    .toRealPath()
                                    .startsWith(folder(document).toRealPath());
        } catch (IOException e) {
            // what cannot be looked at is not known to lie inside
            return true;
        }
    }

    private static Path folder(Path document) {
        Path absolute = document.toAbsolutePath().normalize();
        return Optional.ofNullable(absolute.getParent()).orElse(absolute);
    }

    /** By the words alone. */
    private static Optional<Path> named(Path document, String name) {
        try {
            Path folder = folder(document);
            Path clip = folder.resolve(name).normalize();
            return clip.startsWith(folder) ? Optional.of(clip) : Optional.empty();
        } catch (InvalidPathException e) {
            // a name no file can have
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
