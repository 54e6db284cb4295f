package org.toeline.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.javacpp.PointerScope;
import org.bytedeco.javacpp.indexer.DoubleIndexer;
import org.bytedeco.opencv.global.opencv_calib3d;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;

/** Reference checks of the camera model against OpenCV and against worked geometry. */
class CameraReferenceTest {

    /** Both sides compute in double precision. */
    private static final double SAME_PX = 1e-6;

    /** OpenCV's {@code projectPoints} with its radial coefficients k1, k2 is the same function. */
    @Test
    void agreesWithProjectPoints() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 200; i++) {
            Camera camera = new Camera(
                    new Lens(
                            random.nextDouble(500, 2500),
                            random.nextDouble(300, 1500),
                            random.nextDouble(200, 900),
                            random.nextDouble(-0.2, 0.2),
                            random.nextDouble(-0.05, 0.05)),
                    new Pose(
                            new WorldPoint(
                                    random.nextDouble(-2, 2), random.nextDouble(-5, -2), random.nextDouble(0.3, 2)),
                            random.nextDouble(1.2, 1.9),
                            random.nextDouble(-0.3, 0.3),
                            random.nextDouble(-0.2, 0.2)));
            WorldPoint point =
                    new WorldPoint(random.nextDouble(-1, 1), random.nextDouble(0, 1.5), random.nextDouble(0, 1.9));
            ImagePoint ours = camera.project(point).orElseThrow();
            double[] theirs = projectPoints(camera, point);
            assertThat(ours.xPx()).isCloseTo(theirs[0], within(SAME_PX));
            assertThat(ours.yPx()).isCloseTo(theirs[1], within(SAME_PX));
        }
    }

    /** {@code solvePnP} finds the pose from our own pixels of a floor layout and points above it. */
    @Test
    void solvePnpFindsThePose() {
        Camera camera = new Camera(
                Lens.centred(1450, 1920, 1080),
                Pose.looking(new WorldPoint(0.4, -3.2, 1.2), new WorldPoint(-0.2, 0.7, 0.8), 0.03));
        WorldPoint[] points = {
            new WorldPoint(-0.6, 0.1, 0),
            new WorldPoint(0.6, 0.1, 0),
            new WorldPoint(0, 0.2, 0),
            new WorldPoint(0, 1.4, 0),
            new WorldPoint(0.1, 0.8, 1.4),
            new WorldPoint(-0.3, 0.9, 0.9)
        };
        try (PointerScope scope = new PointerScope()) {
            Mat object = new Mat(points.length, 3, opencv_core.CV_64F);
            Mat image = new Mat(points.length, 2, opencv_core.CV_64F);
            try (DoubleIndexer o = object.createIndexer();
                    DoubleIndexer p = image.createIndexer()) {
                for (int i = 0; i < points.length; i++) {
                    ImagePoint seen = camera.project(points[i]).orElseThrow();
                    o.put(i, new double[] {points[i].t(), points[i].h(), points[i].u()});
                    p.put(i, new double[] {seen.xPx(), seen.yPx()});
                }
            }
            Mat rotation = new Mat();
            Mat translation = new Mat();
            assertThat(opencv_calib3d.solvePnP(object, image, matrix(camera.lens()), new Mat(), rotation, translation))
                    .isTrue();
            double[] centre = centre(rotation, translation);
            WorldPoint found = new WorldPoint(centre[0], centre[1], centre[2]);
            assertThat(found.distance(camera.pose().position())).isLessThan(1e-4);
        }
    }

    /**
     * Zhang 2000 (IEEE PAMI 22:1330), published calibration data: his view 1 with his intrinsics and distortion. Four
     * corners of the plane give t = (−3.8376, 3.6514, 12.7921) inches (computed; published −3.84019, 3.65164, 12.791).
     * Our camera at that pose must see the corners where he measured them, to his own reprojection error (0.335 px rms
     * with these intrinsics; 1 px allows for the corner of four at worst).
     */
    @Test
    void seesZhangsCornersWhereHeMeasuredThem() {
        double[][] model = {{0, 0}, {6.72222, 0}, {0, -6.72222}, {6.72222, -6.72222}};
        double[][] pixels = {{62.587, 436.288}, {494.750, 458.475}, {83.911, 24.450}, {497.268, 18.385}};
        Lens lens = new Lens(832.5, 303.959, 206.585, -0.228601, 0.190353);
        try (PointerScope scope = new PointerScope()) {
            Mat object = new Mat(4, 3, opencv_core.CV_64F);
            Mat image = new Mat(4, 2, opencv_core.CV_64F);
            try (DoubleIndexer o = object.createIndexer();
                    DoubleIndexer p = image.createIndexer()) {
                for (int i = 0; i < 4; i++) {
                    o.put(i, new double[] {model[i][0], model[i][1], 0});
                    p.put(i, pixels[i]);
                }
            }
            Mat rotation = new Mat();
            Mat translation = new Mat();
            Mat bend = new Mat(1, 4, opencv_core.CV_64F, new DoublePointer(lens.k1(), lens.k2(), 0, 0));
            opencv_calib3d.solvePnP(object, image, matrix(lens), bend, rotation, translation);
            try (DoubleIndexer t = translation.createIndexer()) {
                assertThat(t.get(0)).isCloseTo(-3.84, within(0.02));
                assertThat(t.get(1)).isCloseTo(3.65, within(0.02));
                assertThat(t.get(2)).isCloseTo(12.79, within(0.02));
            }
            Camera camera = new Camera(lens, pose(rotation, translation));
            for (int i = 0; i < 4; i++) {
                ImagePoint seen = camera.project(new WorldPoint(model[i][0], model[i][1], 0))
                        .orElseThrow();
                assertThat(seen.distancePx(new ImagePoint(pixels[i][0], pixels[i][1])))
                        .isLessThan(1.0);
            }
        }
    }

    /**
     * A line tilted by θ and yawed by ψ shows tan θ′ = tan θ / cos ψ (orthographic geometry): 10° at 10° → 10.151°, 10°
     * at 20° → 10.628°, 5° at 15° → 5.175°. A camera 1 km away is orthographic to 0.001°.
     */
    @Test
    void showsTheTiltThatGeometryForetells() {
        double[][] cases = {{10, 10, 10.151}, {10, 20, 10.628}, {5, 15, 5.175}};
        Camera far =
                new Camera(Lens.centred(1e6, 1920, 1080), new Pose(new WorldPoint(0, -1000, 0), Math.PI / 2, 0, 0));
        for (double[] c : cases) {
            double tilt = Math.toRadians(c[0]);
            double yaw = Math.toRadians(c[1]);
            double level = 0.2 * Math.cos(tilt);
            WorldPoint lead = new WorldPoint(level * Math.cos(yaw), level * Math.sin(yaw), 0.2 * Math.sin(tilt));
            ImagePoint a = far.project(WorldPoint.ORIGIN.minus(lead)).orElseThrow();
            ImagePoint b = far.project(lead).orElseThrow();
            double shown = Math.toDegrees(Math.atan2(a.yPx() - b.yPx(), b.xPx() - a.xPx()));
            assertThat(shown).isCloseTo(c[2], within(0.001));
        }
    }

    private static double[] projectPoints(Camera camera, WorldPoint point) {
        try (PointerScope scope = new PointerScope()) {
            WorldPoint[] axes = {
                camera.pose().right(), camera.pose().down(), camera.pose().forward()
            };
            Mat turn = new Mat(3, 3, opencv_core.CV_64F);
            Mat shift = new Mat(3, 1, opencv_core.CV_64F);
            try (DoubleIndexer r = turn.createIndexer();
                    DoubleIndexer t = shift.createIndexer()) {
                WorldPoint from = camera.pose().position();
                for (int i = 0; i < 3; i++) {
                    r.put(i, new double[] {axes[i].t(), axes[i].h(), axes[i].u()});
                    t.put(i, 0, -(axes[i].t() * from.t() + axes[i].h() * from.h() + axes[i].u() * from.u()));
                }
            }
            Mat vector = new Mat();
            opencv_calib3d.Rodrigues(turn, vector);
            Mat object = new Mat(1, 3, opencv_core.CV_64F, new DoublePointer(point.t(), point.h(), point.u()));
            Mat bend = new Mat(
                    1,
                    4,
                    opencv_core.CV_64F,
                    new DoublePointer(camera.lens().k1(), camera.lens().k2(), 0, 0));
            Mat image = new Mat();
            opencv_calib3d.projectPoints(object, vector, shift, matrix(camera.lens()), bend, image);
            try (DoubleIndexer p = image.createIndexer()) {
                return new double[] {p.get(0, 0, 0), p.get(0, 0, 1)};
            }
        }
    }

    private static Mat matrix(Lens lens) {
        return new Mat(
                3,
                3,
                opencv_core.CV_64F,
                new DoublePointer(lens.focalPx(), 0, lens.cxPx(), 0, lens.focalPx(), lens.cyPx(), 0, 0, 1));
    }

    private static double[][] turn(Mat rotation) {
        Mat matrix = new Mat();
        opencv_calib3d.Rodrigues(rotation, matrix);
        double[][] r = new double[3][3];
        try (DoubleIndexer m = matrix.createIndexer()) {
            for (int i = 0; i < 3; i++) {
                m.get(i, r[i]);
            }
        }
        return r;
    }

    private static double[] centre(Mat rotation, Mat translation) {
        double[][] r = turn(rotation);
        double[] c = new double[3];
        try (DoubleIndexer t = translation.createIndexer()) {
            for (int i = 0; i < 3; i++) {
                for (int k = 0; k < 3; k++) {
                    c[i] -= r[k][i] * t.get(k);
                }
            }
        }
        return c;
    }

    /** OpenCV's pose in our terms: forward is its third row, and the roll is what turns level to its first. */
    private static Pose pose(Mat rotation, Mat translation) {
        double[][] r = turn(rotation);
        double[] c = centre(rotation, translation);
        double heading = Math.atan2(r[2][1], r[2][0]);
        double pitch = Math.asin(r[2][2]);
        Pose level = new Pose(WorldPoint.ORIGIN, heading, pitch, 0);
        double cos = r[0][0] * level.right().t()
                + r[0][1] * level.right().h()
                + r[0][2] * level.right().u();
        double sin = r[0][0] * level.down().t()
                + r[0][1] * level.down().h()
                + r[0][2] * level.down().u();
        return new Pose(new WorldPoint(c[0], c[1], c[2]), heading, pitch, Math.atan2(sin, cos));
    }
}
