package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.FloatPointer;
import org.bytedeco.javacpp.PointerScope;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.javacpp.indexer.UByteIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_video;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_core.TermCriteria;
import org.toeline.geometry.ImagePoint;

/**
 * Optical flow after Lucas and Kanade over a pyramid of pictures (Bouguet 2000), as OpenCV does it. Native memory is
 * released before each call returns.
 */
final class Flow {

    /** Side of the square of pixels that stands for a mark. */
    static final int WINDOW = 25;

    private static final int LEVELS = 3;
    /** Below this the smaller eigenvalue of the brightness gradients says: nothing to hold on to. OpenCV's scale. */
    private static final double LEAST_EIGENVALUE = 4e-4;

    /** @param seen whether the point could be followed at all */
    record To(ImagePoint at, boolean seen) {}

    private Flow() {}

    /** Where points of one picture lie in another of the same size, given a guess for each. */
    static List<To> follow(Grey from, Grey to, List<ImagePoint> points, List<ImagePoint> guesses) {
        try (PointerScope scope = new PointerScope()) {
            Mat before = picture(from);
            Mat after = picture(to);
            Mat start = points(points);
            Mat end = points(guesses);
            Mat status = new Mat();
            Mat error = new Mat();
            opencv_video.calcOpticalFlowPyrLK(
                    before,
                    after,
                    start,
                    end,
                    status,
                    error,
                    new Size(WINDOW, WINDOW),
                    LEVELS,
                    new TermCriteria(TermCriteria.COUNT + TermCriteria.EPS, 40, 0.002),
                    opencv_video.OPTFLOW_USE_INITIAL_FLOW,
                    LEAST_EIGENVALUE);
            List<To> found = new ArrayList<>();
            try (FloatIndexer at = end.createIndexer();
                    UByteIndexer seen = status.createIndexer()) {
                for (int i = 0; i < points.size(); i++) {
                    // OpenCV's pixel centres lie at integers
                    found.add(new To(new ImagePoint(at.get(i, 0, 0) + 0.5, at.get(i, 0, 1) + 0.5), seen.get(i) != 0));
                }
            }
            return found;
        }
    }

    private static Mat picture(Grey grey) {
        return new Mat(grey.height(), grey.width(), opencv_core.CV_8UC1, new BytePointer(grey.levels()));
    }

    private static Mat points(List<ImagePoint> points) {
        float[] flat = new float[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            flat[2 * i] = (float) (points.get(i).xPx() - 0.5);
            flat[2 * i + 1] = (float) (points.get(i).yPx() - 0.5);
        }
        return new Mat(points.size(), 1, opencv_core.CV_32FC2, new FloatPointer(flat));
    }
}
