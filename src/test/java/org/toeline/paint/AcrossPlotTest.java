package org.toeline.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.toeline.across.Comparison;
import org.toeline.across.StatedFindings;
import org.toeline.advice.Words;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.StatedFinding.StatedRange;
import org.toeline.mark.View;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;

/** What is written of a comparison. */
class AcrossPlotTest {

    private static Lesson lesson(String id) throws Exception {
        return LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"));
    }

    private static AcrossPlot plot() throws Exception {
        List<LessonFindings> lessons = List.of(
                new LessonFindings(1, Optional.empty(), "", StatedFindings.of(lesson("before"))),
                new LessonFindings(2, Optional.empty(), "", StatedFindings.of(lesson("after"))));
        Posture before = PostureEstimator.estimate(lesson("before").sheet());
        BallPlane plane = new BallPlane(View.FACE_ON, before.handedness(), 100);
        ComparedStill still = new ComparedStill(
                plane,
                "May 14",
                Optional.empty(),
                "The clip is missing.",
                Optional.of(before),
                ComparedStill.Own.DRAWN,
                Optional.empty(),
                Words.english());
        return new AcrossPlot(
                "A. Sample, driver",
                "Really changed: tee height.",
                List.of("May 14", "Jun 11"),
                List.of(still, still),
                Comparison.of(lessons, 1, 2),
                Words.english());
    }

    @Test
    void aPictureHasEveryRow() throws Exception {
        AcrossPlot plot = plot();
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(plot.png()));
        assertThat(read.getWidth()).isEqualTo(1336);
        assertThat(read.getHeight())
                .as("rows of 132 and a gap")
                .isGreaterThan(plot.comparison().rows().size() * 158);
    }

    /** No row is lost between pages, and each page has something on it. */
    @Test
    void pagesHaveEveryRow() throws Exception {
        AcrossPlot plot = plot();
        try (PDDocument document = Loader.loadPDF(plot.pdf())) {
            assertThat(document.getNumberOfPages())
                    .as("20 rows at some 9 a page, and the stills")
                    .isBetween(2, 4);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("A. Sample, driver");
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImage(page);
                long dark = 0;
                for (int i = 0; i < image.getWidth() * image.getHeight(); i++) {
                    dark += (image.getRGB(i % image.getWidth(), i / image.getWidth()) >> 8 & 255) < 100 ? 1 : 0;
                }
                assertThat(dark).as("page " + page).isGreaterThan(500);
            }
        }
    }

    /** A range that was changed between lessons is drawn as it was at each. */
    @Test
    void eachLessonHasItsOwnRange() {
        List<LessonFindings> lessons = new ArrayList<>();
        for (int i = 1; i <= 2; i++) {
            double low = i == 1 ? 0 : 10;
            lessons.add(new LessonFindings(
                    i,
                    Optional.empty(),
                    "",
                    List.of(new StatedFinding(
                            "shoulder-tilt",
                            20,
                            1,
                            18,
                            22,
                            "deg",
                            Optional.of(new StatedRange(low, low + 5, low + 2, "coach")),
                            Optional.of("out-high"),
                            StatedFinding.Place.FIRST))));
        }
        Comparison comparison = Comparison.of(lessons, 1, 2);
        BufferedImage image = new BufferedImage(500, 100, BufferedImage.TYPE_INT_RGB);
        new AcrossRow(Words.english(), comparison)
                .paint(
                        image.createGraphics(),
                        comparison.rows().get(0),
                        new java.awt.geom.Rectangle2D.Double(0, 0, 500, 100));
        assertThat(middleOfBand(image, 150))
                .as("low in the first lesson's cell")
                .isGreaterThan(middleOfBand(image, 480) + 10);
    }

    private static double middleOfBand(BufferedImage image, int x) {
        double sum = 0;
        int n = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            if ((image.getRGB(x, y) & 0xFFFFFF) == (Ink.BAND.getRGB() & 0xFFFFFF)) {
                sum += y;
                n++;
            }
        }
        assertThat(n).as("the band is there").isPositive();
        return sum / n;
    }

    private static StatedFinding stated(String reading, double value) {
        return new StatedFinding(
                reading,
                value,
                1,
                value - 2,
                value + 2,
                "deg",
                Optional.empty(),
                Optional.of("in-range"),
                StatedFinding.Place.ONE_OF_MANY);
    }

    private static Comparison two() {
        List<LessonFindings> lessons = new ArrayList<>();
        for (int i = 1; i <= 2; i++) {
            lessons.add(new LessonFindings(
                    i,
                    Optional.empty(),
                    "",
                    List.of(stated("shoulder-tilt", 10 * i), stated("ball-to-lead-shoulder", 10 * i))));
        }
        return Comparison.of(lessons, 1, 2);
    }

    private static int inkedColumns(BufferedImage image, int from, int to) {
        int n = 0;
        for (int x = from; x < to; x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                if ((image.getRGB(x, y) & 0xFF) < 128) {
                    n++;
                    break;
                }
            }
        }
        return n;
    }

    private static BufferedImage paper(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.createGraphics().fillRect(0, 0, width, height);
        return image;
    }

    @Test
    void inANarrowColumnBothDaysStand() {
        for (int width : new int[] {230, 280, 600}) {
            BufferedImage image = paper(width, 26);
            AcrossHeader.paint(
                    image.createGraphics(),
                    two(),
                    List.of("Oct 14, 2026", "Nov 11, 2026"),
                    new java.awt.geom.Rectangle2D.Double(0, 0, width, 26),
                    104);
            int middle = (int) (AcrossRow.middle(
                                    AcrossRow.plotArea(new java.awt.geom.Rectangle2D.Double(0, 0, width, 104)), 0, 2)
                            + AcrossRow.middle(
                                    AcrossRow.plotArea(new java.awt.geom.Rectangle2D.Double(0, 0, width, 104)), 1, 2))
                    / 2;
            assertThat(inkedColumns(image, 0, middle)).isGreaterThan(35);
            assertThat(inkedColumns(image, middle, width)).isGreaterThan(35);
        }
    }

    @Test
    void namesOfAllRowsHaveOneSizeOfType() {
        Comparison comparison = two();
        AcrossRow painter = new AcrossRow(Words.english(), comparison);
        for (int width : new int[] {240, 420, 900}) {
            List<Integer> heights = capitals(painter, comparison, width);
            assertThat(heights.get(0))
                    .as("%d wide", width)
                    .isBetween(heights.get(1) - 1, heights.get(1) + 1)
                    .isGreaterThan(8);
        }
    }

    private static List<Integer> capitals(AcrossRow painter, Comparison comparison, int width) {
        double above = painter.above(width, 104);
        return comparison.rows().stream()
                .map(row -> {
                    BufferedImage image = paper(width, 28);
                    painter.paint(
                            image.createGraphics(), row, new java.awt.geom.Rectangle2D.Double(0, above, width, 104));
                    // the first letter alone: its columns from the left up to the first gap
                    int low = image.getHeight();
                    int high = 0;
                    for (int x = 0; x < 4; x++) {
                        for (int y = 0; y < image.getHeight(); y++) {
                            if ((image.getRGB(x, y) & 0xFF) < 128) {
                                low = Math.min(low, y);
                                high = Math.max(high, y);
                            }
                        }
                    }
                    return high - low;
                })
                .toList();
    }
}
