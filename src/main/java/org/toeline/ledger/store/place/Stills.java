package org.toeline.ledger.store.place;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.toeline.language.Sentences;

/**
 * The pictures handed out and the frames kept, a folder a lesson under the lesson's identity: a number comes again after a restore,
 * or on a server that uses the same folder, and would show another player's picture.
 */
public final class Stills {

    private static final String IDENTITY = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

    private Stills() {}

    /** Whether a text is an identity as lessons have it (RFC 9562, section 4, in small letters). */
    public static boolean isIdentity(String text) {
        return text.matches(IDENTITY);
    }

    /** Where a lesson's pictures are kept; need not exist. */
    public static Path folder(LedgerPlace.Folder place, String identity) {
        if (!isIdentity(identity)) {
            throw new IllegalArgumentException(Sentences.of(Stills.class).of("stills.identity", identity));
        }
        return place.stills().resolve(identity);
    }

    /** A lesson's stills, by name. */
    public static List<Path> of(LedgerPlace.Folder place, String identity) throws IOException {
        Path folder = folder(place, identity);
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
