package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.rows.Aside;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Search;
import org.toeline.ledger.store.rows.TakenIn;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** What a ledger promises, whatever database keeps it. */
abstract class LedgerContract extends OnePersonContract {

    @Test
    void keepsAPlayer() throws Exception {
        PlayerDetails all = new PlayerDetails(
                Optional.of("  Ana Müller-Sample "),
                Handedness.LEFT,
                OptionalDouble.of(1.71),
                OptionalInt.of(1988),
                "knee operated");
        Player kept = ledger.addPlayer(all);
        assertThat(kept.details().name()).contains("Ana Müller-Sample");
        assertThat(ledger.player(kept.id())).contains(kept);
        Player child = ledger.addPlayer(PlayerDetails.of(Optional.empty(), Handedness.RIGHT));
        assertThat(child.details().name()).as("no name need be given").isEmpty();
        assertThat(ledger.players()).containsExactly(child, kept);
        assertThat(ledger.playersNamed("Ana Müller-Sample", Handedness.LEFT)).containsExactly(kept);
        assertThat(ledger.playersNamed("Ana Müller-Sample", Handedness.RIGHT)).isEmpty();
    }

    @Test
    void aLessonComesBackAsItWent() throws Exception {
        Lesson lesson = TestLessons.lesson("B. Trial");
        KeptLesson kept = keep(player("B. Trial"), lesson);
        assertThat(LessonDocument.bytes(kept.lesson())).isEqualTo(LessonDocument.bytes(lesson));
        assertThat(kept.findings()).isEqualTo(TestLessons.findings(7.4));
        assertThat(ledger.lesson(kept.id())).contains(kept);
        assertThat(ledger.lessonLike(lesson)).contains(kept.id());
        assertThat(ledger.lesson(kept.id() + 1)).isEmpty();
    }

    @Test
    void savingAgainReplacesTheOld() throws Exception {
        KeptLesson kept = keep(player("B. Trial"), TestLessons.lesson("B. Trial"));
        Lesson changed = TestLessons.lesson("B. Trial", "Nothing yet", 640);
        assertThat(ledger.save(kept.id(), kept.version(), changed, TestLessons.findings(9)))
                .isEqualTo(new Saved.Done(2));
        KeptLesson again = ledger.lesson(kept.id()).orElseThrow();
        assertThat(LessonDocument.bytes(again.lesson())).isEqualTo(LessonDocument.bytes(changed));
        assertThat(again.findings()).isEqualTo(TestLessons.findings(9));
        assertThat(ledger.find(Search.text("grip"))).as("the old notes").isEmpty();
        assertThat(ledger.find(Search.text("nothing"))).hasSize(1);
    }

    /** Two bays have one lesson open: the second to save is told, and both versions are there. */
    @Test
    void anotherBaysChangeIsNotOverwritten() throws Exception {
        KeptLesson kept = keep(player("B. Trial"), TestLessons.lesson("B. Trial"));
        Lesson theirs = TestLessons.lesson("B. Trial", "Theirs", 640);
        Lesson mine = TestLessons.lesson("B. Trial", "Mine", 650);
        Clock clock = Clock.fixed(Instant.parse("2026-05-01T08:42:10Z"), ZoneId.of("Europe/Paris"));
        try (Ledger other = open("bay 2", clock)) {
            assertThat(other.save(kept.id(), 1, theirs, List.of())).isEqualTo(new Saved.Done(2));
        }
        Saved saved = ledger.save(kept.id(), 1, mine, TestLessons.findings(8));
        assertThat(saved).isInstanceOf(Saved.Conflict.class);
        Saved.Conflict conflict = (Saved.Conflict) saved;
        assertThat(conflict.sentence()).isEqualTo("changed by bay 2 at 10:42; yours is kept beside it");
        assertThat(conflict.theirs().version()).isEqualTo(2);
        assertThat(ledger.lesson(kept.id()).orElseThrow().lesson().notes()).isEqualTo("Theirs");
        List<Aside> asides = ledger.asides(kept.id());
        assertThat(asides).singleElement().satisfies(a -> {
            assertThat(a.id()).isEqualTo(conflict.asideId());
            assertThat(a.baseVersion()).isEqualTo(1);
            assertThat(LessonDocument.bytes(a.lesson())).isEqualTo(LessonDocument.bytes(mine));
        });
        ledger.dropAside(conflict.asideId());
        assertThat(ledger.asides(kept.id())).isEmpty();
    }

    @Test
    void aNewNameGoesIntoTheLessons() throws Exception {
        Player player = player("B. Trial");
        KeptLesson kept = keep(player, TestLessons.lesson("B. Trial"));
        Player renamed = ledger.changePlayer(
                        new Player(player.id(), 1, player.details().withName(Optional.of("Bea Trial"))))
                .orElseThrow();
        assertThat(renamed.version()).isEqualTo(2);
        assertThat(ledger.lesson(kept.id()).orElseThrow().lesson().playerName()).contains("Bea Trial");
        assertThat(ledger.find(Search.text("bea"))).hasSize(1);
        assertThat(ledger.changePlayer(new Player(player.id(), 1, player.details())))
                .as("made from the old one")
                .isEmpty();
    }

    @Test
    void findsByTwoLettersRecentFirst() throws Exception {
        Player ana = player("Ana Müller");
        Player bert = player("Bert Sample");
        int first = keep(ana, TestLessons.lesson("Ana Müller")).id();
        int second = keep(bert, TestLessons.lesson("Bert Sample", "like Ana, ball back", 600))
                .id();
        int third = keep(ana, TestLessons.lesson("Ana Müller", "%_'; drop table lesson", 610))
                .id();
        assertThat(ids(Search.RECENT)).containsExactly(third, second, first);
        assertThat(ids(Search.text("an"))).as("the notes too").containsExactly(third, second, first);
        assertThat(ids(Search.text("mu"))).as("without the accent").containsExactly(third, first);
        assertThat(ids(Search.text("MÜ"))).containsExactly(third, first);
        assertThat(ids(Search.text("be sa"))).containsExactly(second);
        assertThat(ids(Search.text("be mu"))).isEmpty();
        assertThat(ids(Search.text("tabl"))).containsExactly(third);
        assertThat(ids(Search.text("%"))).as("no word at all").hasSize(3);
        assertThat(ids(Search.text("an").withMost(1))).containsExactly(third);
        assertThat(ids(Search.text("bay").withPlayer(bert.id()))).containsExactly(second);
    }

    @Test
    void filtersByClubFindingAndDay() throws Exception {
        int id = keep(player("B. Trial"), TestLessons.lesson("B. Trial")).id();
        assertThat(ids(Search.RECENT.withClub(Club.DRIVER))).containsExactly(id);
        assertThat(ids(Search.RECENT.withClub(Club.WEDGE))).isEmpty();
        assertThat(ids(Search.RECENT.withFinding("shoulder-tilt", TestLessons.verdicts("too-close", "out-low"))))
                .hasSize(1);
        assertThat(ids(Search.RECENT.withFinding("shoulder-tilt", TestLessons.verdicts("in-range"))))
                .isEmpty();
        assertThat(ids(Search.RECENT.withFinding("stance-width", TestLessons.verdicts())))
                .hasSize(1);
        assertThat(ids(Search.RECENT.between(LocalDate.of(2026, 4, 3), LocalDate.of(2026, 4, 3))))
                .hasSize(1);
        assertThat(ids(Search.RECENT.between(LocalDate.of(2026, 4, 4), LocalDate.of(2026, 5, 1))))
                .isEmpty();
        assertThat(ledger.find(Search.RECENT).get(0).first()).contains("shoulder-tilt");
    }

    @Test
    void acrossLessonsInTheirOrder() throws Exception {
        Player player = player("B. Trial");
        int first = ledger.keep(player.id(), TestLessons.lesson("B. Trial"), TestLessons.findings(7))
                .id();
        int second = ledger.keep(player.id(), TestLessons.lesson("B. Trial"), List.of())
                .id();
        int third = ledger.keep(player.id(), TestLessons.ofSetup("B. Trial", "as told"), TestLessons.findings(9))
                .id();
        List<LessonFindings> across = ledger.acrossLessons(player.id(), Club.DRIVER);
        assertThat(across).extracting(LessonFindings::lessonId).containsExactly(first, second, third);
        assertThat(across.get(0).findings()).isEqualTo(TestLessons.findings(7));
        assertThat(across.get(1).findings()).isEmpty();
        assertThat(across.get(0).setup()).isEmpty();
        assertThat(across.get(2).setup()).isEqualTo("as told");
        assertThat(ledger.acrossLessons(player.id(), Club.WEDGE)).isEmpty();
    }

    /** The clock goes back to 1970: the lesson kept last is still the last (and stays so in a summer-time fold). */
    @Test
    void orderDoesNotAskTheClock() throws Exception {
        Player player = player("B. Trial");
        int first = keep(player, TestLessons.lesson("B. Trial")).id();
        try (Ledger early = open("bay 1", Clock.fixed(Instant.EPOCH, ZoneId.of("UTC")))) {
            int second = early.keep(player.id(), TestLessons.lesson("B. Trial"), List.of())
                    .id();
            assertThat(ids(Search.RECENT)).containsExactly(second, first);
            assertThat(early.lesson(second).orElseThrow().changedAt()).isEqualTo("1970-01-01T00:00:00Z");
        }
    }

    @Test
    void theMachinesLanguageChangesNothing() throws Exception {
        Locale before = Locale.getDefault();
        try {
            for (String language : List.of("tr", "de", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(language));
                Player player = player("ILKIN I. " + language);
                KeptLesson kept = keep(player, TestLessons.lesson("ILKIN I. " + language));
                assertThat(LessonDocument.bytes(kept.lesson()))
                        .isEqualTo(LessonDocument.bytes(TestLessons.lesson("ILKIN I. " + language)));
                assertThat(kept.findings()).isEqualTo(TestLessons.findings(7.4));
                assertThat(kept.changedAt()).matches("[0-9T:+Z-]+");
                assertThat(ids(Search.text("ilk").withPlayer(player.id()))).containsExactly(kept.id());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aLessonOfNobodyIsRefused() {
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> ledger.keep(99, TestLessons.lesson("X"), List.of()))
                .withMessageContaining("there is no player 99")
                .satisfies(e -> assertThat(e.fault()).isEqualTo(LedgerException.Fault.UNKNOWN));
    }

    @Test
    void keepsShots() throws Exception {
        int id = keep(player("B. Trial"), TestLessons.lesson("B. Trial")).id();
        Shot shot =
                new Shot(Map.of(ShotFigure.BALL_SPEED, 68.25, ShotFigure.SPIN_AXIS, -0.031), "thin", "a mishit", "B");
        Shot other = new Shot(Map.of(ShotFigure.CARRY, 201.5));
        ledger.keepShots(id, List.of(shot, other));
        assertThat(ledger.shots(id)).containsExactly(shot, other);
        ledger.keepShots(id, List.of(other));
        assertThat(ledger.shots(id)).containsExactly(other);
        assertThat(ledger.save(id, 1, TestLessons.lesson("B. Trial", "more", 600), List.of()))
                .isEqualTo(new Saved.Done(2));
        assertThat(ledger.shots(id)).as("a gesture leaves the shots").containsExactly(other);
    }

    /** Names that are trouble elsewhere are names here. */
    @Test
    void strangeNamesStay() throws Exception {
        for (String name : List.of(
                "..",
                "CON",
                "dot.",
                "x".repeat(255),
                "<script>alert(1)</script>",
                "\u202Eevil",
                "=1+1",
                "Zoë \uD83D\uDE00 O'Neil")) {
            assertThat(player(name).details().name()).contains(name);
            assertThat(ledger.playersNamed(name, Handedness.RIGHT)).hasSize(1);
        }
        assertThat(player("a\0b").details().name())
                .as("no database keeps this character")
                .contains("ab");
    }

    @Test
    void aLetterThatIsTwoElsewhereIsFoundAsTwo() throws Exception {
        int id = keep(player("Hanna Groß"), TestLessons.lesson("Hanna Groß")).id();
        for (String typed : new String[] {"gross", "GROSS", "groß", "gro"}) {
            assertThat(ledger.find(Search.text(typed)))
                    .as(typed)
                    .extracting(LessonLine::id)
                    .containsExactly(id);
        }
    }

    @Test
    void theSameDocumentFromManySidesIsThereOnce() throws Exception {
        var lesson = TestLessons.lesson("D. Many");
        var pool = java.util.concurrent.Executors.newFixedThreadPool(8);
        try {
            List<java.util.concurrent.Future<Integer>> taken = new java.util.ArrayList<>();
            for (int i = 0; i < 16; i++) {
                taken.add(pool.submit(() -> {
                    try (Ledger own = open("bay 9", Clock.systemUTC())) {
                        return own.takeIn(lesson, List.of(), Optional.empty()).lessonId();
                    }
                }));
            }
            java.util.Set<Integer> ids = new java.util.HashSet<>();
            for (var one : taken) {
                ids.add(one.get());
            }
            assertThat(ids).hasSize(1);
        } finally {
            pool.shutdown();
        }
        assertThat(ledger.find(Search.text("many"))).hasSize(1);
        assertThat(ledger.playersNamed("D. Many", Handedness.RIGHT)).hasSize(1);
    }

    /** An import done twice, with work in between, makes no second lesson of the file. */
    @Test
    void aDocumentTakenInAndChangedSinceIsStillTheSame() throws Exception {
        Lesson document = TestLessons.lesson("B. Twice");
        int id = ledger.takeIn(document, List.of(), Optional.empty()).lessonId();
        ledger.save(id, 1, document.withNotes("changed at the desk"), List.of());
        assertThat(ledger.takeIn(document, List.of(), Optional.empty())).isEqualTo(new TakenIn.Already(id));
        assertThat(ledger.lesson(id).orElseThrow().lesson().notes()).isEqualTo("changed at the desk");
    }

    /** One row that was altered behind the ledger's back: nothing of its lesson is shown, and no later work makes it good. */
    @Test
    void anAlteredRowIsRefusedWhereverItWouldBeShown() throws Exception {
        for (String altering : List.of(
                "update take set time_s = time_s + 0.5 where lesson_id = ?",
                "update shot set number = number + 1 where lesson_id = ?",
                "update aside set base_version = base_version + 1 where lesson_id = ?",
                "update finding set value = value + 100 where lesson_id = ?")) {
            Lesson document = TestLessons.lesson("B. Altered", altering, 610);
            int id = ledger.takeIn(document, TestLessons.findings(5), Optional.empty())
                    .lessonId();
            ledger.keepShots(id, List.of(new Shot(Map.of(ShotFigure.BALL_SPEED, 61.5), "")));
            ledger.save(id, 7, document.withNotes("aside"), List.of());
            int aside = ledger.asides(id).get(0).id();
            assertThat(ledger.database().<Integer>write("not altered", h -> h.execute(altering, id)))
                    .as(altering)
                    .isPositive();
            int which = 0;
            for (ThrowingCallable showing : List.<ThrowingCallable>of(
                    () -> ledger.lesson(id),
                    () -> ledger.takes(id),
                    () -> ledger.shots(id),
                    () -> ledger.asides(id),
                    () -> ledger.noteClip(id, View.FACE_ON, new Fingerprint(3, "0".repeat(64))),
                    () -> ledger.keepShots(id, List.of()),
                    () -> ledger.dropAside(aside),
                    () -> ledger.save(id, 1, document.withNotes("x"), List.of()),
                    () -> ledger.lesson(id))) {
                assertThatExceptionOfType(LedgerException.class)
                        .as("%s, %d", altering, ++which)
                        .isThrownBy(showing)
                        .extracting(LedgerException::fault)
                        .isEqualTo(Fault.DAMAGED);
            }
        }
    }

    /** A list has a sum of its own; where that does not hold, the list and the check say the same. */
    @Test
    void theListAndTheCheckAgreeOnWhatIsWhole() throws Exception {
        int id = ledger.takeIn(TestLessons.lesson("B. Listed"), List.of(), Optional.empty())
                .lessonId();
        assertThat(ledger.check()).isEmpty();
        ledger.database()
                .<Integer>write(
                        "not altered",
                        h -> h.execute("update row_sum set sha256 = 'x' where kind = 'line' and id = ?", id));
        assertThat(ledger.find(Search.RECENT).get(0).judged()).isEqualTo(LessonLine.Judged.DAMAGED);
        assertThat(ledger.check().orElse("whole")).contains("lesson " + id);
    }
}
