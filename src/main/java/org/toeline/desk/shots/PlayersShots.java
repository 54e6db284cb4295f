package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.toeline.flight.Shot;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Search;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;

/**
 * The lessons of one player that have shots, in their order.
 *
 * @param club that of the lesson on the desk
 */
record PlayersShots(Club club, List<OfLesson> lessons) {

    private static final int MOST = 1000;

    /**
     * One lesson.
     *
     * @param day when it was held, as far as the lesson says
     */
    record OfLesson(
            int lessonId,
            Optional<String> day,
            Club club,
            Handedness handedness,
            String notes,
            List<Shot> shots,
            List<StatedFinding> findings) {

        OfLesson withShots(List<Shot> other) {
            return new OfLesson(lessonId, day, club, handedness, notes, other, findings);
        }

        /** Whether its shots were hit with more than one setup, shots that name none taken for one. */
        boolean ofSeveralSetups() {
            return shots.stream().anyMatch(s -> !s.setup().equals(shots.get(0).setup()));
        }

        Optional<StatedFinding> finding(String reading) {
            return findings.stream().filter(f -> f.reading().equals(reading)).findFirst();
        }
    }

    PlayersShots {
        lessons = List.copyOf(lessons);
    }

    static PlayersShots none(Club club) {
        return new PlayersShots(club, List.of());
    }

    /** @param own the lesson on the desk; it is among them even without shots */
    static PlayersShots read(Ledger ledger, int playerId, int own, Club club) throws LedgerException {
        List<OfLesson> all = new ArrayList<>();
        for (LessonLine line : ledger.find(Search.RECENT.withPlayer(playerId).withMost(MOST))) {
            List<Shot> shots = ledger.shots(line.id());
            if (!shots.isEmpty() || line.id() == own) {
                ledger.lesson(line.id()).ifPresent(kept -> all.add(lesson(kept, shots)));
            }
        }
        all.sort(Comparator.comparingInt(OfLesson::lessonId));
        return new PlayersShots(club, all);
    }

    private static OfLesson lesson(KeptLesson kept, List<Shot> shots) {
        return new OfLesson(
                kept.id(),
                kept.lesson().recorded().map(t -> t.toLocalDate().toString()),
                kept.lesson().sheet().club(),
                kept.lesson().sheet().handedness(),
                kept.lesson().notes(),
                shots.stream().map(s -> TypedShot.of(s).shot()).toList(),
                kept.findings());
    }

    Optional<OfLesson> lesson(int id) {
        return lessons.stream().filter(l -> l.lessonId == id).findFirst();
    }

    /** The latest other lesson with the same club: what one would compare with. */
    Optional<OfLesson> nearest(int own) {
        return lessons.stream()
                .filter(l -> l.lessonId != own && l.club == club)
                .max(Comparator.comparingInt(OfLesson::lessonId));
    }

    PlayersShots withShots(int own, List<Shot> shots) {
        return new PlayersShots(
                club,
                lessons.stream()
                        .map(l -> l.lessonId != own ? l : l.withShots(shots))
                        .toList());
    }
}
