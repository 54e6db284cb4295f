package org.toeline.paint;

import java.util.Optional;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.View;
import org.toeline.posture.Posture;

/** How large the world is in a picture. */
public final class WorldScale {

    private static final double STEP_M = 0.05;

    private WorldScale() {}

    /** Picture pixels to a metre straight up at a world point, by the estimated camera; empty where it is not seen. */
    public static Optional<Double> pxPerMetre(Posture posture, View view, WorldPoint at) {
        return posture.seen(view, at.plus(0, 0, -STEP_M))
                .flatMap(below ->
                        posture.seen(view, at.plus(0, 0, STEP_M)).map(above -> below.distancePx(above) / (2 * STEP_M)));
    }
}
