package org.toeline.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Finding;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/** Gauges below each other: one size of type for all names and figures, and neither runs into the other. */
class BandGaugeTest {

    private static final int HEIGHT = 84;
    private static final List<ReadingKind> KINDS = Arrays.asList(ReadingKind.values());

    private static BufferedImage head(Words words, ReadingKind kind, int width) {
        BufferedImage image = new BufferedImage(width, (int) (HEIGHT * 0.24), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.fillRect(0, 0, width, image.getHeight());
        double value = kind.unit().toInside(12.3);
        Finding finding = new Finding(
                new Reading(kind, value, new Normal(value, kind.unit().toInside(5.2)), Source.MARKS),
                Optional.empty(),
                Optional.empty());
        BandGauge gauge = new BandGauge(words);
        gauge.paint(g, finding, new Rectangle2D.Double(0, 0, width, HEIGHT), gauge.longest(KINDS));
        return image;
    }

    private static boolean inked(BufferedImage image, int x) {
        for (int y = 0; y < image.getHeight(); y++) {
            if ((image.getRGB(x, y) & 0xFF) < 160) {
                return true;
            }
        }
        return false;
    }

    /** Of the capital that every name begins with. */
    private static int capital(BufferedImage image) {
        int top = image.getHeight();
        int bottom = 0;
        for (int x = 0; x < 9; x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                if ((image.getRGB(x, y) & 0xFF) < 128) {
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y);
                }
            }
        }
        return bottom - top;
    }

    private static int widestGap(BufferedImage image) {
        int widest = 0;
        int gap = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            gap = inked(image, x) ? 0 : gap + 1;
            widest = Math.max(widest, gap);
        }
        return widest;
    }

    @Test
    void namesHaveOneSizeAndStandClearOfTheFigures() {
        for (Words words : new Words[] {Words.english(), Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE)}) {
            for (int width : new int[] {250, 330, 500}) {
                List<Integer> capitals = KINDS.stream()
                        .map(kind -> capital(head(words, kind, width)))
                        .toList();
                int first = capitals.get(0);
                assertThat(capitals).allSatisfy(c -> assertThat(c).isBetween(first - 2, first + 2));
                assertThat(first).isGreaterThan(5);
                assertThat(KINDS)
                        .allSatisfy(kind -> assertThat(widestGap(head(words, kind, width)))
                                .as("%s at %d", words.name(kind), width)
                                .isGreaterThan(first / 2));
            }
        }
    }
}
