package org.toeline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;

/** Words pinned to a picture, in the document. */
class PinnedWordsDocumentTest {

    private static String document(String words) {
        return """
                {"format": "toeline-lesson", "version": 1, "player": {"handedness": "right"}, "club": "driver",
                 "views": [{"view": "face-on", "width": 1280, "height": 720%s}]}""".formatted(words);
    }

    private static Lesson parse(String words) throws DocumentException {
        return LessonDocument.parse(document(words).getBytes(StandardCharsets.UTF_8), "a.lesson.json");
    }

    @Test
    void theyAreReadAndWrittenWithWhatIsUnknownOfThem() throws Exception {
        Lesson lesson = parse(", \"words\": [{\"text\": \"elbow in\", \"x\": 600.5, \"y\": 300, \"textX\": 400, "
                + "\"textY\": 120, \"still\": true, \"colour\": \"red\"}]");
        PinnedWords words =
                new PinnedWords(View.FACE_ON, "elbow in", new ImagePoint(600.5, 300), new ImagePoint(400, 120), true);
        assertThat(lesson.words(View.FACE_ON)).containsExactly(words);
        String written = LessonDocument.line(lesson);
        assertThat(written).contains("\"colour\":\"red\"", "\"x\":600.5", "\"still\":true");
        assertThat(LessonDocument.parse(written.getBytes(StandardCharsets.UTF_8), "b")
                        .words())
                .containsExactly(words);
        String without = LessonDocument.line(lesson.withoutWords(View.FACE_ON));
        assertThat(without).doesNotContain("elbow in", "words");
    }

    @Test
    void aDocumentWithoutThemStaysAsItWas() throws Exception {
        assertThat(parse("").words()).isEmpty();
        assertThat(LessonDocument.line(parse(""))).doesNotContain("words");
    }

    /** Not shown to the player unless the document says so. */
    @Test
    void theyAreOffTheStillUnlessItIsSaid() throws Exception {
        assertThat(parse(", \"words\": [{\"text\": \"a\", \"x\": 1, \"y\": 1, \"textX\": 1, \"textY\": 1}]")
                        .words()
                        .get(0)
                        .onStill())
                .isFalse();
    }

    @Test
    void whatCannotBeIsRefusedWithItsPlace() {
        for (String wrong : List.of(
                "{\"text\": \"a\", \"x\": 1281, \"y\": 1, \"textX\": 1, \"textY\": 1}",
                "{\"text\": \"a\", \"x\": 1, \"y\": 1, \"textX\": 1, \"textY\": -2}",
                "{\"text\": \"  \", \"x\": 1, \"y\": 1, \"textX\": 1, \"textY\": 1}",
                "{\"text\": \"" + "a".repeat(121) + "\", \"x\": 1, \"y\": 1, \"textX\": 1, \"textY\": 1}",
                "{\"text\": \"a\", \"x\": 1, \"y\": 1}")) {
            assertThatExceptionOfType(DocumentException.class)
                    .isThrownBy(() -> parse(", \"words\": [" + wrong + "]"))
                    .withMessageContaining("words");
        }
    }
}
