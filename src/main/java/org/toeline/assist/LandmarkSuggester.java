package org.toeline.assist;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.toeline.assist.LandmarkSuggestion.Landmarks;
import org.toeline.assist.LandmarkSuggestion.NoPerson;
import org.toeline.assist.LandmarkSuggestion.NoPerson.Reason;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * Suggests where the landmarks of a body are, from a general body-pose model that comes with the program and runs on this
 * machine alone. Suggestions never count as the coach's own marks: they carry their origin and a spread that was measured.
 * There must be one person in the picture, or one much nearer than the rest; club and ball are not suggested.
 *
 * <p>{@link #load} reads the model (some tenths of a second); a picture takes about as long. Off the interface thread; calls
 * wait for one another. Native memory is released by {@link #close}.
 */
public final class LandmarkSuggester implements AutoCloseable {

    private final PoseModel model;

    private LandmarkSuggester(PoseModel model) {
        this.model = model;
    }

    /** Empty when the program was put together without the model: everything else works without it. */
    public static Optional<LandmarkSuggester> load() {
        return PoseModel.present() ? Optional.of(new LandmarkSuggester(new PoseModel())) : Optional.empty();
    }

    /**
     * Looks for the player in a frame.
     *
     * @param view  only {@link View#FACE_ON} and {@link View#DOWN_THE_LINE} show a player
     * @param hints marks already placed, such as the ball: where is looked first; may be empty
     */
    public synchronized LandmarkSuggestion suggest(
            Frame frame, View view, Handedness handedness, List<ImagePoint> hints) {
        if (view == View.TEE) {
            return new NoPerson(Reason.OTHER_VIEW);
        }
        PoseSearch search = new PoseSearch(model, frame);
        Optional<Seen> person = search.person(hints);
        if (person.isEmpty()) {
            return new NoPerson(search.unclear() ? Reason.NOT_CLEAR : Reason.NOBODY);
        }
        Optional<Sides> sides = Sides.of(person.get(), view, handedness == Handedness.RIGHT);
        return sides.isEmpty()
                ? new NoPerson(Reason.NOT_CLEAR)
                : new Landmarks(
                        BonyPoints.of(sides.get(), view, handedness),
                        person.get().score());
    }

    /**
     * Marks a whole view.
     *
     * @param frames  the marked one first, then others in which the player stands as still
     * @param focalPx about the focal length, pixels
     * @param stopped asked between the steps; once it says so, a {@link java.util.concurrent.CancellationException} ends it
     */
    public synchronized ViewSuggestion whole(
            List<Frame> frames, View view, Handedness handedness, double focalPx, BooleanSupplier stopped) {
        if (view == View.TEE) {
            return ViewSuggestion.nothing(ViewSuggestion.Reason.BY_HAND);
        }
        return new ViewSuggester(model, stopped).suggest(frames, view, handedness, focalPx);
    }

    @Override
    public synchronized void close() {
        model.close();
    }
}
