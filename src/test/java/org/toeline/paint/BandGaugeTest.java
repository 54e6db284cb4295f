package org.toeline.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Finding;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Range;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.mark.Club;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/** Gauges below each other: one size of type for all names and figures, and neither runs into the other. */
class BandGaugeTest {

    private static final int HEIGHT = 84;
    /** Of an edge that lies a quarter of a pixel beside where it lay, dark on light, and a trace more. */
    private static final int A_QUARTER = 80;

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

    /** What is not painted anew must not have changed: equal looks are equal pictures, and unequal pictures unequal looks. */
    @Test
    void equalLooksArePaintedAlike() {
        Words words = Words.english();
        BandGauge gauge = new BandGauge(words);
        Range range = RangeBook.shipped()
                .range(ReadingKind.SHOULDER_TILT, Club.DRIVER)
                .orElseThrow();
        int equal = 0;
        int unequal = 0;
        Finding before = tilt(range, 0, 1);
        for (int step = 1; step <= 300; step++) {
            Finding now = tilt(range, step * 3e-5, 1 + step * 1e-3);
            boolean all = true;
            for (BandGauge.Part part : BandGauge.Part.values()) {
                boolean same = gauge.look(part, before, 300).equals(gauge.look(part, now, 300));
                assertThat(!same || mostUnlike(whole(gauge, before), whole(gauge, now), part) < A_QUARTER)
                        .as("step %d, %s", step, part)
                        .isTrue();
                equal += same ? 1 : 0;
                unequal += same ? 0 : 1;
                all &= same;
            }
            before = all ? before : now;
        }
        assertThat(equal).isGreaterThan(100);
        assertThat(unequal).isGreaterThan(20);
    }

    /** Each part is painted within its own strip, or it would be wiped with its neighbour. */
    @Test
    void noPartReachesIntoAnother() {
        BandGauge gauge = new BandGauge(Words.english());
        Range range = RangeBook.shipped()
                .range(ReadingKind.SHOULDER_TILT, Club.DRIVER)
                .orElseThrow();
        Rectangle2D area = new Rectangle2D.Double(0, 10, 300, HEIGHT);
        for (BandGauge.Part part : BandGauge.Part.values()) {
            BufferedImage image = new BufferedImage(300, HEIGHT + 20, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            gauge.paint(g, part, tilt(range, 0, 1), area, gauge.longest(KINDS));
            g.dispose();
            for (int y = 0; y < image.getHeight(); y++) {
                boolean own = part.in(area).intersects(0, y, 300, 1);
                for (int x = 0; x < 300 && !own; x++) {
                    assertThat(image.getRGB(x, y) & 0xFFFFFF)
                            .as("%s at %d, %d", part, x, y)
                            .isZero();
                }
            }
        }
    }

    private static Finding tilt(Range range, double beside, double wider) {
        double value = range.high() + beside;
        return new Finding(
                new Reading(ReadingKind.SHOULDER_TILT, value, new Normal(value, 0.02 * wider), Source.MARKS),
                Optional.of(range),
                Optional.of(Verdict.TOO_CLOSE));
    }

    private static BufferedImage whole(BandGauge gauge, Finding finding) {
        BufferedImage image = new BufferedImage(300, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.fillRect(0, 0, 300, HEIGHT);
        gauge.paint(g, finding, new Rectangle2D.Double(0, 0, 300, HEIGHT), gauge.longest(KINDS));
        g.dispose();
        return image;
    }

    private static int mostUnlike(BufferedImage a, BufferedImage b, BandGauge.Part part) {
        Rectangle2D strip = part.in(new Rectangle2D.Double(0, 0, 300, HEIGHT));
        int most = 0;
        for (int y = (int) Math.ceil(strip.getMinY()); y < strip.getMaxY() - 1; y++) {
            for (int x = 0; x < 300; x++) {
                most = Math.max(most, Math.abs((a.getRGB(x, y) >> 8 & 0xFF) - (b.getRGB(x, y) >> 8 & 0xFF)));
            }
        }
        return most;
    }
}
