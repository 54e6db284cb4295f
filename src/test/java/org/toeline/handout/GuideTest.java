package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.toeline.language.Language;

/** The two pages for the bay, on the screen and on paper. */
class GuideTest {

    private static final double LOWEST_PART = 0.955;

    private final Locale before = Language.now();

    @AfterEach
    void speakAsBefore() {
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    /** Long folders, as they are on the longest of systems; nothing may run off the page's foot or side. */
    @Test
    void everyPageEndsOnThePaperInEveryLanguage() throws IOException {
        Path lessons = Path.of("/Users/a-coach-with-a-long-name/Library/Application Support/Toeline");
        for (Locale language : Language.all()) {
            Language.choose(language);
            List<GuidePage> pages = Guide.pages(lessons, Path.of("/Users/a-coach-with-a-long-name/Toeline"));
            byte[] pdf = Guide.pdf(pages);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).isEqualTo(2);
                for (int i = 0; i < 2; i++) {
                    BufferedImage paper = new PDFRenderer(document).renderImage(i, 1);
                    assertThat(lowest(paper))
                            .as("foot of page %d, %s", i + 1, language)
                            .isBetween(0.5, LOWEST_PART);
                    assertThat(inkBeyond(paper, 0.96))
                            .as("beyond the right margin")
                            .isFalse();
                    BufferedImage screen =
                            new BufferedImage(paper.getWidth(), paper.getHeight(), BufferedImage.TYPE_INT_RGB);
                    Graphics2D g = screen.createGraphics();
                    pages.get(i).paint(g);
                    g.dispose();
                    assertThat(lowest(screen)).isCloseTo(lowest(paper), org.assertj.core.api.Assertions.within(0.01));
                }
            }
            keep(pdf, language);
        }
    }

    /** To be looked at. */
    private static void keep(byte[] pdf, Locale language) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "guide"));
        Files.write(folder.resolve("guide-" + language + ".pdf"), pdf);
    }

    private static double lowest(BufferedImage page) {
        for (int y = page.getHeight() - 1; y >= 0; y--) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (isInk(page, x, y)) {
                    return (double) y / page.getHeight();
                }
            }
        }
        return 0;
    }

    private static boolean inkBeyond(BufferedImage page, double part) {
        for (int x = (int) (part * page.getWidth()); x < page.getWidth(); x++) {
            for (int y = 0; y < page.getHeight(); y++) {
                if (isInk(page, x, y)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isInk(BufferedImage page, int x, int y) {
        return new Color(page.getRGB(x, y)).getGreen() < 200;
    }
}
