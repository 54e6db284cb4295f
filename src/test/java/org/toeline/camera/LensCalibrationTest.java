package org.toeline.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.toeline.camera.LensCalibration.Board;
import org.toeline.camera.LensCalibration.Calibrated;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;

class LensCalibrationTest {

    private static final Board BOARD = new Board(9, 6, 0.025);

    /** A board seen by our own camera model from twenty places: the lens comes back, and its stated spread holds. */
    @Test
    void findsTheLensThatSawTheBoard() {
        SplittableRandom random = new SplittableRandom(17);
        int held = 0;
        for (int trial = 0; trial < 10; trial++) {
            Lens lens = new Lens(1400 + 100 * random.nextGaussian(), 965, 533, -0.12, 0.05);
            LensCalibration calibration = new LensCalibration(BOARD, 1920, 1080);
            for (int view = 0; view < 20; view++) {
                WorldPoint from = new WorldPoint(random.nextDouble(-0.35, 0.55), random.nextDouble(-0.35, 0.5),
                        random.nextDouble(0.3, 0.6));
                Camera camera = new Camera(lens, Pose.looking(from, new WorldPoint(0.1, 0.06, 0),
                        random.nextDouble(-0.5, 0.5)));
                List<ImagePoint> corners = new ArrayList<>();
                for (int i = 0; i < 54; i++) {
                    corners.add(camera.project(new WorldPoint(0.025 * (i % 9), 0.025 * (i / 9), 0)).orElseThrow()
                            .plus(0.2 * random.nextGaussian(), 0.2 * random.nextGaussian()));
                }
                calibration.add(corners);
            }
            Calibrated found = calibration.lens().orElseThrow();
            double off = found.lens().focalPx() - lens.focalPx();
            assertThat(Math.abs(off)).isLessThan(4.5 * found.focalSigmaPx()).isLessThan(6);
            held += Math.abs(off) < 2 * found.focalSigmaPx() ? 1 : 0;
            assertThat(found.lens().cxPx()).isCloseTo(965, within(4.0));
            assertThat(found.lens().k1()).isCloseTo(-0.12, within(0.02));
        }
        assertThat(held).as("of ten, within two standard deviations").isGreaterThanOrEqualTo(7);
    }

    /**
     * OpenCV's sample set (Debian package opencv-doc): 13 views of 9 × 6 corners, squares of 25 mm, 640 × 480. Its own
     * left_intrinsics.yml has f 535.916, c (342.283, 235.571), radial −0.266373, −0.0385889, 0.238392 and two tangential
     * coefficients; our lens model has two radial ones. What counts is how far they bend: compared at three radii, the
     * last near the corner. A few pixels of centre are what the tangential ones may stand for.
     */
    @Test
    void agreesWithOpenCvsSampleSet() throws Exception {
        Path folder = Path.of("/usr/share/doc/opencv-doc/examples/data");
        Assumptions.assumeTrue(Files.exists(folder.resolve("left01.jpg")), "Debian's opencv-doc is not installed");
        LensCalibration calibration = new LensCalibration(BOARD, 640, 480);
        for (int i = 1; i <= 14; i++) {
            Path file = folder.resolve(String.format("left%02d.jpg", i));
            if (Files.exists(file)) {
                calibration.add(grey(ImageIO.read(file.toFile())));
            }
        }
        Calibrated found = calibration.lens().orElseThrow();
        assertThat(found.views()).isGreaterThanOrEqualTo(11);
        assertThat(found.lens().focalPx()).isCloseTo(535.9, within(4.0));
        assertThat(found.lens().cxPx()).isCloseTo(342.3 + 0.5, within(4.0));
        assertThat(found.lens().cyPx()).isCloseTo(235.6 + 0.5, within(4.0));
        for (double r2 : new double[] {0.1, 0.25, 0.4}) {
            double theirs = 1 + r2 * (-0.266373 + r2 * (-0.0385889 + r2 * 0.238392));
            assertThat(1 + r2 * (found.lens().k1() + r2 * found.lens().k2())).as("at r² = " + r2)
                    .isCloseTo(theirs, within(0.005));
        }
        assertThat(found.rmsPx()).isLessThan(0.6);
    }

    private static byte[] grey(BufferedImage image) {
        byte[] grey = new byte[image.getWidth() * image.getHeight()];
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                grey[y * image.getWidth() + x] = (byte) (image.getRaster().getSample(x, y, 0));
            }
        }
        return grey;
    }

    @Test
    void tooFewViewsAreNotEnough() {
        assertThat(new LensCalibration(BOARD, 640, 480).lens()).isEmpty();
        assertThat(new LensCalibration(BOARD, 64, 48).add(new byte[64 * 48])).isFalse();
    }
}
