package org.toeline.ledger.store.rows;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.toeline.language.Sentences;
import org.toeline.mark.Club;

/**
 * What lessons are looked for; nothing said finds all, the recent first.
 *
 * @param text     beginnings of words of the player's name, of the notes or the place, all of which must be met; two letters
 *                 do
 * @param reading  id of a reading that was found; with {@code verdicts} not empty, one with such a verdict
 * @param from     first day, included; {@code to} the last; by the lesson's own offset
 * @param most     how many are wanted, 1 to 1000
 */
public record Search(
        String text,
        Optional<Integer> playerId,
        Optional<Club> club,
        Optional<String> reading,
        Set<String> verdicts,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        int most) {

    public static final Search RECENT = new Search(
            "", Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Optional.empty(), Optional.empty(), 50);

    public Search {
        verdicts = Set.copyOf(verdicts);
        if (most < 1 || most > 1000) {
            throw new IllegalArgumentException(Sentences.of(Search.class).of("search.most", most));
        }
    }

    public static Search text(String text) {
        return RECENT.withText(text);
    }

    public Search withText(String changed) {
        return new Search(changed, playerId, club, reading, verdicts, from, to, most);
    }

    public Search withPlayer(int id) {
        return new Search(text, Optional.of(id), club, reading, verdicts, from, to, most);
    }

    public Search withClub(Club changed) {
        return new Search(text, playerId, Optional.of(changed), reading, verdicts, from, to, most);
    }

    /** @param withVerdicts verdict ids; empty for any */
    public Search withFinding(String readingId, Set<String> withVerdicts) {
        return new Search(text, playerId, club, Optional.of(readingId), withVerdicts, from, to, most);
    }

    public Search between(LocalDate first, LocalDate last) {
        return new Search(text, playerId, club, reading, verdicts, Optional.of(first), Optional.of(last), most);
    }

    public Search withMost(int changed) {
        return new Search(text, playerId, club, reading, verdicts, from, to, changed);
    }
}
