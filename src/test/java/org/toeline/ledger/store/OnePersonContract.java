package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.Merged;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** What a ledger promises of two players who are one. */
abstract class OnePersonContract extends EmptyLedger {

    @Test
    void twoPlayersWhoAreOneAreMadeOne() throws Exception {
        Player stays = ledger.addPlayer(new PlayerDetails(
                Optional.of("Bea Trial"), Handedness.RIGHT, OptionalDouble.empty(), OptionalInt.of(1990), "left knee"));
        Player goes = ledger.addPlayer(new PlayerDetails(
                Optional.of("B. Trial"), Handedness.RIGHT, OptionalDouble.of(1.68), OptionalInt.of(1991), "tennis"));
        Player other = player("C. Other");
        int own = keep(stays, TestLessons.lesson("Bea Trial")).id();
        KeptLesson moved = keep(goes, TestLessons.lesson("B. Trial", "moved note", 620));
        int others = keep(other, TestLessons.lesson("C. Other")).id();
        ledger.keepShots(moved.id(), List.of(new Shot(Map.of(ShotFigure.CARRY, 201.5))));
        ledger.noteClip(moved.id(), View.FACE_ON, new Fingerprint(3, "0".repeat(64)));
        Lesson aside = TestLessons.lesson("B. Trial", "aside", 650);
        ledger.save(moved.id(), 7, aside, List.of());

        Merged merged = ledger.merge(stays.id(), goes.id());

        assertThat(merged.versions()).isEqualTo(Map.of(moved.id(), 2));
        assertThat(merged.player().details())
                .isEqualTo(new PlayerDetails(
                        Optional.of("Bea Trial"),
                        Handedness.RIGHT,
                        OptionalDouble.of(1.68),
                        OptionalInt.of(1990),
                        "left knee\ntennis"));
        assertThat(ledger.players()).containsExactly(other, merged.player());
        assertThat(ledger.lessonNumbers(Optional.of(stays.id()))).containsExactly(own, moved.id());
        KeptLesson now = ledger.lesson(moved.id()).orElseThrow();
        assertThat(now.playerId()).isEqualTo(stays.id());
        assertThat(now.identity()).isEqualTo(moved.identity());
        assertThat(now.findings()).isEqualTo(moved.findings());
        assertThat(LessonDocument.bytes(now.lesson()))
                .as("the document is as it was but for the name")
                .isEqualTo(LessonDocument.bytes(TestLessons.lesson("Bea Trial", "moved note", 620)));
        assertThat(ledger.shots(moved.id())).hasSize(1);
        assertThat(ledger.takes(moved.id()).get(0).fingerprint()).isPresent();
        assertThat(ledger.asides(moved.id())).hasSize(1);
        assertThat(ledger.acrossLessons(stays.id(), Club.DRIVER))
                .extracting(LessonFindings::lessonId)
                .containsExactly(own, moved.id());
        assertThat(ids(Search.text("bea"))).containsExactly(moved.id(), own);
        assertThat(ids(Search.RECENT.withPlayer(other.id()))).containsExactly(others);
        assertThat(ledger.check()).isEmpty();
        assertThat(ledger.save(moved.id(), 2, now.lesson().withNotes("on"), List.of()))
                .isEqualTo(new Saved.Done(3));
    }

    @Test
    void aNamelessPlayerTakesTheNameOfTheOther() throws Exception {
        Player stays = ledger.addPlayer(PlayerDetails.of(Optional.empty(), Handedness.RIGHT));
        int own = keep(stays, TestLessons.lesson("X")).id();
        Player goes = player("B. Trial");
        int moved = keep(goes, TestLessons.lesson("B. Trial")).id();
        assertThat(ledger.merge(stays.id(), goes.id()).player().details().name())
                .contains("B. Trial");
        assertThat(ids(Search.text("tria"))).containsExactly(moved, own);
        assertThat(ledger.lesson(own).orElseThrow().lesson().playerName()).contains("B. Trial");
        assertThat(ledger.check()).isEmpty();
    }

    @Test
    void playersWhoCannotBeOneStayTwo() throws Exception {
        Player right = player("B. Trial");
        int lesson = keep(right, TestLessons.lesson("B. Trial")).id();
        Player left = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.LEFT));
        for (int other : new int[] {right.id(), left.id(), 99}) {
            assertThatExceptionOfType(LedgerException.class)
                    .as("with %d", other)
                    .isThrownBy(() -> ledger.merge(other, right.id()))
                    .extracting(LedgerException::fault)
                    .isEqualTo(Fault.UNKNOWN);
        }
        assertThat(ledger.players()).containsExactly(left, right);
        assertThat(ledger.lessonNumbers(Optional.of(right.id()))).containsExactly(lesson);
        ledger.database()
                .<Integer>write("not altered", h -> h.execute("update lesson set notes = 'x' where id = ?", lesson));
        Player stays = player("B. Trial");
        assertThatExceptionOfType(LedgerException.class)
                .as("a damaged lesson hinders all of it")
                .isThrownBy(() -> ledger.merge(stays.id(), right.id()))
                .extracting(LedgerException::fault)
                .isEqualTo(Fault.DAMAGED);
        assertThat(ledger.players()).containsExactly(stays, left, right);
    }

    /** While others begin lessons of the player who goes and give lessons to them: nothing is lost with that player. */
    @Test
    void whatOtherBaysDoMeanwhileIsNotLost() throws Exception {
        Player stays = player("Bea Trial");
        for (int round = 0; round < 8; round++) {
            Player goes = player("B. Trial " + round);
            Player third = player("C. Other");
            int given = keep(third, TestLessons.lesson("C. Other")).id();
            var pool = java.util.concurrent.Executors.newFixedThreadPool(2);
            try {
                java.util.concurrent.CountDownLatch ready = new java.util.concurrent.CountDownLatch(2);
                List<java.util.concurrent.Future<Integer>> asked = new java.util.ArrayList<>();
                for (int i = 0; i < 2; i++) {
                    boolean gives = i == 0;
                    asked.add(pool.submit(() -> {
                        try (Ledger own = open("bay 2", Clock.systemUTC())) {
                            ready.countDown();
                            assertThat(ready.await(2, java.util.concurrent.TimeUnit.MINUTES))
                                    .as("the other has opened it too")
                                    .isTrue();
                            if (gives) {
                                own.give(given, goes.id());
                                return given;
                            }
                            return own.keep(goes.id(), TestLessons.lesson("B. Trial"), List.of())
                                    .id();
                        } catch (LedgerException e) {
                            assertThat(e.getMessage()).contains("there is no player " + goes.id());
                            return gives ? given : 0;
                        }
                    }));
                }
                if (!ready.await(2, java.util.concurrent.TimeUnit.MINUTES)) {
                    for (var one : asked) {
                        // whoever could not open it says why
                        one.get(3, java.util.concurrent.TimeUnit.MINUTES);
                    }
                }
                ledger.merge(stays.id(), goes.id());
                for (var one : asked) {
                    int id = one.get();
                    assertThat(id == 0 || ledger.lesson(id).isPresent())
                            .as("lesson %d in round %d", id, round)
                            .isTrue();
                }
            } finally {
                pool.shutdown();
            }
        }
        assertThat(ledger.check()).isEmpty();
    }
}
