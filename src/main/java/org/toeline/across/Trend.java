package org.toeline.across;

import java.util.List;
import java.util.Optional;
import org.toeline.geometry.Finite;
import org.toeline.reading.Measured;

/**
 * The straight line through a figure over lessons, each weighted by 1/(u² + s²): by 1/u² where the player's own spread is
 * not known.
 *
 * @param slope                    change of the figure for each step of {@code x}
 * @param slopeStandardUncertainty of the slope, above zero
 * @param meanX                    weighted mean of {@code x}
 * @param meanValue                the line's value there, which is the weighted mean of the figures
 * @param misfit                   chi-square over degrees of freedom; near 1 when the lessons scatter about the line as much
 *                                 as their uncertainties say, 0 for two lessons
 */
public record Trend(
        double slope, double slopeStandardUncertainty, double meanX, double meanValue, double misfit, ChangeCall call) {

    /** A figure at a place along the axis: the lesson's number or its day. */
    public record Point(double x, Measured measured) {

        public Point {
            Finite.require(x, "x");
        }
    }

    /**
     * Empty for fewer than two points or when all lie at one {@code x}. When the lessons scatter more than their
     * uncertainties explain (misfit above 1), the slope's uncertainty grows by its root, so that an unsteady player is not
     * given a trend (Birge 1932, Phys. Rev. 40:207).
     */
    public static Optional<Trend> of(List<Point> points, OwnSpread spread) {
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
        double misfit = points.size() == 2 ? 0 : chiSquare / (points.size() - 2);
        double sigma = Math.sqrt(Math.max(1, misfit) / sxx);
        return Optional.of(new Trend(slope, sigma, meanX, meanY, misfit, LessonChange.call(slope, sigma, sigma)));
    }

    private static double weight(Point p, double own) {
        return 1 / (Math.pow(p.measured().standardUncertainty(), 2) + own);
    }
}
