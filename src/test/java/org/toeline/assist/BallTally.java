package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;

/** Errors of fitted balls against their truth. */
final class BallTally {

    /** Errors in pixels, and what was stated for them. */
    record Error(double dx, double dy, double dd, double sigma, double diameterSigma) {}

    static final String HEADER = "fitted | refused | centre bias | centre rms | diameter bias | diameter rms "
            + "| centre stated | diameter stated | centre in 95 % | diameter in 95 % |";

    private final List<Error> errors = new ArrayList<>();
    private int refused;

    void add(DrawnBall ball, Optional<BallMark> found) {
        add(new ImagePoint(ball.x(), ball.y()), ball.diameterPx(), found);
    }

    void add(ImagePoint centre, double diameterPx, Optional<BallMark> found) {
        if (found.isEmpty()) {
            refused++;
            return;
        }
        BallMark m = found.get();
        errors.add(new Error(
                m.centre().xPx() - centre.xPx(),
                m.centre().yPx() - centre.yPx(),
                m.diameterPx().orElseThrow() - diameterPx,
                m.sigmaPx(),
                m.diameterSigmaPx()));
    }

    int refused() {
        return refused;
    }

    /** The larger of the two directions. */
    double centreBias() {
        return Math.max(Math.abs(mean(Error::dx)), Math.abs(mean(Error::dy)));
    }

    /** In one direction. */
    double centreRms() {
        return Math.sqrt(mean(e -> (e.dx * e.dx + e.dy * e.dy) / 2));
    }

    double diameterBias() {
        return mean(Error::dd);
    }

    double diameterRms() {
        return Math.sqrt(mean(e -> e.dd * e.dd));
    }

    /** Share of the centre's two coordinates within 1.96 of their stated standard deviations. */
    double centreCovered() {
        return mean(e -> ((Math.abs(e.dx) <= 1.96 * e.sigma ? 0.5 : 0) + (Math.abs(e.dy) <= 1.96 * e.sigma ? 0.5 : 0)));
    }

    double diameterCovered() {
        return mean(e -> Math.abs(e.dd) <= 1.96 * e.diameterSigma ? 1 : 0);
    }

    private double mean(ToDoubleFunction<Error> of) {
        return errors.stream().mapToDouble(of).average().orElse(Double.NaN);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d | %d | %.3f | %.3f | %+.3f | %.3f | %.2f | %.2f | %.0f %% | %.0f %% |",
                errors.size(),
                refused,
                centreBias(),
                centreRms(),
                diameterBias(),
                diameterRms(),
                mean(Error::sigma),
                mean(Error::diameterSigma),
                100 * centreCovered(),
                100 * diameterCovered());
    }
}
