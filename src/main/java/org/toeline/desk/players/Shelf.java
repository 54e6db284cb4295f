package org.toeline.desk.players;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.Aside;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;

/**
 * All that the ledger has of one lesson, read off the interface thread.
 *
 * @param clips  where each view's clip is now; a view without an entry has lost its clip
 * @param asides other bays' versions kept beside it
 */
record Shelf(KeptLesson kept, Player player, List<Take> takes, Map<View, Path> clips, List<Aside> asides) {

    Shelf {
        takes = List.copyOf(takes);
        clips = Map.copyOf(clips);
        asides = List.copyOf(asides);
    }

    static Optional<Shelf> of(Ledger ledger, LedgerPlace.Folder files, int lessonId)
            throws LedgerException, IOException {
        Optional<KeptLesson> kept = ledger.lesson(lessonId);
        Optional<Player> player = kept.isPresent() ? ledger.player(kept.get().playerId()) : Optional.empty();
        if (player.isEmpty()) {
            return Optional.empty();
        }
        List<Take> takes = ledger.takes(lessonId);
        return Optional.of(new Shelf(kept.get(), player.get(), takes, clips(takes, files), ledger.asides(lessonId)));
    }

    /** With the lesson changed, as it will be kept. */
    Shelf with(UnaryOperator<Lesson> change) {
        KeptLesson changed = new KeptLesson(
                kept.id(),
                kept.identity(),
                kept.playerId(),
                kept.version(),
                change.apply(kept.lesson()),
                kept.findings(),
                kept.changedAt(),
                kept.changedBy());
        return new Shelf(changed, player, takes, clips, asides);
    }

    /** Whether another differs only in what is written of the lesson, and in its version. */
    boolean isButForWords(Shelf other) {
        return wordless(kept.lesson()).equals(wordless(other.kept.lesson()))
                && kept.findings().equals(other.kept.findings())
                && player.equals(other.player)
                && takes.equals(other.takes)
                && clips.equals(other.clips)
                && asides.equals(other.asides);
    }

    private static Lesson wordless(Lesson lesson) {
        return lesson.withPlace("").withNotes("");
    }

    /** By name and size; that a file holds the same is looked at when it is opened. */
    private static Map<View, Path> clips(List<Take> takes, LedgerPlace.Folder files) throws IOException {
        Media media = new Media(files.media());
        Map<View, Path> found = new EnumMap<>(View.class);
        for (Take take : takes) {
            Optional<Path> named = take.file(files.folder()).filter(Files::isRegularFile);
            if (named.isPresent()) {
                found.put(take.view(), named.get());
            } else if (take.fingerprint().isPresent()) {
                media.copyOf(take.fingerprint().get()).ifPresent(copy -> found.put(take.view(), copy));
            }
        }
        return found;
    }
}
