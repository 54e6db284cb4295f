package org.toeline.mark;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;

/**
 * The measured points of the floor, in one frame for all views: parallel to the world frame, origin anywhere.
 *
 * @param sigmaM standard deviation of each coordinate, metres, above zero
 * @param laying whether it stayed where it was from one view to the other
 */
public record FloorLayout(List<FloorReference> points, double sigmaM, Laying laying) {

    /** The spread assumed for a layout that states none, metres. */
    public static final double USUAL_SIGMA_M = 0.005;

    /** Two points nearer to each other than this are taken for one and the same, metres. */
    public static final double COINCIDENT_M = 0.001;

    public static final FloorLayout NONE = new FloorLayout(List.of(), USUAL_SIGMA_M);

    public FloorLayout {
        points = List.copyOf(points);
        Finite.requirePositive(sigmaM, "sigmaM");
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < points.size(); i++) {
            FloorReference p = points.get(i);
            if (!seen.add(p.id())) {
                throw new IllegalArgumentException(
                        Sentences.of(FloorLayout.class).of("floor.same-name", p.id()));
            }
            for (FloorReference q : points.subList(0, i)) {
                if (Math.hypot(p.t() - q.t(), p.h() - q.h()) < COINCIDENT_M) {
                    throw new IllegalArgumentException(
                            Sentences.of(FloorLayout.class).of("floor.same-place", q.id(), p.id()));
                }
            }
        }
    }

    /** A layout that stayed where it was. */
    public FloorLayout(List<FloorReference> points, double sigmaM) {
        this(points, sigmaM, Laying.ONCE);
    }

    public FloorLayout withLaying(Laying changed) {
        return new FloorLayout(points, sigmaM, changed);
    }

    public Optional<FloorReference> point(String id) {
        return points.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
