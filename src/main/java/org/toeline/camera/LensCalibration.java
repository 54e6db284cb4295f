package org.toeline.camera;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.javacpp.PointerScope;
import org.bytedeco.javacpp.indexer.DoubleIndexer;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.opencv.global.opencv_calib3d;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.MatVector;
import org.bytedeco.opencv.opencv_core.Point2f;
import org.bytedeco.opencv.opencv_core.Point2fVector;
import org.bytedeco.opencv.opencv_core.Point2fVectorVector;
import org.bytedeco.opencv.opencv_core.Point3f;
import org.bytedeco.opencv.opencv_core.Point3fVector;
import org.bytedeco.opencv.opencv_core.Point3fVectorVector;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_core.TermCriteria;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * Calibrates a lens from pictures of a chessboard held at many angles: Zhang's method (IEEE PAMI 22:1330, 2000) as
 * OpenCV does it, for the lens model of {@link Lens} (one focal length, two radial coefficients). Pixels are this
 * program's, centres at half-integers; OpenCV's, at integers, are moved by a half. One thread at a time.
 */
public final class LensCalibration {

    /** As many as Zhang's own experiment has; fewer leave focal length and distance of the board to be confused. */
    public static final int LEAST_VIEWS = 5;

    /**
     * A chessboard.
     *
     * @param columns inner corners along a row, at least 3
     * @param rows    inner corners along a column, at least 3
     * @param squareM side of a square, metres
     */
    public record Board(int columns, int rows, double squareM) {

        public Board {
            if (columns < 3 || rows < 3) {
                throw new IllegalArgumentException(
                        "a board of " + columns + " × " + rows + " inner corners; at least 3 × 3 are needed");
            }
            Finite.requirePositive(squareM, "squareM");
        }
    }

    /**
     * So many parts are left out in turn, to see what the focal length rests on: pictures that follow one another in a clip
     * show the board alike, and err alike.
     */
    private static final int PARTS = 5;
    /**
     * What no picture shows, as a share of the focal length: what is left of a board that is bent or printed a little wider
     * than high, once its shape is found as well. Chosen so that what is stated holds what comes out on drawn boards bent by
     * a millimetre, printed 0.3 % too wide and filmed with a wandering focus ({@code LensCalibrationTest}).
     */
    private static final double BOARD_SHARE = 0.002;
    /** The same where the board had to be taken for flat: as drawn boards bent by a millimetre make it, rounded up. */
    private static final double FLAT_BOARD_SHARE = 0.04;
    /** Fewer do not tell the shape of the board from the middle of the picture. */
    private static final int VIEWS_FOR_SHAPE = 10;

    private static final int STEPS = 20;
    /** From where all views led. */
    private static final int STEPS_FROM_ALL = 5;

    /** The same detector, as it takes its time: levels spread, and more places tried. */
    private static final int PATIENT = opencv_calib3d.CALIB_CB_ACCURACY
            | opencv_calib3d.CALIB_CB_NORMALIZE_IMAGE
            | opencv_calib3d.CALIB_CB_EXHAUSTIVE;

    /**
     * What was found.
     *
     * @param focalSigmaPx standard deviation of the focal length, pixels: how it scatters as views are left out, and what
     *                     the board itself leaves uncertain
     * @param rmsPx        root mean square distance of the corners from where the lens puts them, pixels
     */
    public record Calibrated(Lens lens, double focalSigmaPx, double rmsPx, int views) {}

    private final Board board;
    private final int widthPx;
    private final int heightPx;
    private final List<List<ImagePoint>> seen = new ArrayList<>();

    public LensCalibration(Board board, int widthPx, int heightPx) {
        this.board = board;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    public int views() {
        return seen.size();
    }

    /**
     * Looks for the board in a picture.
     *
     * @param grey brightness row by row, {@code widthPx · heightPx} bytes
     * @return whether all of its corners were found
     */
    public boolean add(byte[] grey) {
        if (grey.length != widthPx * heightPx) {
            throw new IllegalArgumentException(grey.length + " pixels for a picture of " + widthPx + " × " + heightPx);
        }
        try (PointerScope scope = new PointerScope()) {
            Mat picture = new Mat(heightPx, widthPx, opencv_core.CV_8UC1, new BytePointer(grey));
            Mat corners = new Mat();
            if (!found(picture, corners, opencv_calib3d.CALIB_CB_ACCURACY) && !found(picture, corners, PATIENT)) {
                return false;
            }
            List<ImagePoint> points = new ArrayList<>();
            try (FloatIndexer at = corners.createIndexer()) {
                for (int i = 0; i < board.columns * board.rows; i++) {
                    points.add(new ImagePoint(at.get(i, 0, 0) + 0.5, at.get(i, 0, 1) + 0.5));
                }
            }
            seen.add(List.copyOf(points));
            return true;
        }
    }

    private boolean found(Mat picture, Mat corners, int flags) {
        return opencv_calib3d.findChessboardCornersSB(picture, new Size(board.columns, board.rows), corners, flags);
    }

    /** A view whose corners are known, row by row. */
    public void add(List<ImagePoint> corners) {
        if (corners.size() != board.columns * board.rows) {
            throw new IllegalArgumentException(
                    corners.size() + " corners; the board has " + board.columns * board.rows);
        }
        seen.add(List.copyOf(corners));
    }

    /** The lens; empty with fewer than {@link #LEAST_VIEWS} views. Seconds for forty of them. */
    public Optional<Calibrated> lens() {
        if (seen.size() < LEAST_VIEWS) {
            return Optional.empty();
        }
        double guess = Math.max(widthPx, heightPx);
        Fitted all = fitted(seen, new Lens(guess, widthPx / 2.0 + 0.5, heightPx / 2.0 + 0.5, 0, 0), STEPS);
        double sigma = Math.hypot(scatter(all), (knowsShape() ? BOARD_SHARE : FLAT_BOARD_SHARE) * all.lens.focalPx());
        return Optional.of(new Calibrated(all.lens, sigma, all.rmsPx, seen.size()));
    }

    private boolean knowsShape() {
        return seen.size() >= VIEWS_FOR_SHAPE;
    }

    /** The standard deviation of the focal length by leaving out parts of the views (the jackknife of Quenouille and Tukey). */
    private double scatter(Fitted all) {
        int parts = Math.min(PARTS, seen.size());
        double[] without = new double[parts];
        double mean = 0;
        for (int part = 0; part < parts; part++) {
            List<List<ImagePoint>> rest = new ArrayList<>();
            for (int i = 0; i < seen.size(); i++) {
                if (i * parts / seen.size() != part) {
                    rest.add(seen.get(i));
                }
            }
            without[part] = fitted(rest, all.lens, STEPS_FROM_ALL).lens.focalPx();
            mean += without[part] / parts;
        }
        double squares = 0;
        for (double focal : without) {
            squares += (focal - mean) * (focal - mean);
        }
        return Math.max(all.sigmaPx, Math.sqrt((parts - 1.0) / parts * squares));
    }

    /** @param sigmaPx of the focal length, if corners erred on their own */
    private record Fitted(Lens lens, double sigmaPx, double rmsPx) {}

    /**
     * With the shape of the board, where enough views were seen; of it only two corners and its plane are believed then: paper is never flat, and a board bent by a
     * millimetre, taken for flat, puts the focal length wrong by one to ten per cent (Strobl and Hirzinger, ICCV workshops
     * 2011, as OpenCV does it).
     */
    private Fitted fitted(List<List<ImagePoint>> views, Lens from, int steps) {
        try (PointerScope scope = new PointerScope()) {
            Point3fVectorVector objects = new Point3fVectorVector();
            Point2fVectorVector images = new Point2fVectorVector();
            for (List<ImagePoint> corners : views) {
                objects.push_back(boardPoints());
                images.push_back(imagePoints(corners));
            }
            Mat matrix = new Mat(
                    3,
                    3,
                    opencv_core.CV_64F,
                    new DoublePointer(
                            from.focalPx(), 0, from.cxPx() - 0.5, 0, from.focalPx(), from.cyPx() - 0.5, 0, 0, 1));
            Mat bend = new Mat(1, 5, opencv_core.CV_64F, new DoublePointer(from.k1(), from.k2(), 0, 0, 0));
            Mat spread = new Mat();
            double rms = opencv_calib3d.calibrateCameraROExtended(
                    objects,
                    images,
                    new Size(widthPx, heightPx),
                    knowsShape() ? board.columns - 1 : 0,
                    matrix,
                    bend,
                    new MatVector(),
                    new MatVector(),
                    new Mat(),
                    spread,
                    new Mat(),
                    new Mat(),
                    new Mat(),
                    opencv_calib3d.CALIB_USE_INTRINSIC_GUESS
                            | opencv_calib3d.CALIB_FIX_ASPECT_RATIO
                            | opencv_calib3d.CALIB_ZERO_TANGENT_DIST
                            | opencv_calib3d.CALIB_FIX_K3,
                    new TermCriteria(TermCriteria.COUNT + TermCriteria.EPS, steps, 1e-7));
            try (DoubleIndexer m = matrix.createIndexer();
                    DoubleIndexer d = bend.createIndexer();
                    DoubleIndexer s = spread.createIndexer()) {
                return new Fitted(
                        new Lens(m.get(0, 0), m.get(0, 2) + 0.5, m.get(1, 2) + 0.5, d.get(0, 0), d.get(0, 1)),
                        Math.max(s.get(0), s.get(1)),
                        rms);
            }
        }
    }

    private Point3fVector boardPoints() {
        Point3fVector points = new Point3fVector();
        for (int i = 0; i < board.columns * board.rows; i++) {
            points.push_back(new Point3f(
                    (float) (board.squareM * (i % board.columns)), (float) (board.squareM * (i / board.columns)), 0));
        }
        return points;
    }

    private static Point2fVector imagePoints(List<ImagePoint> corners) {
        Point2fVector points = new Point2fVector();
        for (ImagePoint p : corners) {
            points.push_back(new Point2f((float) (p.xPx() - 0.5), (float) (p.yPx() - 0.5)));
        }
        return points;
    }
}
