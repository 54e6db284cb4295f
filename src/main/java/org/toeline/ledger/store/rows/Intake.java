package org.toeline.ledger.store.rows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.toeline.language.Sentences;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** Finds out whose lesson a document is. */
public record Intake(Players players, Lessons lessons, LedgerPlace place) {

    private static final Sentences SENTENCES = Sentences.of(Intake.class);

    /**
     * Takes a lesson in that was kept elsewhere, once.
     *
     * @param identity that it had there, if that is known
     * @param found    where its clips are, as far as they may be opened
     */
    public TakenIn take(
            Lesson lesson,
            List<StatedFinding> findings,
            Optional<Integer> playerId,
            Optional<String> identity,
            Map<View, Path> found)
            throws LedgerException {
        Optional<Integer> same = lessons.same(lesson);
        if (same.isPresent()) {
            return new TakenIn.Already(same.get());
        }
        String own = identity.orElseGet(
                () -> UUID.nameUUIDFromBytes(LessonDocument.line(lesson).getBytes(StandardCharsets.UTF_8))
                        .toString());
        Optional<Integer> before = lessons.withIdentity(own);
        if (before.isPresent() && identity.isEmpty()) {
            return new TakenIn.Already(before.get());
        }
        Player player = playerId.isPresent() ? given(playerId.get()) : byName(lesson);
        return new TakenIn.New(
                lessons.add(player, lesson, findings, before.isPresent() ? fresh() : own, found), player.id());
    }

    /** Keeps a lesson that is begun here, which is like no other even where it looks so. */
    public int begin(Lesson lesson, Optional<Integer> playerId) throws LedgerException {
        Player player = playerId.isPresent() ? given(playerId.get()) : byName(lesson);
        return lessons.add(player, lesson, List.of(), fresh(), TakeRows.chosen(lesson.clips()));
    }

    private static String fresh() {
        return UUID.randomUUID().toString();
    }

    private Player given(int id) throws LedgerException {
        return players.get(id)
                .orElseThrow(() ->
                        new LedgerException(Fault.UNKNOWN, SENTENCES.of("kept.no-player-intake", place.name(), id)));
    }

    private Player byName(Lesson lesson) throws LedgerException {
        Handedness handedness = lesson.sheet().handedness();
        Optional<String> name = PlayerDetails.cleaned(lesson.playerName());
        List<Player> named = name.isPresent() ? players.named(name.get(), handedness) : List.of();
        if (named.size() > 1) {
            throw new LedgerException(
                    Fault.UNKNOWN,
                    SENTENCES.of(
                            "kept.many-players",
                            place.name(),
                            named.size(),
                            name.orElse(""),
                            String.join(
                                    ", ",
                                    named.stream()
                                            .map(p -> SENTENCES.of("kept.number", p.id()))
                                            .toList())));
        }
        return named.isEmpty() ? players.add(details(name, lesson)) : named.get(0);
    }

    private static PlayerDetails details(Optional<String> name, Lesson lesson) {
        PlayerDetails details = PlayerDetails.of(name, lesson.sheet().handedness());
        return lesson.sheet()
                .stature()
                .map(s -> details.withHeightM(OptionalDouble.of(s.heightM())))
                .orElse(details);
    }
}
