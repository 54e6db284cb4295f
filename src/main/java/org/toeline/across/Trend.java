package org.toeline.across;

import java.util.List;
import java.util.Optional;
import org.toeline.geometry.Finite;
import org.toeline.reading.Measured;

/**
 * The straight line through a figure over lessons, each weighted by 1/(u² + s²).
 *
 * @param slope                    change of the figure for each step of {@code x}
 * @param slopeStandardUncertainty of the slope, above zero
 * @param smallestDetectable       Student's t of these, for the readings that are looked at together: a slope is real when it
 *                                 exceeds it
 * @param meanX                    weighted mean of {@code x}
 * @param meanValue                the line's value there, which is the weighted mean of the figures
 * @param misfit                   chi-square over degrees of freedom; near 1 when the lessons scatter about the line as much
 *                                 as their uncertainties say, 0 for two lessons
 */
public record Trend(
        double slope,
        double slopeStandardUncertainty,
        double smallestDetectable,
        double meanX,
        double meanValue,
        double misfit,
        ChangeCall call) {

    /** A figure at a place along the axis: the lesson's number or its day. */
    public record Point(double x, Measured measured) {

        public Point {
            Finite.require(x, "x");
        }
    }

    /**
     * Empty for fewer than two points or when all lie at one {@code x}. How much the lessons scatter about the line is put together
     * with what is known of it beforehand, each by its degrees of freedom; where that is more than the uncertainties explain, the
     * slope's uncertainty grows by its root, so that an unsteady player is not given a trend (Birge 1932, Phys. Rev. 40:207).
     *
     * @param family the readings whose trends are looked at together
     */
    public static Optional<Trend> of(List<Point> points, OwnSpread spread, Family family) {
        double own = Math.pow(spread.standardDeviation(), 2);
        double sumW = 0;
        double sumX = 0;
        double sumY = 0;
        for (Point p : points) {
            double w = weight(p, own);
            sumW += w;
            sumX += w * p.x();
            sumY += w * p.measured().value();
        }
        double meanX = sumX / sumW;
        double meanY = sumY / sumW;
        double sxx = 0;
        double sxy = 0;
        for (Point p : points) {
            sxx += weight(p, own) * Math.pow(p.x() - meanX, 2);
            sxy += weight(p, own) * (p.x() - meanX) * (p.measured().value() - meanY);
        }
        if (points.size() < 2 || !(sxx > 0)) {
            return Optional.empty();
        }
        double slope = sxy / sxx;
        double chiSquare = 0;
        for (Point p : points) {
            chiSquare += weight(p, own) * Math.pow(p.measured().value() - meanY - slope * (p.x() - meanX), 2);
        }
        int over = points.size() - 2;
        double misfit = over == 0 ? 0 : chiSquare / over;
        double meanMeasuring = points.stream()
                .mapToDouble(p -> Math.pow(p.measured().standardUncertainty(), 2))
                .average()
                .orElseThrow();
        double beforehand = spread.freedomOf(meanMeasuring, 1);
        double scatter = (beforehand + chiSquare) / (beforehand + over);
        double sigma = Math.sqrt(Math.max(1, scatter) / sxx);
        double smallest = LessonChange.smallest(sigma, beforehand + over, family);
        return Optional.of(new Trend(
                slope,
                sigma,
                smallest,
                meanX,
                meanY,
                misfit,
                LessonChange.call(slope, smallest, sigma, beforehand + over)));
    }

    private static double weight(Point p, double own) {
        return 1 / (Math.pow(p.measured().standardUncertainty(), 2) + own);
    }
}
