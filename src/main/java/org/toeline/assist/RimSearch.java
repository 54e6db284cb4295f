package org.toeline.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.toeline.assist.Circle.RimPoint;
import org.toeline.video.Frame;

/**
 * Looks for circles that may be a ball's rim around a click. Rays go out; where whiteness (the least of red, green and
 * blue: a ball in its own shade is as dark as grass, but not as green) changes steeply along one, averaged along the arc,
 * may be the rim. Circles through three such points that many rays agree on are the candidates.
 */
final class RimSearch {

    /** @param seen by ray, from x towards y: where the rim is found */
    record Candidate(Circle circle, boolean[] seen) {

        int rays() {
            int n = 0;
            for (boolean s : seen) {
                n += s ? 1 : 0;
            }
            return n;
        }
    }

    private record Scored(Circle circle, double score) {}

    /** Which changes of whiteness count. */
    enum Edges {
        /** Falls, the steeper the more: a ball before what is darker. */
        FALLS(14, 60, 4, 0.1),
        /** Falls and rises alike, the nearest first, faint ones hardly less than clear ones: a ball before a white shoe. */
        ALL(6, 12, 5, 0.25);

        private final double least;
        private final double full;
        private final int most;
        private final double apart;

        /**
         * @param least what counts, grey levels of 255 over the rim
         * @param full  what counts in full
         * @param most  how many of a ray are looked at
         * @param apart how far circles must be apart that both are looked at, radii
         */
        Edges(double least, double full, int most, double apart) {
            this.least = least;
            this.full = full;
            this.most = most;
            this.apart = apart;
        }

        double share(double change) {
            return Math.min(1, Math.abs(change) / full);
        }

        private boolean counts(double change) {
            return (this == ALL ? Math.abs(change) : change) > least;
        }
    }

    static final int RAYS = 96;
    static final double MOST_RADIUS_PX = 80;
    private static final double STEP_PX = 0.25;
    private static final double LEAST_RADIUS_PX = 3.5;
    /** How much of the rim must be seen to begin with. */
    private static final double LEAST_ARC = 0.24;

    private static final int TRIALS = 1500;
    private static final int MOST_CANDIDATES = 7;
    /** Half the reach of the difference that stands for the slope, samples. */
    private static final int REACH = 4;

    private final Frame frame;
    private final double mostRadiusPx;
    private final Edges edges;

    /** @param mostRadiusPx of the circles looked for */
    RimSearch(Frame frame, double mostRadiusPx, Edges edges) {
        this.frame = frame;
        this.edges = edges;
        this.mostRadiusPx = Math.min(MOST_RADIUS_PX, mostRadiusPx);
    }

    /** The best first. */
    List<Candidate> near(double x, double y) {
        List<List<RimPoint>> rays = rays(x, y, 1.5, mostRadiusPx * 1.5);
        List<Candidate> candidates = new ArrayList<>();
        for (Scored s : agreed(rays, x, y)) {
            Candidate settled = settled(s.circle);
            if (settled.rays() >= LEAST_ARC * RAYS
                    && settled.circle.r() >= LEAST_RADIUS_PX
                    && settled.circle.r() <= mostRadiusPx
                    && candidates.stream().noneMatch(c -> c.circle.apart(settled.circle) < 0.4)) {
                candidates.add(settled);
            }
        }
        return candidates;
    }

    /** The circle with rays of its own, from its own middle. */
    private Candidate settled(Circle first) {
        Circle circle = first;
        boolean[] seen = new boolean[RAYS];
        for (int round = 0; round < 3; round++) {
            List<List<RimPoint>> rays =
                    rays(circle.x(), circle.y(), Math.max(1, circle.r() * 0.4), circle.r() * 1.3 + 4);
            List<RimPoint> on = near(rays, circle, tolerance(circle), seen);
            if (on.size() < LEAST_ARC * RAYS) {
                return new Candidate(circle, new boolean[RAYS]);
            }
            Circle fitted = circle.fitted(on);
            if (!(fitted.r() > 2) || fitted.apart(circle) > 0.5 * circle.r() + 2) {
                return new Candidate(circle, seen);
            }
            circle = fitted;
        }
        return new Candidate(circle, seen);
    }

    private static double tolerance(Circle circle) {
        return Math.max(0.7, 0.06 * circle.r());
    }

    /** Of each ray the point nearest to the circle, where it is within reach. */
    private static List<RimPoint> near(List<List<RimPoint>> rays, Circle circle, double within, boolean[] seen) {
        List<RimPoint> near = new ArrayList<>();
        for (int k = 0; k < rays.size(); k++) {
            RimPoint best = null;
            for (RimPoint p : rays.get(k)) {
                if (Math.abs(circle.outside(p)) <= (best == null ? within : Math.abs(circle.outside(best)))) {
                    best = p;
                }
            }
            seen[k] = best != null;
            if (best != null) {
                near.add(best);
            }
        }
        return near;
    }

    /** Circles through three points of the rays that lie on many, and that hold the click. */
    private List<Scored> agreed(List<List<RimPoint>> rays, double x, double y) {
        List<RimPoint> all = rays.stream().flatMap(List::stream).toList();
        List<Scored> scored = new ArrayList<>();
        if (all.size() < 12) {
            return scored;
        }
        SplittableRandom random = new SplittableRandom(all.size());
        boolean[] seen = new boolean[RAYS];
        for (int i = 0; i < TRIALS; i++) {
            Circle c = Circle.through(
                    all.get(random.nextInt(all.size())),
                    all.get(random.nextInt(all.size())),
                    all.get(random.nextInt(all.size())));
            if (!(c.r() > LEAST_RADIUS_PX && c.r() < mostRadiusPx) || Math.hypot(c.x() - x, c.y() - y) > c.r() + 2) {
                continue;
            }
            double within = tolerance(c);
            double score = 0;
            for (RimPoint p : near(rays, c, within, seen)) {
                double off = c.outside(p) / within;
                score += (1 - off * off) * edges.share(p.change());
            }
            if (score > 6) {
                scored.add(new Scored(c, score));
            }
        }
        scored.sort(Comparator.comparingDouble(Scored::score).reversed());
        List<Scored> distinct = new ArrayList<>();
        for (Scored s : scored) {
            if (distinct.size() < MOST_CANDIDATES
                    && distinct.stream().noneMatch(d -> d.circle.apart(s.circle) < 2 + edges.apart * s.circle.r())) {
                distinct.add(s);
            }
        }
        return distinct;
    }

    private List<List<RimPoint>> rays(double cx, double cy, double from, double to) {
        List<List<RimPoint>> rays = new ArrayList<>();
        for (int k = 0; k < RAYS; k++) {
            double angle = 2 * Math.PI * (k + 0.5) / RAYS;
            double[] white = profile(cx, cy, from, to, angle);
            List<RimPoint> points = new ArrayList<>();
            for (int at : changes(white)) {
                double r = from + (at + peak(white, at)) * STEP_PX;
                points.add(new RimPoint(cx + r * Math.cos(angle), cy + r * Math.sin(angle), change(white, at)));
            }
            rays.add(points);
        }
        return rays;
    }

    private double[] profile(double cx, double cy, double from, double to, double angle) {
        double[] white = new double[Math.max(2 * REACH + 2, (int) ((to - from) / STEP_PX))];
        for (int i = 0; i < white.length; i++) {
            white[i] = arc(cx, cy, from + i * STEP_PX, angle);
        }
        return white;
    }

    /** Whiteness at a radius, averaged over the arc between two rays, at most 2 px of it to either side. */
    private double arc(double cx, double cy, double r, double angle) {
        double half = Math.min(Math.PI / RAYS * 2, 2 / Math.max(r, 1));
        double sum = 0;
        for (int k = -1; k <= 1; k++) {
            double a = angle + half * k / 1.5;
            sum += at(cx + r * Math.cos(a), cy + r * Math.sin(a));
        }
        return sum / 3;
    }

    private double at(double x, double y) {
        int x0 = (int) Math.floor(x - 0.5);
        int y0 = (int) Math.floor(y - 0.5);
        double fx = x - 0.5 - x0;
        double fy = y - 0.5 - y0;
        return (1 - fy) * ((1 - fx) * frame.whiteness(x0, y0) + fx * frame.whiteness(x0 + 1, y0))
                + fy * ((1 - fx) * frame.whiteness(x0, y0 + 1) + fx * frame.whiteness(x0 + 1, y0 + 1));
    }

    /** How much the whiteness falls about a sample. */
    private static double change(double[] white, int i) {
        return white[i - REACH] - white[i + REACH];
    }

    /** Where the whiteness changes most, the few places that matter. */
    private List<Integer> changes(double[] white) {
        List<Integer> places = new ArrayList<>();
        for (int i = REACH + 1; i < white.length - REACH - 1; i++) {
            double steep = Math.abs(change(white, i));
            if (edges.counts(change(white, i))
                    && steep >= Math.abs(change(white, i - 1))
                    && steep > Math.abs(change(white, i + 1))) {
                places.add(i);
            }
        }
        if (edges == Edges.FALLS) {
            places.sort((a, b) -> Double.compare(change(white, b), change(white, a)));
        }
        return places.size() > edges.most ? places.subList(0, edges.most) : places;
    }

    /** Where between the samples the slope is steepest: the middle of mass of what exceeds half of it. */
    private static double peak(double[] white, int at) {
        double way = Math.signum(change(white, at));
        double half = way * change(white, at) / 2;
        double sum = 0;
        double weight = 0;
        for (int side = -1; side <= 1; side += 2) {
            for (int i = at + (side < 0 ? 0 : 1); i >= REACH && i < white.length - REACH; i += side) {
                double more = way * change(white, i) - half;
                if (more <= 0) {
                    break;
                }
                sum += more * (i - at);
                weight += more;
            }
        }
        return weight > 0 ? sum / weight : 0;
    }
}
