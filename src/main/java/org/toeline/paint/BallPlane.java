package org.toeline.paint;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.posture.Posture;

/**
 * The upright plane through the ball that a view looks at, drawn to scale: along the target line for the face-on view, square
 * to it for the view down the line. Pictures of different lessons brought into it have one scale, plumb lines upright, the
 * target line level and the ball in one place, wherever their cameras stood.
 *
 * <p>What lies in the plane is where it is in the world; what lies behind it is as small as the camera saw it, so a figure of
 * another lesson is drawn as <em>this</em> lesson's camera would have seen it ({@link #seen}). Canvas pixels have x right, y
 * down, the origin in the top left corner, pixel centres at halves; for a left-handed player the canvas is the mirror image,
 * as the pictures are.
 *
 * @param view    face-on or down the line
 * @param pxPerM  canvas pixels a metre, above zero
 */
public record BallPlane(View view, Handedness handedness, double pxPerM) {

    /** From its left edge to its right edge, metres. */
    static final double WIDTH_M = 1.9;
    /** From its lower edge to its upper edge, metres. */
    static final double HEIGHT_M = 2.2;

    private static final double BELOW_M = 0.25;
    /** How far the player's side reaches from the ball, seen down the line, metres. */
    private static final double PLAYERS_SIDE_M = 1.55;

    private static final int OUTSIDE = 0x2B2E32;
    private static final int FINEST = 3;

    public BallPlane {
        if (view == View.TEE || !(pxPerM > 0) || !Double.isFinite(pxPerM)) {
            throw new IllegalArgumentException(view + " at " + pxPerM
                    + " px/m; the face-on view or the view down the line and a scale above zero are needed");
        }
    }

    public int widthPx() {
        return (int) Math.round(WIDTH_M * pxPerM);
    }

    public int heightPx() {
        return (int) Math.round(HEIGHT_M * pxPerM);
    }

    /** What the canvas's x axis runs along: t or −h, and the other way for a left-handed player. */
    private double sign() {
        return (view == View.FACE_ON ? 1 : -1) * (handedness == Handedness.RIGHT ? 1 : -1);
    }

    /** x of the ball on the canvas, metres from the left edge. */
    private double ballM() {
        return view == View.FACE_ON
                ? WIDTH_M / 2
                : handedness == Handedness.RIGHT ? PLAYERS_SIDE_M : WIDTH_M - PLAYERS_SIDE_M;
    }

    /** The point of the world that a point of the canvas shows. */
    public WorldPoint at(double xPx, double yPx) {
        double across = (xPx / pxPerM - ballM()) * sign();
        double up = HEIGHT_M - BELOW_M - yPx / pxPerM;
        return view == View.FACE_ON ? new WorldPoint(across, 0, up) : new WorldPoint(0, across, up);
    }

    /** Where the canvas shows a point of the plane; of another point, the foot of its perpendicular. */
    public Point2D on(WorldPoint point) {
        double across = view == View.FACE_ON ? point.t() : point.h();
        return new Point2D.Double((across * sign() + ballM()) * pxPerM, (HEIGHT_M - BELOW_M - point.u()) * pxPerM);
    }

    /**
     * Where a point of the world stands on the canvas when it is seen from a lesson's camera: where the line of sight meets
     * the plane. Empty without a camera, or when it is not before the camera.
     */
    public Optional<Point2D> seen(WorldPoint point, Posture from) {
        Optional<Camera> camera = from.camera(view);
        if (camera.isEmpty() || camera.get().depthM(point) < Camera.NEAREST_M) {
            return Optional.empty();
        }
        WorldPoint eye = camera.get().pose().position();
        double before = view == View.FACE_ON ? eye.h() : eye.t();
        double depth = before - (view == View.FACE_ON ? point.h() : point.t());
        double share = before / depth;
        if (!(share > 0) || !Double.isFinite(share)) {
            return Optional.empty();
        }
        WorldPoint d = point.minus(eye);
        return Optional.of(on(eye.plus(share * d.t(), share * d.h(), share * d.u())));
    }

    /**
     * A view's picture brought into the plane through the estimated camera; what the picture does not show is dark.
     *
     * @param picture the frame that was marked, in its full resolution
     * @param camera  that of the view, for the mirrored picture when the player is left-handed
     */
    public BufferedImage warp(BufferedImage picture, Camera camera) {
        Pixels from = new Pixels(picture, handedness);
        int finer = finer(camera);
        Sight sight = new Sight(this, camera, finer);
        BufferedImage canvas = new BufferedImage(widthPx(), heightPx(), BufferedImage.TYPE_INT_RGB);
        int[] out = ((DataBufferInt) canvas.getRaster().getDataBuffer()).getData();
        for (int y = 0; y < heightPx(); y++) {
            for (int x = 0; x < widthPx(); x++) {
                out[y * widthPx() + x] = mean(from, sight, x * finer, y * finer, finer);
            }
        }
        return canvas;
    }

    /** How many times finer than the canvas the picture is looked up, so that no line is lost between two pixels. */
    private int finer(Camera camera) {
        double pxPerMetre = camera.lens().focalPx() / Math.max(Camera.NEAREST_M, camera.depthM(WorldPoint.ORIGIN));
        return (int) Math.max(1, Math.min(FINEST, Math.round(pxPerMetre / pxPerM)));
    }

    private static int mean(Pixels from, Sight sight, int x, int y, int finer) {
        int red = 0;
        int green = 0;
        int blue = 0;
        for (int i = 0; i < finer * finer; i++) {
            int rgb = sight.colour(from, x + i % finer, y + i / finer);
            red += rgb >> 16 & 255;
            green += rgb >> 8 & 255;
            blue += rgb & 255;
        }
        int n = finer * finer;
        return (red + n / 2) / n << 16 | (green + n / 2) / n << 8 | (blue + n / 2) / n;
    }

    /** The camera's view of the plane: along the canvas all of right, down and depth rise evenly. */
    private static final class Sight {

        private final Lens lens;
        private final double[] right;
        private final double[] down;
        private final double[] depth;

        private Sight(BallPlane plane, Camera camera, int finer) {
            lens = camera.lens();
            right = even(plane, finer, camera::rightM);
            down = even(plane, finer, camera::downM);
            depth = even(plane, finer, camera::depthM);
        }

        private static double[] even(BallPlane plane, int finer, ToDoubleFunction<WorldPoint> of) {
            double half = 0.5 / finer;
            double first = of.applyAsDouble(plane.at(half, half));
            return new double[] {
                first,
                of.applyAsDouble(plane.at(half + 1.0 / finer, half)) - first,
                of.applyAsDouble(plane.at(half, half + 1.0 / finer)) - first
            };
        }

        private static double at(double[] even, int x, int y) {
            return even[0] + x * even[1] + y * even[2];
        }

        private int colour(Pixels from, int x, int y) {
            double z = at(depth, x, y);
            if (z < Camera.NEAREST_M) {
                return OUTSIDE;
            }
            double nx = at(right, x, y) / z;
            double ny = at(down, x, y) / z;
            return lens.holds(nx, ny) ? from.at(lens.pixel(nx, ny)) : OUTSIDE;
        }
    }

    /** A picture read between its pixels. */
    private record Pixels(int width, int height, int[] rgb, Handedness handedness) {

        private Pixels(BufferedImage picture, Handedness handedness) {
            this(
                    picture.getWidth(),
                    picture.getHeight(),
                    picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth()),
                    handedness);
        }

        /** Bilinear; dark outside. */
        private int at(ImagePoint p) {
            double x = (handedness == Handedness.LEFT ? width - p.xPx() : p.xPx()) - 0.5;
            double y = p.yPx() - 0.5;
            int left = (int) Math.floor(x);
            int top = (int) Math.floor(y);
            if (left < -1 || top < -1 || left >= width || top >= height) {
                return OUTSIDE;
            }
            double fx = x - left;
            double fy = y - top;
            int colour = 0;
            for (int shift = 16; shift >= 0; shift -= 8) {
                double upper = (1 - fx) * channel(left, top, shift) + fx * channel(left + 1, top, shift);
                double lower = (1 - fx) * channel(left, top + 1, shift) + fx * channel(left + 1, top + 1, shift);
                colour |= (int) Math.round((1 - fy) * upper + fy * lower) << shift;
            }
            return colour;
        }

        private int channel(int x, int y, int shift) {
            return rgb[Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))] >> shift
                    & 255;
        }
    }
}
