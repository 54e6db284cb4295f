package org.toeline.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.toeline.assist.BallFit.Cover;

/**
 * What a circle seen in a picture may be: a ball, or what a cover's straight edge leaves of a larger one. A small ball half
 * hidden leaves too little rim to be told from a smaller ball by its rim alone; the picture as a whole tells.
 */
final class Hypotheses {

    private static final double GAMMA = 2.2;
    private static final double[] LARGER = {1, 1.35, 1.8};
    /** Of a ball this large enough rim is left, unless about half of it is hidden. */
    private static final double ROUND_PX = 28;

    private static final double HALF_COVERED = 0.42;
    static final double LARGE_PX = 12;
    private static final int DIRECTIONS = 8;
    static final double BEYOND_PX = 6;
    /** By how much more a cover must explain, in units of χ², for each value it brings. */
    private static final double PRICE = 6;
    /** A smaller circle may be the inside of what is left of a larger one, with no gap in its rim. */
    private static final double SMALL_PX = 6;
    /** With no longer gap in the rim than this no cover is looked for. */
    private static final double NO_COVER = 0.2;

    private static final int MOST_TRIED = 6;
    /** So many pixels of a large circle tell what it is. */
    private static final int TO_TELL = 4000;

    private final BallPatch patch;
    private final Circle circle;
    private final boolean[] open;

    Hypotheses(Colours colours, Stretch stretch, Circle circle, boolean[] open) {
        double more = circle.r() <= LARGE_PX ? 0.9 * circle.r() : 0;
        this.patch = new BallPatch(colours, stretch, circle, BEYOND_PX + more, TO_TELL);
        this.circle = circle;
        this.open = open;
    }

    Optional<BallFit> best(Predicate<BallFit> isBall) {
        BallFit plain = new BallFit(patch, circle, open, GAMMA);
        boolean fits = plain.run() && isBall.test(plain);
        if (circle.r() > SMALL_PX && plain.rim().gap().share() < (circle.r() > ROUND_PX ? HALF_COVERED : NO_COVER)) {
            return fits ? Optional.of(plain) : Optional.empty();
        }
        List<BallFit> found = new ArrayList<>();
        if (fits) {
            found.add(plain);
        }
        for (Start start : promising(plain)) {
            BallFit behind = behind(start);
            if (behind.run() && behind.plausible() && isBall.test(behind)) {
                found.add(behind);
                if (behind.explains()) {
                    break;
                }
            }
        }
        return likeliest(found, patch);
    }

    /** The one that explains a patch best, with the least to say. */
    static Optional<BallFit> likeliest(List<BallFit> fits, BallPatch patch) {
        double noise = fits.stream().mapToDouble(BallFit::noise).min().orElse(1);
        double ground = fits.stream().mapToDouble(BallFit::groundNoise).min().orElse(1);
        return fits.stream().min(Comparator.comparingDouble(f -> f.misfit(patch, noise, ground) + PRICE * f.values()));
    }

    private record Start(double angle, double larger) {}

    private List<Start> promising(BallFit plain) {
        List<Start> starts = new ArrayList<>();
        double gap = plain.rim().gap().angleRad();
        for (int k = 0; k < DIRECTIONS; k++) {
            double angle = gap + 2 * Math.PI * k / DIRECTIONS;
            // a large rim shows where its gap is, and how large it is itself
            if (circle.r() <= LARGE_PX) {
                for (double larger : LARGER) {
                    starts.add(new Start(angle, larger));
                }
            } else if (k <= 1 || k == DIRECTIONS - 1) {
                starts.add(new Start(angle, 1));
            }
        }
        Map<Start, Double> tried = new HashMap<>();
        starts.forEach(s -> tried.put(s, behind(s).tried(plain.noise(), plain.groundNoise())));
        starts.sort(Comparator.comparingDouble(tried::get));
        return starts.subList(0, Math.min(starts.size(), MOST_TRIED));
    }

    /** A ball so much larger whose seen edge is the circle's, behind a cover on one side. */
    private BallFit behind(Start start) {
        double angle = start.angle;
        double larger = start.larger;
        double on = (larger - 1) * circle.r();
        Circle whole =
                new Circle(circle.x() + on * Math.cos(angle), circle.y() + on * Math.sin(angle), larger * circle.r());
        boolean[] all = new boolean[Rim.sectors(whole.r())];
        java.util.Arrays.fill(all, true);
        return new BallFit(
                patch, whole, all, GAMMA, new Cover(angle, larger == 1 ? 0.1 * circle.r() : 0.9 * circle.r()));
    }
}
