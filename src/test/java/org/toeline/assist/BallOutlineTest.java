package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.video.Frame;

/** On drawn discs whose outline is known, with noise of 4 grey levels. */
class BallOutlineTest {

    private static final int SIDE = 220;

    /** A disc by exact-enough area coverage (8 × 8 points a pixel), on a darker ground, part of it hidden if asked. */
    private static Frame disc(double cx, double cy, double r, double hiddenBelowX, SplittableRandom random) {
        int[] argb = new int[SIDE * SIDE];
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                double share = 0;
                for (int k = 0; k < 64; k++) {
                    double px = x + (k % 8 + 0.5) / 8;
                    double py = y + (k / 8 + 0.5) / 8;
                    share += px >= hiddenBelowX && Math.hypot(px - cx, py - cy) <= r ? 1.0 / 64 : 0;
                }
                double ground = x < hiddenBelowX ? 35 : 85;
                int grey = (int) Math.max(0, Math.min(255,
                        Math.round(ground + share * (225 - ground) + 4 * random.nextGaussian())));
                argb[y * SIDE + x] = 0xff000000 | grey * 0x010101;
            }
        }
        return new Frame(0, 0, SIDE, SIDE, argb);
    }

    @Test
    void centreAndDiameterToATenthOfAPixel() {
        SplittableRandom random = new SplittableRandom(5);
        double sumX = 0;
        double squares = 0;
        double diameterSquares = 0;
        int n = 60;
        for (int i = 0; i < n; i++) {
            double r = random.nextDouble(5, 30);
            double cx = random.nextDouble(80, 140);
            double cy = random.nextDouble(80, 140);
            BallMark mark = BallOutline.fit(disc(cx, cy, r, 0, random), new ImagePoint(cx + r / 3, cy - r / 3))
                    .orElseThrow();
            double dx = mark.centre().xPx() - cx;
            sumX += dx / n;
            squares += dx * dx / n;
            double dd = mark.diameterPx().orElseThrow() - 2 * r;
            diameterSquares += dd * dd / n;
        }
        assertThat(Math.abs(sumX)).as("bias").isLessThan(0.1);
        assertThat(Math.sqrt(squares)).as("centre, rms").isLessThan(0.2);
        assertThat(Math.sqrt(diameterSquares)).as("diameter, rms").isLessThan(0.3);
    }

    /** The club head hides a third of the ball. */
    @Test
    void aHiddenPartIsLeftOut() {
        SplittableRandom random = new SplittableRandom(6);
        double r = 12;
        BallMark mark = BallOutline.fit(disc(110.3, 104.8, r, 110.3 - 0.35 * r, random), new ImagePoint(114, 104))
                .orElseThrow();
        assertThat(mark.centre().distancePx(new ImagePoint(110.3, 104.8))).isLessThan(0.5);
        assertThat(mark.diameterPx().orElseThrow()).isBetween(2 * r - 0.6, 2 * r + 0.6);
    }

    @Test
    void plainGroundIsNoBall() {
        Optional<BallMark> none = BallOutline.fit(disc(-500, -500, 10, 0, new SplittableRandom(7)),
                new ImagePoint(100, 100));
        assertThat(none).isEmpty();
    }
}
