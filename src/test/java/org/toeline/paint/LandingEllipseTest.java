package org.toeline.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;

/** Beside the picture it is said that about half of the shots lie in the ellipse: so they do, with mishits too. */
class LandingEllipseTest {

    private static long inside(List<ImagePoint> points) {
        Shape ellipse = LandingEllipse.of(points).orElseThrow();
        return points.stream().filter(p -> ellipse.contains(p.xPx(), p.yPx())).count();
    }

    @Test
    void halfLieInItWithAndWithoutMishits() {
        SplittableRandom random = new SplittableRandom(8);
        for (int mishits : new int[] {0, 1, 4}) {
            List<ImagePoint> landed = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                double along = i < mishits ? 120 + 20 * i : 210 + 5 * random.nextGaussian();
                landed.add(new ImagePoint(along, 3 + 8 * random.nextGaussian()));
            }
            assertThat(inside(landed)).as(mishits + " mishits of 20").isBetween(9L, 11L);
        }
    }
}
