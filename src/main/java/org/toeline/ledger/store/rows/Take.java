package org.toeline.ledger.store.rows;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.ledger.BesideDocument;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.mark.View;

/**
 * A lesson's clip.
 *
 * @param path        as the document names it
 * @param seconds     presentation time of the frame that was marked
 * @param fingerprint what it holds, once that was noted
 * @param found       where it was found beside its document, or chosen at the desk; absolute
 */
public record Take(
        View view, String path, OptionalDouble seconds, Optional<Fingerprint> fingerprint, Optional<String> found) {

    /**
     * The file that counts as this clip, whether it is there or not: where it was found, else a name inside the folder that is
     * given. Empty where the document names a file anywhere else, which its words alone do not open.
     *
     * @param folder the folder relative names are relative to
     */
    public Optional<Path> file(Path folder) {
        return found.isPresent()
                ? Optional.of(Path.of(found.get()))
                : BesideDocument.clip(folder.resolve("document"), path);
    }
}
