package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;

/** Stills and pages of the sample lessons. */
class HandoutTest {

    private static Lesson lesson(String id) throws Exception {
        return LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"));
    }

    private static Handout handout(Lesson lesson) {
        Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
        lesson.sheet()
                .views()
                .forEach(v -> pictures.put(
                        v.view(), new BufferedImage(v.widthPx(), v.heightPx(), BufferedImage.TYPE_INT_RGB)));
        return Handout.of(lesson, Assessment.of(lesson.sheet()), pictures, Words.english());
    }

    /** The lines lie where the landmarks were clicked, to what the fit leaves (a few pixels). */
    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "left-handed", "all-good"})
    void linesLieOnTheLandmarks(String id) throws Exception {
        Lesson lesson = lesson(id);
        List<Line> lines = OverlayShapes.of(Assessment.of(lesson.sheet()), View.FACE_ON);
        Line plumb =
                lines.stream().filter(l -> l.kind() == Kind.PLUMB).findFirst().orElseThrow();
        ImagePoint shoulder = lesson.sheet()
                .view(View.FACE_ON)
                .orElseThrow()
                .mark(Landmark.LEAD_SHOULDER)
                .orElseThrow()
                .at();
        assertThat(plumb.points().get(0).distancePx(shoulder)).isLessThan(8);
        Line heels =
                lines.stream().filter(l -> l.kind() == Kind.HEELS).findFirst().orElseThrow();
        ImagePoint heel = lesson.sheet()
                .view(View.FACE_ON)
                .orElseThrow()
                .mark(Landmark.TRAIL_HEEL)
                .orElseThrow()
                .at();
        assertThat(heels.points().get(0).distancePx(heel)).isLessThan(8);
    }

    @Test
    void theStillShowsWhatToChange() throws Exception {
        Handout handout = handout(lesson("before"));
        assertThat(handout.assessment().advice().first()).isPresent();
        assertThat(handout.still().width()).isEqualTo(1080);
        assertThat(handout.still().texts().stream().flatMap(t -> t.block().lines().stream()))
                .anyMatch(l -> l.startsWith("AS ·"))
                .noneMatch(l -> l.contains("Sample"));
    }

    /** A picture carries nothing but the picture: only the chunks a plain PNG needs. */
    @Test
    void thePictureCarriesNoNotes() throws Exception {
        byte[] png = handout(lesson("after")).png();
        String text = new String(png, StandardCharsets.ISO_8859_1);
        assertThat(text)
                .doesNotContain("tEXt")
                .doesNotContain("iTXt")
                .doesNotContain("eXIf")
                .doesNotContain("tIME");
        assertThat(ImageIO.read(new ByteArrayInputStream(png))).isNotNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "left-handed", "all-good"})
    void thePageIsOnePageOfSelectableText(String id) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(handout(lesson(id)).pdf(Paper.A4))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(pdf)).contains("Take care").contains("licensed");
            for (var name : pdf.getPage(0).getResources().getFontNames()) {
                PDFont font = pdf.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            }
        }
    }

    /** A page that says nothing need change while views cannot tell would claim more than the findings. */
    @Test
    void saysAllIsWellOnlyWhenAllIsJudgedInRange() throws Exception {
        Lesson lesson = lesson("all-good");
        Assessment assessment = Assessment.of(lesson.sheet());
        List<Finding> sure = assessment.advice().findings().stream()
                .filter(f -> f.verdict().equals(Optional.of(Verdict.IN_RANGE)))
                .toList();
        assertThat(assessment.advice().findings()).anyMatch(f -> f.verdict().equals(Optional.of(Verdict.CANNOT_TELL)));
        assertThat(html(lesson, assessment, assessment.advice()))
                .doesNotContain("Nothing to change")
                .contains("Nothing is surely out of range")
                .contains("these pictures cannot tell.");
        assertThat(html(lesson, assessment, new Advice(List.of(), Optional.empty(), Optional.empty())))
                .doesNotContain("Nothing to change");
        Advice untold = new Advice(
                assessment.advice().findings().stream()
                        .filter(f -> f.verdict().equals(Optional.of(Verdict.CANNOT_TELL)))
                        .toList(),
                Optional.empty(),
                Optional.empty());
        assertThat(html(lesson, assessment, untold))
                .contains("Nothing was measured that could be judged", "do not show what was marked well enough")
                .doesNotContain("What was good", "were not marked");
        Advice withoutRange = new Advice(
                sure.stream()
                        .map(f -> new Finding(f.reading(), Optional.empty(), Optional.empty()))
                        .toList(),
                Optional.empty(),
                Optional.empty());
        assertThat(html(lesson, assessment, withoutRange))
                .contains("Nothing was measured that could be judged", "For this club nothing is recommended")
                .doesNotContain("were not marked");
        assertThat(html(lesson, assessment, new Advice(sure, Optional.empty(), Optional.empty())))
                .contains("Nothing to change");
    }

    private static String html(Lesson lesson, Assessment assessment, Advice advice) {
        return new String(
                Handout.of(
                                lesson,
                                new Assessment(assessment.sheet(), assessment.posture(), assessment.readings(), advice),
                                Map.of(),
                                Words.english())
                        .html(),
                StandardCharsets.UTF_8);
    }

    /** A word without a space, such as a long address, is broken within the paper's width. */
    @Test
    void longWordsStayOnThePaper() throws Exception {
        Handout plain = handout(lesson("before"));
        Handout spoken = new Handout(
                plain.lesson(), plain.assessment(), plain.pictures(), plain.words(), plain.options(), "x".repeat(200));
        try (PDDocument pdf = Loader.loadPDF(spoken.pdf(Paper.A4))) {
            float width = pdf.getPage(0).getMediaBox().getWidth();
            List<Float> ends = new ArrayList<>();
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    ends.add(position.getXDirAdj() + position.getWidthDirAdj());
                }
            }.getText(pdf);
            assertThat(ends).hasSizeGreaterThan(200).allMatch(x -> x < width);
        }
    }

    @Test
    void hostileWordsAreEscaped() throws Exception {
        Lesson plain = lesson("before");
        Lesson hostile = new Lesson(
                Optional.of("<script>alert(1)</script> \"O'Neil\" & \u0007\uD83D\uDE00"),
                plain.recorded(),
                plain.sheet(),
                plain.clips(),
                plain.unfinished(),
                plain.words(),
                plain.kept());
        Handout with = handout(hostile);
        Handout spoken = with.withOptions(StillOptions.USUAL.withSigned(Signed.FULL_NAME_AND_DATE))
                .withCoachsWords("</blockquote><img src=x onerror=alert(1)>");
        String html = new String(spoken.html(), StandardCharsets.UTF_8);
        assertThat(html)
                .doesNotContain("<script")
                .doesNotContain("<img src=x")
                .contains("&lt;script&gt;")
                .doesNotContain("http:")
                .doesNotContain("https:");
        assertThat(spoken.pdf(Paper.A4)).isNotEmpty();
        assertThat(with.still().width()).isEqualTo(1080);
    }
}
