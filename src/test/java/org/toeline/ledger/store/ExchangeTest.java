package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.exchange.LessonArchive;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.exchange.ReadingsCsv;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Search;
import org.toeline.ledger.store.rows.Take;
import org.toeline.ledger.store.rows.TakenIn;
import org.toeline.mark.Handedness;
import org.toeline.mark.Stature;
import org.toeline.mark.View;

/** Lessons go out and come back the same; what is damaged leaves nothing. */
class ExchangeTest {

    @TempDir
    private Path folder;

    private LedgerPlace.Folder place;
    private Ledger ledger;
    private LessonImport imports;

    @BeforeEach
    void open() throws LedgerException {
        place = new LedgerPlace.Folder(folder.resolve("ledger"));
        ledger = Ledger.open(place, "bay 1");
        imports = new LessonImport(ledger, place, lesson -> TestLessons.findings(5));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private Path document(String name, Lesson lesson) throws DocumentException {
        Path file = folder.resolve(name);
        LessonDocument.write(lesson, file);
        return file;
    }

    @Test
    void documentsGoThroughAnEmptyLedgerUnchanged() throws Exception {
        List<Path> files = new ArrayList<>();
        for (String id : List.of("before", "after", "left-handed", "all-good")) {
            files.add(Path.of("sample-media", id, id + ".lesson.json"));
        }
        files.add(document("strange.lesson.json", TestLessons.lesson("  B. Trial \\u0000 ")));
        for (Path file : files) {
            TakenIn taken = imports.take(file, Optional.empty());
            assertThat(LessonDocument.bytes(
                            ledger.lesson(taken.lessonId()).orElseThrow().lesson()))
                    .as(file.toString())
                    .isEqualTo(LessonDocument.bytes(LessonDocument.read(file)));
            assertThat(imports.take(file, Optional.empty()))
                    .as("once is enough")
                    .isEqualTo(new TakenIn.Already(taken.lessonId()));
        }
        assertThat(ledger.find(Search.RECENT)).hasSize(files.size());
        assertThat(ledger.takes(1))
                .as("clips beside a document are known by content")
                .allSatisfy(t -> assertThat(t.fingerprint()).isPresent());
    }

    @Test
    void anArchiveBringsClipsStillsAndFindings() throws Exception {
        Lesson lesson = TestLessons.lesson("B. Trial");
        Path clip = Files.writeString(folder.resolve("one.mp4"), "a clip");
        Path still = Files.writeString(folder.resolve("picture.png"), "a still");
        Path archive = folder.resolve("out/lesson.zip");
        LessonArchive.write(lesson, TestLessons.findings(9), Map.of(View.FACE_ON, clip), List.of(still), archive);
        byte[] first = Files.readAllBytes(archive);
        TakenIn taken = imports.take(archive, Optional.empty());
        KeptLesson kept = ledger.lesson(taken.lessonId()).orElseThrow();
        assertThat(kept.findings()).as("as stated, not judged anew").isEqualTo(TestLessons.findings(9));
        Files.delete(clip);
        Take take = ledger.takes(taken.lessonId()).get(0);
        Path copy = new Media(place.media()).locate(take, folder).orElseThrow();
        assertThat(copy).hasContent("a clip").hasParent(place.media());
        List<Path> stills = Stills.of(place, taken.lessonId());
        assertThat(stills).singleElement().satisfies(s -> assertThat(s).hasContent("a still"));
        LessonArchive.write(kept.lesson(), kept.findings(), Map.of(View.FACE_ON, copy), stills, archive);
        assertThat(Files.readAllBytes(archive)).as("out again, byte for byte").isEqualTo(first);
        assertNothingUnfinished();
    }

    @Test
    void aMovedClipIsFoundByWhatItHolds() throws Exception {
        Path clip = Files.writeString(folder.resolve("one.mp4"), "the very clip");
        TakenIn taken = imports.take(document("a.lesson.json", TestLessons.lesson("B. Trial")), Optional.empty());
        Take take = ledger.takes(taken.lessonId()).get(0);
        assertThat(new Media(place.media()).locate(take, folder)).contains(clip);
        Path moved = Files.createDirectories(folder.resolve("elsewhere/deep")).resolve("renamed.mp4");
        Files.move(clip, moved);
        Files.writeString(clip, "another clip!");
        assertThat(new Media(place.media()).locate(take, folder))
                .as("of that name and size, but not it")
                .isEmpty();
        Fingerprint wanted = take.fingerprint().orElseThrow();
        assertThat(Media.search(List.of(wanted), folder)).containsExactly(Map.entry(wanted, moved));
        new Media(place.media()).copyIn(moved, wanted);
        assertThat(new Media(place.media()).locate(take, folder).orElseThrow()).hasContent("the very clip");
    }

    @Test
    void aNewPlayerIsAsTallAsTheLessonSays() throws Exception {
        Lesson lesson = TestLessons.lesson("B. Trial");
        Lesson tall = lesson.withSheet(lesson.sheet().withStature(Optional.of(new Stature(1.83, 0.01))));
        imports.take(document("tall.lesson.json", tall), Optional.empty());
        assertThat(ledger.player(1).orElseThrow().details().heightM()).hasValue(1.83);
    }

    @Test
    void whoseLessonItIs() throws Exception {
        ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
        Path file = document("a.lesson.json", TestLessons.lesson("B. Trial"));
        assertThat(imports.take(file, Optional.empty())).isEqualTo(new TakenIn.New(1, 1));
        ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
        Path second = document("b.lesson.json", TestLessons.lesson("B. Trial", "another", 600));
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> imports.take(second, Optional.empty()))
                .withMessageContaining("2 players are called “B. Trial” (number 1, number 2)");
        assertThat(imports.take(second, Optional.of(2))).isEqualTo(new TakenIn.New(2, 2));
    }

    /** Cut, flipped, stuffed: a sentence each, and the ledger's folder holds what it held. */
    @Test
    void damagedFilesLeaveNothing() throws Exception {
        Path clip = Files.writeString(folder.resolve("one.mp4"), "a clip ".repeat(50));
        Path good = folder.resolve("good.zip");
        LessonArchive.write(
                TestLessons.lesson("B. Trial"), TestLessons.findings(9), Map.of(View.FACE_ON, clip), List.of(), good);
        byte[] archive = Files.readAllBytes(good);
        byte[] text = LessonDocument.bytes(TestLessons.lesson("C. Trial"));
        ledger.find(Search.RECENT);
        List<Path> before = everything();
        Set<Integer> taken = new HashSet<>();
        SplittableRandom random = new SplittableRandom(4);
        int refused = 0;
        for (int i = 0; i < 1000; i++) {
            boolean zip = i % 2 == 0;
            byte[] bytes = (zip ? archive : text).clone();
            int damages = 1 + random.nextInt(4);
            for (int k = 0; k < damages; k++) {
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            }
            if (random.nextInt(3) == 0) {
                bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
            }
            Path file = Files.write(folder.resolve(zip ? "damaged.zip" : "damaged.lesson.json"), bytes);
            try {
                taken.add(imports.take(file, Optional.empty()).lessonId());
            } catch (DocumentException e) {
                refused++;
                assertThat(e.getMessage())
                        .startsWith(file.toString())
                        .doesNotContain("\n")
                        .hasSizeLessThan(600);
            }
        }
        assertThat(refused).as("most damage is seen").isBetween(500, 1000);
        assertThat(ledger.find(Search.RECENT.withMost(1000)))
                .as("those that are lessons yet")
                .hasSameSizeAs(taken);
        assertThat(everything()).isEqualTo(before);
        try (Stream<Path> copies = Files.list(place.media())) {
            assertThat(copies).as("the one clip of those that are whole").hasSize(1);
        }
    }

    private List<Path> everything() throws Exception {
        try (Stream<Path> files = Files.walk(place.folder())) {
            return files.filter(f -> !f.startsWith(place.media())).sorted().toList();
        }
    }

    private void assertNothingUnfinished() throws Exception {
        try (Stream<Path> files = Files.walk(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .noneMatch(n -> n.startsWith(".import") || n.startsWith(".copy") || n.endsWith(".part"));
        }
    }

    @Test
    void theTableHasOneReadingARow() throws Exception {
        Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("=HYPERLINK(\"x\")"), Handedness.LEFT));
        ledger.keep(
                player.id(),
                TestLessons.lesson("x")
                        .withPlace("@home, \"left\" bay")
                        .withPlayerName(player.details().name()),
                TestLessons.findings(-7.25));
        StringWriter out = new StringWriter();
        ReadingsCsv.write(ledger, out);
        List<String> lines = out.toString().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).startsWith("lesson,recorded,player");
        assertThat(lines.get(1))
                .isEqualTo("1,2026-04-03T09:05+01:00,\"'=HYPERLINK(\"\"x\"\")\",left,driver,\"'@home, \"\"left\"\""
                        + " bay\",shoulder-tilt,-7.25,1.25,-9.7,-4.8,deg,5.0,15.0,9.0,common-practice,too-close,yes");
        for (String cell : List.of("=1", "+1", "-1", "@a", "\t=1", "\r=1", " =1", "\uFF1D1")) {
            assertThat(ReadingsCsv.cell(cell)).as("formula").matches("(?s)\"?'.*");
        }
        assertThat(ReadingsCsv.cell("plain")).isEqualTo("plain");
        assertThat(out.toString().getBytes(StandardCharsets.UTF_8)).isNotEmpty();
    }
}
