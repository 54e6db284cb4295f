package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.ShaftSearch.Shaft;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/** Bars drawn on turf, below hands at a known place. */
class ShaftSearchTest {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 720;
    private static final double HANDS_X = 300;
    private static final double HANDS_Y = 300;
    /** From the nose to the soles. */
    private static final double SPAN = 400;

    private static final Line2D SHAFT = new Line2D.Double(304, 340, 330, 610);

    /** A rod that lies on the ground in line with the hands, as a cross rod face-on may: it is seen for less than half of the shaft's length. */
    @Test
    void aShortBarFarBelowTheHandsIsNoRival() {
        Optional<Shaft> shaft = shaftAmong(SHAFT, new Line2D.Double(293, 445, 284, 565));
        assertThat(shaft).hasValueSatisfying(s -> {
            assertThat(s.rival()).isFalse();
            assertThat(s.low().distancePx(new ImagePoint(330, 610))).isLessThan(10);
        });
    }

    /** Two as long as each other out of the same hands: nobody can say which. */
    @Test
    void anotherThatIsSeenForAsLongIsOne() {
        Optional<Shaft> shaft = shaftAmong(SHAFT, new Line2D.Double(296, 340, 270, 610));
        assertThat(shaft).hasValueSatisfying(s -> assertThat(s.rival()).isTrue());
    }

    private static Optional<Shaft> shaftAmong(Line2D... bars) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(new Color(60, 110, 60));
        g.fillRect(0, 0, WIDTH, HEIGHT);
        g.setColor(new Color(200, 200, 205));
        g.setStroke(new BasicStroke(3.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        for (Line2D bar : bars) {
            g.draw(bar);
        }
        g.dispose();
        Frame frame = new Frame(0, 0, WIDTH, HEIGHT, image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH));
        return new ShaftSearch(frame, player()).in(Strokes.of(frame, Strokes.Of.BRIGHTNESS));
    }

    /** Of whom only hands, nose and soles are asked for. */
    private static Seen player() {
        ImagePoint[] points = new ImagePoint[PoseModel.POINTS];
        Arrays.fill(points, new ImagePoint(HANDS_X, HANDS_Y));
        points[0] = new ImagePoint(HANDS_X, 180);
        points[31] = new ImagePoint(HANDS_X, 180 + SPAN);
        double[] visibility = new double[PoseModel.POINTS];
        Arrays.fill(visibility, 1);
        return new Seen(1, points, visibility);
    }
}
