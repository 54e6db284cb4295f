package org.toeline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Laying;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Stature;
import org.toeline.mark.Takes;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.study.Scenes;

class LessonDocumentTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String DOCUMENT = """
        {"format": "toeline-lesson", "version": 1, "weather": {"wind": "none"},
         "player": {"name": "B. Trial", "handedness": "left", "note": "tall"},
         "recorded": "2026-04-03T09:05:00+01:00", "club": "mid-iron",
         "floor": {"points": [{"id": "a", "t": -0.5, "h": 0.1, "colour": "red"}, {"id": "b", "t": 0.5, "h": 0.1}],
                   "sd": 0.004},
         "views": [{"view": "face-on", "clip": "one.mp4", "time": 1.25, "width": 1280, "height": 720,
           "lens": {"focal": 980.0, "focalSd": 40.0, "k1": 0.01},
           "floorMarks": [{"point": "a", "x": 400.5, "y": 600.25}],
           "verticals": [{"x1": 120.0, "y1": 80.0, "x2": 124.5, "y2": 690.0, "what": "post"}],
           "ball": {"x": 600.5, "y": 640.0, "diameter": 12.5},
           "marks": [{"landmark": "lead-shoulder", "x": 635.0, "y": 202.5, "sd": 1.5, "by": "hand"},
                     {"landmark": "trail-shoulder", "x": 555, "y": 210.0}]}]}
        """;

    private static Lesson parse(String text) throws DocumentException {
        return LessonDocument.parse(text.getBytes(StandardCharsets.UTF_8), "test.lesson.json");
    }

    @Test
    void readsWhatItSays() throws DocumentException {
        Lesson lesson = parse(DOCUMENT);
        assertThat(lesson.playerName()).contains("B. Trial");
        MarkSheet sheet = lesson.sheet();
        assertThat(sheet.handedness()).isEqualTo(Handedness.LEFT);
        assertThat(sheet.club()).isEqualTo(Club.MID_IRON);
        assertThat(sheet.takes()).as("left out").isEqualTo(Takes.SEPARATE);
        ViewMarks view = sheet.view(View.FACE_ON).orElseThrow();
        assertThat(view.mark(Landmark.LEAD_SHOULDER))
                .contains(Mark.placed(Landmark.LEAD_SHOULDER, new ImagePoint(635, 202.5), 1.5));
        assertThat(view.mark(Landmark.TRAIL_SHOULDER).orElseThrow().sigmaPx())
                .as("the coach's own click spread")
                .isEqualTo(MarkSheet.USUAL_CLICK_SIGMA_PX);
        assertThat(lesson.clips().get(View.FACE_ON).seconds()).hasValue(1.25);
    }

    /** Unknown keys at every depth stay, and what was not changed is written as it was. */
    @Test
    void roundTripKeepsEverything() throws Exception {
        Lesson lesson = parse(DOCUMENT);
        var before = JSON.readTree(DOCUMENT);
        ((com.fasterxml.jackson.databind.node.ObjectNode) before).put("takes", "separate");
        assertThat(JSON.readTree(LessonDocument.bytes(lesson))).isEqualTo(before);
    }

    /** What is known besides the marks comes back too: a height told or measured, a layout laid again. */
    @Test
    void keepsHeightAndLaying(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("known.lesson.json");
        for (Stature stature : List.of(Stature.told(1.80), new Stature(1.655, 0.01))) {
            MarkSheet sheet = Scenes.separateTakesWithBentLens(3).withStature(Optional.of(stature));
            sheet = sheet.withFloor(sheet.floor().withLaying(Laying.AGAIN));
            LessonDocument.write(Lesson.of(sheet), file);
            assertThat(LessonDocument.read(file).sheet()).isEqualTo(sheet);
            LessonDocument.write(LessonDocument.read(file).withSheet(sheet.withStature(Optional.empty())), file);
            assertThat(LessonDocument.read(file).sheet().stature()).isEmpty();
        }
        assertThatThrownBy(() -> parse(DOCUMENT.replace("\"handedness\"", "\"height\": 178, \"handedness\"")))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("player.height");
    }

    /** What the coach says of a clip's rate goes with the lesson, and away with a word. */
    @Test
    void keepsTheRateThatAClipWasFilmedAt(@TempDir Path folder) throws Exception {
        Lesson read = LessonDocument.parse(
                DOCUMENT.replace("\"time\": 1.25", "\"time\": 1.25, \"filmedAt\": 240")
                        .getBytes(StandardCharsets.UTF_8),
                "lesson");
        ClipMoment moment = read.clips().get(View.FACE_ON);
        assertThat(moment.filmedAt()).hasValue(240);
        assertThat(moment.moved("two.mp4").at(2).filmedAt()).hasValue(240);
        Path file = folder.resolve("filmed.lesson.json");
        LessonDocument.write(read, file);
        assertThat(LessonDocument.read(file).clips()).isEqualTo(read.clips());
        LessonDocument.write(read.withClip(View.FACE_ON, moment.filmed(OptionalDouble.empty())), file);
        assertThat(Files.readString(file)).doesNotContain("filmedAt");
        assertThatThrownBy(() -> LessonDocument.parse(
                        DOCUMENT.replace("\"time\": 1.25", "\"filmedAt\": 0").getBytes(StandardCharsets.UTF_8),
                        "lesson"))
                .hasMessageContaining("views[0].filmedAt");
    }

    @Test
    void aMovedMarkKeepsItsUnknownKeys() throws Exception {
        Lesson lesson = parse(DOCUMENT);
        ViewMarks view = lesson.sheet().view(View.FACE_ON).orElseThrow();
        Mark moved = view.mark(Landmark.LEAD_SHOULDER).orElseThrow().movedTo(new ImagePoint(640, 203));
        Lesson changed =
                lesson.withSheet(lesson.sheet().withView(view.withMark(moved).withoutMark(Landmark.TRAIL_SHOULDER)));
        var marks = JSON.readTree(LessonDocument.bytes(changed))
                .path("views")
                .path(0)
                .path("marks");
        assertThat(marks).hasSize(1);
        assertThat(marks.path(0).path("by").asText()).isEqualTo("hand");
        assertThat(marks.path(0).path("x").asDouble()).isEqualTo(640);
    }

    @Test
    void aFullSheetComesBackTheSame(@TempDir Path folder) throws Exception {
        for (long seed = 0; seed < 5; seed++) {
            MarkSheet sheet = Scenes.separateTakesWithBentLens(seed);
            Path file = folder.resolve("s" + seed + ".lesson.json");
            LessonDocument.write(Lesson.of(sheet), file);
            assertThat(LessonDocument.read(file).sheet()).isEqualTo(sheet);
        }
        try (var files = Files.list(folder)) {
            assertThat(files).as("nothing left beside").hasSize(5);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"version\": 1 | \"version\": 2 | version",
                "\"club\": \"mid-iron\" | \"club\": \"spoon\" | club",
                "\"x\": 635.0 | \"x\": \"left\" | views[0].marks[0].x",
                "\"x\": 635.0 | \"x\": 6350 | outside the picture; x must be 0 to 1280",
                "\"landmark\": \"lead-shoulder\" | \"landmark\": \"trail-shoulder\" | marked twice",
                "\"landmark\": \"lead-shoulder\" | \"landmark\": \"left-shoulder\" | views[0].marks[0].landmark",
                "\"t\": 0.5 | \"t\": -0.5 | lie in one place",
                "\"point\": \"a\" | \"point\": \"c\" | which the floor layout does not have",
                "\"width\": 1280 | \"width\": 0 | views[0].width",
                "\"focal\": 980.0 | \"focal\": -3 | views[0].lens.focal",
                "\"sd\": 1.5 | \"sd\": 0 | views[0].marks[0].sd",
                "\"diameter\": 12.5 | \"diameter\": 0 | views[0].ball.diameter",
                "\"x2\": 124.5, \"y2\": 690.0 | \"x2\": 121.0, \"y2\": 81.0 | at least 8 px apart",
                "\"recorded\": \"2026-04-03T09:05:00+01:00\" | \"recorded\": \"yesterday\" | recorded",
                "\"width\": 1280 | \"handedness\": \"right\", \"width\": 1280 | all views of a lesson show one player",
                "\"format\": \"toeline-lesson\", |  | not a lesson",
                "\"format\": \"toeline-lesson\" | \"format\": \"toeline-lenses\" | not a lesson",
                "\"club\" | \"format\": \"x\", \"club\" | line 3",
            })
    void refusesWithOneSentence(String what, String by, String says) {
        String text = DOCUMENT.replace(what, by == null ? "" : by);
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> parse(text))
                .satisfies(e -> assertThat(e.getMessage())
                        .startsWith("test.lesson.json")
                        .contains(says)
                        .doesNotContain("\n"));
    }

    /** Cut, flipped and stuffed documents: a lesson or a sentence, never anything else. */
    @Test
    void damagedDocumentsAreALessonOrASentence() {
        SplittableRandom random = new SplittableRandom(77);
        byte[] whole = DOCUMENT.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 1000; i++) {
            byte[] bytes = whole.clone();
            for (int k = random.nextInt(4); k >= 0; k--) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            if (random.nextBoolean()) {
                bytes = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
            }
            try {
                LessonDocument.parse(bytes, "damaged");
            } catch (DocumentException e) {
                assertThat(e.getMessage()).startsWith("damaged").doesNotContain("\n");
            }
        }
    }

    /** Cut at every byte: only the whole is a lesson. */
    @Test
    void cutAtEveryByteItIsNoLesson() {
        byte[] whole = DOCUMENT.strip().getBytes(StandardCharsets.UTF_8);
        for (int length = 0; length < whole.length; length++) {
            byte[] cut = java.util.Arrays.copyOf(whole, length);
            assertThatExceptionOfType(DocumentException.class)
                    .isThrownBy(() -> LessonDocument.parse(cut, "cut"))
                    .satisfies(e -> assertThat(e.getMessage()).startsWith("cut").doesNotContain("\n"));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"NaN", "1e999", "-1e999", "\"635\"", "null", "true", "[635]", "{}", "1e", "--1"})
    void whatIsNoNumberIsRefused(String number) {
        String text = DOCUMENT.replace("\"x\": 635.0", "\"x\": " + number);
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> parse(text))
                .satisfies(e -> assertThat(e.getMessage())
                        .startsWith("test.lesson.json")
                        .doesNotContain("\n"));
    }

    @Test
    void boundlessDepthAndHalfCharactersAreRefused() {
        for (String deep : java.util.List.of(
                "[".repeat(100_000),
                "{\"a\":".repeat(100_000),
                DOCUMENT.replace("\"none\"", "[".repeat(100_000) + "]".repeat(100_000)))) {
            assertThatExceptionOfType(DocumentException.class)
                    .isThrownBy(() -> parse(deep))
                    .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(500));
        }
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> parse(DOCUMENT.replace("tall", "\\ud83d tall")))
                .withMessageContaining("half of a character");
    }

    /** Where the new one cannot be put in place, the old one stays. */
    @Test
    void aFailedWriteLeavesTheOldOne(@TempDir Path folder) throws Exception {
        Path taken = Files.createDirectories(folder.resolve("lesson.json/inside"));
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> LessonDocument.write(parse(DOCUMENT), taken.getParent()))
                .withMessageContaining("untouched");
        assertThat(taken).exists();
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }
}
