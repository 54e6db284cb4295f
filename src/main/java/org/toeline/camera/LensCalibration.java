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
     * What was found.
     *
     * @param focalSigmaPx standard deviation of the focal length, pixels
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
            boolean found = opencv_calib3d.findChessboardCornersSB(
                    picture, new Size(board.columns, board.rows), corners, opencv_calib3d.CALIB_CB_ACCURACY);
            if (!found) {
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

    /** A view whose corners are known, row by row. */
    public void add(List<ImagePoint> corners) {
        if (corners.size() != board.columns * board.rows) {
            throw new IllegalArgumentException(
                    corners.size() + " corners; the board has " + board.columns * board.rows);
        }
        seen.add(List.copyOf(corners));
    }

    /** The lens; empty with fewer than {@link #LEAST_VIEWS} views. */
    public Optional<Calibrated> lens() {
        if (seen.size() < LEAST_VIEWS) {
            return Optional.empty();
        }
        try (PointerScope scope = new PointerScope()) {
            Point3fVectorVector objects = new Point3fVectorVector();
            Point2fVectorVector images = new Point2fVectorVector();
            for (List<ImagePoint> corners : seen) {
                objects.push_back(boardPoints());
                images.push_back(imagePoints(corners));
            }
            double guess = Math.max(widthPx, heightPx);
            Mat matrix = new Mat(
                    3,
                    3,
                    opencv_core.CV_64F,
                    new DoublePointer(guess, 0, widthPx / 2.0, 0, guess, heightPx / 2.0, 0, 0, 1));
            Mat bend = new Mat(1, 5, opencv_core.CV_64F, new DoublePointer(0, 0, 0, 0, 0));
            Mat spread = new Mat();
            double rms = opencv_calib3d.calibrateCameraExtended(
                    objects,
                    images,
                    new Size(widthPx, heightPx),
                    matrix,
                    bend,
                    new MatVector(),
                    new MatVector(),
                    spread,
                    new Mat(),
                    new Mat(),
                    opencv_calib3d.CALIB_USE_INTRINSIC_GUESS
                            | opencv_calib3d.CALIB_FIX_ASPECT_RATIO
                            | opencv_calib3d.CALIB_ZERO_TANGENT_DIST
                            | opencv_calib3d.CALIB_FIX_K3,
                    new TermCriteria(TermCriteria.COUNT + TermCriteria.EPS, 100, 1e-10));
            try (DoubleIndexer m = matrix.createIndexer();
                    DoubleIndexer d = bend.createIndexer();
                    DoubleIndexer s = spread.createIndexer()) {
                Lens lens = new Lens(m.get(0, 0), m.get(0, 2) + 0.5, m.get(1, 2) + 0.5, d.get(0, 0), d.get(0, 1));
                return Optional.of(new Calibrated(lens, Math.max(s.get(0), s.get(1)), rms, seen.size()));
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
