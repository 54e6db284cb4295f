package org.toeline.assist;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/**
 * Suggests what is to be marked in a view: the landmarks of the body, from a general body-pose model that comes with the program and runs on this
 * machine alone. Suggestions never count as the coach's own marks: they carry their origin and a spread that was measured.
 * There must be one person in the picture, or one much nearer than the rest; then shaft, ball, rods and uprights.
 *
 * <p>{@link #load} reads the model (some tenths of a second); a picture takes about as long. Off the interface thread; calls
 * wait for one another. Native memory is released by {@link #close}.
 */
public final class LandmarkSuggester implements AutoCloseable {

    private final PoseModel model;

    private LandmarkSuggester(PoseModel model) {
        this.model = model;
    }

    /** Empty when the model's file is missing or damaged: everything else works without it. */
    public static Optional<LandmarkSuggester> load() {
        return PoseModel.open().map(LandmarkSuggester::new);
    }

    /**
     * How far a suggested landmark of the body lies from where people mark it: standard deviation in each direction, share of the
     * player's span; empty for what is no landmark of the body, and in the view of the tee.
     */
    public static OptionalDouble spread(Landmark landmark, View view) {
        return view != View.TEE && BonyPoints.table(view).containsKey(landmark)
                ? OptionalDouble.of(BonyPoints.spread(landmark, view))
                : OptionalDouble.empty();
    }

    /** Names what suggests landmarks: while it is the same, so are they in the same picture. */
    public static String edition() {
        return BonyPoints.edition();
    }

    /**
     * Marks a whole view.
     *
     * @param stopped asked between the steps; once it says so, a {@link java.util.concurrent.CancellationException} ends it
     */
    public synchronized ViewSuggestion suggest(Asked asked, BooleanSupplier stopped) {
        Asked lit = Exposure.lit(asked);
        return lit.view() == View.TEE
                ? new TeeSuggester(lit, stopped).suggest()
                : new ViewSuggester(model, stopped).suggest(lit);
    }

    @Override
    public synchronized void close() {
        model.close();
    }
}
