package org.toeline.ledger.store.rows;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.toeline.ledger.store.place.Fingerprint;

/**
 * A lesson as a list shows it.
 *
 * @param recorded ISO 8601 with offset, as the document states it
 * @param first    the id of the reading that was to be changed first
 */
public record LessonLine(
        int id,
        int playerId,
        Optional<String> playerName,
        Optional<String> recorded,
        String club,
        String place,
        String notes,
        Optional<String> first,
        Judged judged) {

    /** Whether any of its findings was judged: where none was, nothing can be said to be in order. */
    public enum Judged {
        YES,
        NOT_YET,
        /** Its rows are not what was written, and nothing of them is shown. */
        DAMAGED
    }

    /** Of all that is shown; the length before each text keeps two of them from running together. */
    String sum() {
        MessageDigest digest = Fingerprint.sha256Digest();
        for (Object shown : List.of(
                id,
                playerId,
                playerName.orElse("-"),
                recorded.orElse("-"),
                club,
                place,
                notes,
                first.orElse("-"),
                judged)) {
            String text = shown.toString();
            digest.update((text.length() + ":" + text).getBytes(StandardCharsets.UTF_8));
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    static LessonLine damaged(int id, int playerId) {
        return new LessonLine(
                id, playerId, Optional.empty(), Optional.empty(), "", "", "", Optional.empty(), Judged.DAMAGED);
    }
}
