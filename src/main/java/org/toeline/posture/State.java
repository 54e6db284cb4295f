package org.toeline.posture;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.toeline.mark.View;

/** One point of the fit: the unknowns and the cameras they make. Owned by one fit; not shared between threads. */
final class State {

    final double[] x;
    private final Map<View, ViewFrame> frames;

    State(double[] x, Map<View, ViewFrame> frames) {
        this.x = x;
        this.frames = frames;
        frames.values().forEach(f -> f.set(x));
    }

    /** Other unknowns seen by cameras of their own. */
    State with(double[] others) {
        Map<View, ViewFrame> copies = new EnumMap<>(View.class);
        frames.forEach((view, frame) -> copies.put(view, frame.another()));
        return new State(others, copies);
    }

    /** Puts other values into this state. */
    void moveTo(double[] values) {
        System.arraycopy(values, 0, x, 0, x.length);
        for (ViewFrame f : frames.values()) {
            f.set(x);
        }
    }

    ViewFrame frame(View view) {
        return Objects.requireNonNull(frames.get(view));
    }

    Map<View, ViewFrame> frames() {
        return frames;
    }
}
