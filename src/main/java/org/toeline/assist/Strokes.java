package org.toeline.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.PointerScope;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/**
 * Straight pieces of a picture, where something straight may lie: OpenCV's line segments (von Gioi et al., IEEE PAMI 32:722,
 * 2010) of brightness or of a difference of colour, those in one line joined across gaps. They are rough; {@link EdgeSnap}
 * brings them onto what is there, or finds that nothing is.
 */
final class Strokes {

    /** What is looked at: brightness, or a difference of colour to it. */
    enum Of {
        BRIGHTNESS,
        BLUE,
        RED
    }

    /** A straight piece, its ends in no order. */
    record Stroke(ImagePoint from, ImagePoint to) {

        double lengthPx() {
            return from.distancePx(to);
        }

        /** From level, 0 to π/2 whichever way it leans. */
        double steepnessRad() {
            return Math.atan2(Math.abs(to.yPx() - from.yPx()), Math.abs(to.xPx() - from.xPx()));
        }

        ImagePoint lower() {
            return from.yPx() > to.yPx() ? from : to;
        }

        ImagePoint upper() {
            return from.yPx() > to.yPx() ? to : from;
        }
    }

    /** A wider picture is looked at smaller: noise goes, and what is looked for stays. */
    private static final int WIDEST_PX = 1400;
    /** Differences of colour are small against those of brightness. */
    private static final double COLOUR_GAIN = 1.6;

    private static final double SHORTEST_PX = 9;
    private static final int MOST = 1500;
    private static final double ONE_LINE_RAD = Math.toRadians(2.5);
    private static final double ONE_LINE_PX = 4;
    private static final double GAP_PX = 25;
    /** And a gap of this share of what is seen already. */
    private static final double GAP_SHARE = 0.35;

    private Strokes() {}

    static List<Stroke> of(Frame frame, Of which) {
        int step = Math.max(1, (int) Math.ceil((double) Math.max(frame.width(), frame.height()) / WIDEST_PX));
        int width = frame.width() / step;
        int height = frame.height() / step;
        byte[] levels = new byte[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                levels[y * width + x] = (byte) Math.max(0, Math.min(255, Math.round(level(frame, x, y, step, which))));
            }
        }
        List<Stroke> pieces = new ArrayList<>();
        try (PointerScope scope = new PointerScope()) {
            Mat picture = new Mat(height, width, opencv_core.CV_8UC1, new BytePointer(levels));
            Mat lines = new Mat();
            opencv_imgproc.createLineSegmentDetector().detect(picture, lines);
            if (lines.rows() > 0) {
                try (FloatIndexer at = lines.createIndexer()) {
                    for (long i = 0; i < lines.rows(); i++) {
                        Stroke piece = new Stroke(point(at, i, 0, step), point(at, i, 2, step));
                        if (piece.lengthPx() >= SHORTEST_PX) {
                            pieces.add(piece);
                        }
                    }
                }
            }
        }
        return joined(pieces);
    }

    private static ImagePoint point(FloatIndexer at, long row, long first, int step) {
        // the detector's pixel centres lie at integers
        return new ImagePoint(step * (at.get(row, 0, first) + 0.5), step * (at.get(row, 0, first + 1) + 0.5));
    }

    private static double level(Frame frame, int x, int y, int step, Of which) {
        double sum = 0;
        for (int dy = 0; dy < step; dy++) {
            for (int dx = 0; dx < step; dx++) {
                int p = frame.argb()[(y * step + dy) * frame.width() + x * step + dx];
                double grey = 0.2126 * (p >> 16 & 255) + 0.7152 * (p >> 8 & 255) + 0.0722 * (p & 255);
                sum += switch (which) {
                    case BRIGHTNESS -> grey;
                    case BLUE -> 128 + COLOUR_GAIN * ((p & 255) - grey) / 1.7;
                    case RED -> 128 + COLOUR_GAIN * ((p >> 16 & 255) - grey) / 1.7;
                };
            }
        }
        return sum / (step * step);
    }

    /** Longest first; each takes what continues it. */
    private static List<Stroke> joined(List<Stroke> pieces) {
        List<Stroke> left = new ArrayList<>(pieces);
        left.sort(Comparator.comparingDouble(Stroke::lengthPx).reversed());
        if (left.size() > MOST) {
            left = new ArrayList<>(left.subList(0, MOST));
        }
        List<Stroke> joined = new ArrayList<>();
        while (!left.isEmpty()) {
            Stroke whole = left.remove(0);
            for (boolean grew = true; grew; ) {
                grew = false;
                for (int i = 0; i < left.size(); i++) {
                    if (continues(whole, left.get(i))) {
                        whole = both(whole, left.remove(i--));
                        grew = true;
                    }
                }
            }
            joined.add(whole);
        }
        joined.sort(Comparator.comparingDouble(Stroke::lengthPx).reversed());
        return joined;
    }

    private static boolean continues(Stroke whole, Stroke piece) {
        StraightLine line = StraightLine.through(whole.from, whole.to);
        StraightLine.Place a = line.place(piece.from);
        StraightLine.Place b = line.place(piece.to);
        if (Math.abs(a.t()) > ONE_LINE_PX || Math.abs(b.t()) > ONE_LINE_PX) {
            return false;
        }
        double turn = Math.atan2(Math.abs(b.t() - a.t()), Math.abs(b.s() - a.s()));
        double length = whole.lengthPx();
        double gap = Math.max(Math.min(a.s(), b.s()) - length, -Math.max(a.s(), b.s()));
        return turn < ONE_LINE_RAD + 1 / piece.lengthPx() && gap < GAP_PX + GAP_SHARE * length;
    }

    private static Stroke both(Stroke whole, Stroke piece) {
        StraightLine line = StraightLine.through(whole.from, whole.to);
        double from = Math.min(
                0, Math.min(line.place(piece.from).s(), line.place(piece.to).s()));
        double to = Math.max(
                whole.lengthPx(),
                Math.max(line.place(piece.from).s(), line.place(piece.to).s()));
        return new Stroke(line.at(from, 0), line.at(to, 0));
    }
}
