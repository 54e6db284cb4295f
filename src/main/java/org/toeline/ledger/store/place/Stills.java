package org.toeline.ledger.store.place;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The pictures handed out, a folder a lesson; folders have numbers, never names of people. */
public final class Stills {

    private Stills() {}

    /** Where a lesson's stills are kept; need not exist. */
    public static Path folder(LedgerPlace.Folder place, int lessonId) {
        return place.stills().resolve("lesson-" + lessonId);
    }

    /** A lesson's stills, by name. */
    public static List<Path> of(LedgerPlace.Folder place, int lessonId) throws IOException {
        Path folder = folder(place, lessonId);
        List<Path> stills = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.png")) {
                files.forEach(stills::add);
            }
        }
        stills.sort(Comparator.comparing(Path::toString));
        return stills;
    }
}
