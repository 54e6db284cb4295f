package org.toeline.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Air;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightBand;
import org.toeline.flight.Launch;
import org.toeline.handout.PictureFormat;

/** Shots from the side and from above: one scale for both, round figures on the axes, every kind of file. */
class ShotPictureTest {

    private static final Flight DRIVE = new FlightBand(Air.USUAL).firstCurve(Launch.straight(65, 12, 2600));

    private static ShotPicture picture(FigureUnit unit, OptionalDouble sideM) {
        ShotPicture.Trace shot = new ShotPicture.Trace(
                Optional.of(DRIVE), true, OptionalDouble.of(210), sideM, OptionalDouble.of(26), "");
        return new ShotPicture(
                List.of(new ShotPicture.Setup("before", 1, List.of(shot), List.of(), true, Map.of())),
                unit,
                List.of("a note"),
                "one shot");
    }

    /** Everything is within the axes, and the step is 1, 2 or 5 times a power of ten in the axes' own unit. */
    @Test
    void theAxesReachAsFarAsTheShots() {
        for (FigureUnit unit : List.of(FigureUnit.METRE, FigureUnit.YARD)) {
            ShotScale scale = ShotScale.of(picture(unit, OptionalDouble.of(-40)), 700, 300);
            assertThat(scale.farM()).isBetween(210.0, 240.0);
            assertThat(scale.highM()).isBetween(26.0, 32.0);
            assertThat(scale.wideM()).isBetween(40.0, 45.0);
            assertThat(scale.pxPerM() * scale.farM()).isLessThanOrEqualTo(700 + 1e-9);
            assertThat(scale.pxPerM() * (scale.highM() + 2 * scale.wideM())).isLessThanOrEqualTo(300 + 1e-9);
            double step = unit.fromInside(scale.stepM());
            assertThat(List.of(10.0, 20.0, 50.0, 100.0))
                    .anySatisfy(s -> assertThat(step).isCloseTo(s, within(1e-9)));
        }
    }

    @Test
    void aPlaceToTheLeftIsUpFromAboveAndAMeasuredLandingLiesWhereItWas() {
        ShotScale scale = ShotScale.of(picture(FigureUnit.METRE, OptionalDouble.of(30)), 700, 300);
        AboveView above = new AboveView(10, 200, scale);
        var landing = above.measured(picture(FigureUnit.METRE, OptionalDouble.of(30))
                        .setups()
                        .get(0)
                        .shots()
                        .get(0))
                .orElseThrow();
        assertThat(landing.yPx()).isCloseTo(200 - 30 * scale.pxPerM(), within(1e-9));
        assertThat(landing.xPx())
                .as("Pythagoras")
                .isCloseTo(10 + Math.sqrt(210 * 210 - 900) * scale.pxPerM(), within(1e-9));
    }

    /** The highest shot's name stands wholly within its plot, however close to the upper edge its curve comes. */
    @Test
    void theNameOfThePickedShotIsNotCut() {
        BufferedImage without = painted(" ");
        BufferedImage with = painted("Hg");
        int top = Integer.MAX_VALUE;
        int bottom = 0;
        for (int y = 0; y < with.getHeight() / 2; y++) {
            for (int x = 0; x < with.getWidth(); x++) {
                if (with.getRGB(x, y) != without.getRGB(x, y)) {
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y);
                }
            }
        }
        double capital = Ink.outline("Hg", Ink.bold(11), 0, 0).getBounds2D().getHeight();
        assertThat(bottom - top + 1.0)
                .as("rows of the picture with the name in them")
                .isGreaterThan(capital);
    }

    /** A straight line from above would say that the ball flew straight. */
    @Test
    void aFlightThatTellsNoSideIsSeenFromTheSideAlone() {
        BufferedImage empty = painted(" ", Optional.empty(), true);
        int[] unknown = differing(empty, painted(" ", Optional.of(DRIVE), false));
        int[] known = differing(empty, painted(" ", Optional.of(DRIVE), true));
        assertThat(unknown[0]).as("upper plot").isEqualTo(known[0]).isPositive();
        assertThat(unknown[1]).as("lower plot").isZero();
        assertThat(known[1]).as("lower plot").isPositive();
    }

    /** Pixels that differ in the upper and the lower half. */
    private static int[] differing(BufferedImage one, BufferedImage other) {
        int[] count = new int[2];
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    count[2 * y / one.getHeight()]++;
                }
            }
        }
        return count;
    }

    private static BufferedImage painted(String name) {
        return painted(name, Optional.of(DRIVE), true);
    }

    private static BufferedImage painted(String name, Optional<Flight> flight, boolean tellsSide) {
        ShotPicture.Trace shot = new ShotPicture.Trace(
                flight, tellsSide, OptionalDouble.of(225), OptionalDouble.empty(), OptionalDouble.of(32), name);
        BufferedImage image = new BufferedImage(700, 330, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Ink.PAPER);
        g.fillRect(0, 0, 700, 330);
        new ShotPicture(
                        List.of(new ShotPicture.Setup("before", 1, List.of(shot), List.of(), true, Map.of())),
                        FigureUnit.METRE,
                        List.of(),
                        "one shot")
                .paint(g, new Rectangle2D.Double(8, 8, 684, 314));
        g.dispose();
        return image;
    }

    @Test
    void everyKindOfFile() {
        ShotPicture picture = picture(FigureUnit.YARD, OptionalDouble.of(3));
        assertThat(new String(PictureFormat.SVG.of(picture), StandardCharsets.UTF_8))
                .contains("<svg")
                .contains("one shot");
        assertThat(PictureFormat.PNG.of(picture)).hasSizeGreaterThan(20_000);
        assertThat(picture.pdf()).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    }
}
