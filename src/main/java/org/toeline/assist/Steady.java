package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Mark;

/**
 * The same things seen in several frames of a still span, joined: each lies where the middle one of its places is, and what
 * the places scatter by is added to the spread stated for it. What is not seen again in most of the frames, or scatters by more
 * than its spread, is not steady, and left out.
 */
final class Steady {

    /** A ball that lies still scatters by 0.05 of its diameter at most, on drawn pictures; a sock that was taken for one by 0.09. */
    private static final double JUMPS = 0.08;

    private Steady() {}

    /**
     * The marks of the first frame that are steady.
     *
     * @param frames the marks of each frame; none where nothing was seen
     */
    static List<Mark> marks(List<List<Mark>> frames) {
        List<Mark> steady = new ArrayList<>();
        for (Mark first : frames.get(0)) {
            List<ImagePoint> places = frames.stream()
                    .flatMap(List::stream)
                    .filter(m -> m.landmark() == first.landmark())
                    .map(Mark::at)
                    .toList();
            double scatter = scatterPx(places);
            if (areMost(places, frames) && scatter <= first.sigmaPx()) {
                double sigma = Math.hypot(first.sigmaPx(), scatter);
                steady.add(new Mark(first.landmark(), middle(places), sigma, first.origin()));
            }
        }
        return steady;
    }

    /** @param frames the ball of each frame, where it was seen; that of the first is there */
    static Optional<BallMark> ball(List<Optional<BallMark>> frames) {
        List<BallMark> seen = frames.stream().flatMap(Optional::stream).toList();
        BallMark first = seen.get(0);
        List<ImagePoint> places = seen.stream().map(BallMark::centre).toList();
        double[] diameters =
                seen.stream().mapToDouble(b -> b.diameterPx().orElseThrow()).toArray();
        double scatter = scatterPx(places);
        double wider = scatter(diameters, middle(diameters));
        double diameter = middle(diameters);
        if (!areMost(seen, frames) || Math.max(scatter, wider) > JUMPS * diameter) {
            return Optional.empty();
        }
        return Optional.of(new BallMark(
                middle(places),
                OptionalDouble.of(diameter),
                Math.hypot(first.sigmaPx(), scatter),
                Math.hypot(first.diameterSigmaPx(), wider),
                first.origin()));
    }

    private static boolean areMost(List<?> seen, List<?> frames) {
        return 2 * seen.size() > frames.size();
    }

    private static ImagePoint middle(List<ImagePoint> places) {
        return new ImagePoint(middle(all(places, ImagePoint::xPx)), middle(all(places, ImagePoint::yPx)));
    }

    /** In each direction, from the middle one. */
    private static double scatterPx(List<ImagePoint> places) {
        double[] x = all(places, ImagePoint::xPx);
        double[] y = all(places, ImagePoint::yPx);
        return Math.hypot(scatter(x, middle(x)), scatter(y, middle(y))) / Math.sqrt(2);
    }

    private static double[] all(List<ImagePoint> places, ToDoubleFunction<ImagePoint> of) {
        return places.stream().mapToDouble(of).toArray();
    }

    private static double middle(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    private static double scatter(double[] values, double middle) {
        double squares = 0;
        for (double value : values) {
            squares += (value - middle) * (value - middle);
        }
        return Math.sqrt(squares / Math.max(1, values.length - 1));
    }
}
