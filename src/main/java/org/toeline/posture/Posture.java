package org.toeline.posture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.toeline.camera.Camera;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Stature;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * The player in the world: the best estimate of everything marked, with its joint uncertainty. Immutable, and safe to
 * hand between threads.
 *
 * <p>Coordinates are those of {@link Coordinates}: (t, h, u) in metres from the ground under the ball (or from where
 * the ball is likeliest to lie, when nobody marked it). Cameras of a left-handed player see the mirrored picture;
 * {@link #seen} answers in the picture as it was shown.
 */
public final class Posture {

    private final List<Hypothesis> hypotheses;
    private final Map<View, Camera> cameras;
    private final Map<View, ViewMarks> views;
    private final Handedness handedness;
    private final List<Doubt> doubts;
    private final Fit fit;
    private final Fit likeliestFit;
    private final Stature stature;

    /**
     * How well what was marked fits together.
     *
     * @param chiSquare        sum of the squared normalised residuals, those of the habits of bodies and cameras included
     * @param degreesOfFreedom how many of them are free
     */
    public record Fit(double chiSquare, int degreesOfFreedom) {

        /**
         * The misfit per degree of freedom: about 1 for marks that fit, far more where they contradict each other.
         */
        public double perDegreeOfFreedom() {
            return chiSquare / Math.max(1, degreesOfFreedom);
        }
    }

    Posture(
            List<Hypothesis> hypotheses,
            Map<View, Camera> cameras,
            List<ViewMarks> views,
            Handedness handedness,
            List<Doubt> doubts,
            Fit fit,
            Fit likeliestFit,
            Stature stature) {
        this.hypotheses = List.copyOf(hypotheses);
        this.cameras = Map.copyOf(cameras);
        Map<View, ViewMarks> byView = new EnumMap<>(View.class);
        views.forEach(v -> byView.put(v.view(), v));
        this.views = byView;
        this.handedness = handedness;
        this.doubts = List.copyOf(doubts);
        this.fit = fit;
        this.likeliestFit = likeliestFit;
        this.stature = stature;
    }

    /** What the player may be like, the likeliest first; only one where no mark is in doubt. */
    public List<Hypothesis> hypotheses() {
        return hypotheses;
    }

    /** Under the likeliest hypothesis. */
    public Coordinates coordinates() {
        return hypotheses.get(0).coordinates();
    }

    /** Under the likeliest hypothesis. */
    public Uncertainty uncertainty() {
        return hypotheses.get(0).uncertainty();
    }

    /** Whether a mark in some view supports this landmark. */
    public boolean has(Landmark landmark) {
        return coordinates().has(landmark);
    }

    public boolean hasBall() {
        return coordinates().hasBall();
    }

    public WorldPoint at(Landmark landmark) {
        return coordinates().at(landmark);
    }

    /** The centre of the ball. */
    public WorldPoint ball() {
        return coordinates().ball();
    }

    public Handedness handedness() {
        return handedness;
    }

    /** The estimated camera of a view, for the mirrored picture when the player is left-handed. */
    public Optional<Camera> camera(View view) {
        return Optional.ofNullable(cameras.get(view));
    }

    /** Where a world point falls in the picture as it was shown. */
    public Optional<ImagePoint> seen(View view, WorldPoint point) {
        return camera(view)
                .flatMap(c -> c.project(point))
                .map(p -> handedness == Handedness.LEFT
                        ? p.mirrored(Objects.requireNonNull(views.get(view)).widthPx())
                        : p);
    }

    /** The marks that do not fit the rest, worst first. */
    public List<Doubt> doubts() {
        return doubts;
    }

    /** At the fit that takes every mark for right, those in doubt among them. */
    public Fit fit() {
        return fit;
    }

    /** Under the likeliest hypothesis, without the marks that are wrong by it. */
    public Fit likeliestFit() {
        return likeliestFit;
    }

    /** How tall the player is, as told and as the marks show; within what {@link Stature} allows. */
    public Stature stature() {
        return stature;
    }
}
