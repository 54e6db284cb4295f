package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.toeline.assist.Circle.RimPoint;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.video.Frame;

/**
 * Finds and fits the outline of a ball from one click on it: a bright disc of 8 to 150 px across, part of which may be
 * hidden. Rays go out from the middle; where whiteness (the least of red, green and blue: a ball in its own shade is as
 * dark as grass, but not as green) falls steeply along one, averaged along the arc, may be the rim. A circle most rays
 * agree on is fitted, the others (behind the club head, on the tee, in shade) are left out. What a blur σ takes off the
 * radius (about σ²/2r) is added back from the width of the edge.
 */
public final class BallOutline {

    private static final int RAYS = 96;
    private static final double STEP_PX = 0.25;
    private static final double MOST_RADIUS_PX = 80;
    /** The least fall of brightness over the rim that counts, grey levels of 255. */
    private static final double LEAST_FALL = 14;
    /** How much of the rim must be seen. */
    private static final double LEAST_ARC = 0.42;
    /** Where the fall is less than this share of the strong ones, the rim lies in shade. */
    private static final double LIT_SHARE = 0.65;
    /** What lossy coding and shade leave uncertain even without noise, pixels: seen on the sample clips. */
    private static final double MODEL_CENTRE_PX = 0.4;
    private static final double MODEL_DIAMETER_PX = 0.6;

    private final Frame frame;
    private double edgeVariance;

    private BallOutline(Frame frame) {
        this.frame = frame;
    }

    /** The ball at a click; empty when what is there is no ball. Pixels as everywhere: centres at half-integers. */
    public static Optional<BallMark> fit(Frame frame, ImagePoint near) {
        return new BallOutline(frame).fit(near.xPx(), near.yPx());
    }

    private Optional<BallMark> fit(double x, double y) {
        Circle circle = new Circle(x, y, MOST_RADIUS_PX / 1.6);
        List<RimPoint> inliers = List.of();
        for (int round = 0; round < 6; round++) {
            double reach = round == 0 ? MOST_RADIUS_PX : Math.min(MOST_RADIUS_PX, circle.r() * 1.7 + 4);
            List<List<RimPoint>> rays = rays(circle.x(), circle.y(), round < 2 ? 2.0 : circle.r() * 0.4, reach);
            Optional<Circle> agreed = agreed(rays);
            if (agreed.isEmpty()) {
                return Optional.empty();
            }
            inliers = near(rays, agreed.get(), tolerance(agreed.get()));
            circle = agreed.get().fitted(inliers);
            inliers = near(rays, circle, Math.max(0.4, 2.5 * scatter(inliers, circle)));
            if (inliers.size() < LEAST_ARC * RAYS) {
                return Optional.empty();
            }
            inliers = lit(inliers);
            circle = circle.fitted(inliers);
        }
        if (circle.r() < 4 || circle.r() > MOST_RADIUS_PX
                || Math.hypot(circle.x() - x, circle.y() - y) > circle.r() + 4) {
            return Optional.empty();
        }
        edgeVariance = edge(circle, inliers);
        return Optional.of(mark(circle, inliers));
    }

    private BallMark mark(Circle circle, List<RimPoint> inliers) {
        double squares = 0;
        for (RimPoint p : inliers) {
            squares += circle.outside(p) * circle.outside(p);
        }
        // neighbouring rays share pixels: count one independent point for each 1.5 px of rim
        double independent = Math.max(6, Math.min(inliers.size(), 2 * Math.PI * circle.r() * inliers.size() / RAYS / 1.5));
        double rim = Math.sqrt(squares / Math.max(1, inliers.size() - 3));
        double hidden = (double) RAYS / inliers.size();
        double centre = Math.hypot(rim * Math.sqrt(2 / independent) * hidden, MODEL_CENTRE_PX);
        double diameter = Math.hypot(2 * rim / Math.sqrt(independent) * hidden, MODEL_DIAMETER_PX);
        double radius = circle.r() + edgeVariance / (2 * circle.r());
        return new BallMark(new ImagePoint(circle.x(), circle.y()), OptionalDouble.of(2 * radius), centre, diameter);
    }

    /** The part of the rim where the ball is lit: in its own shade the edge is drawn inwards. */
    private static List<RimPoint> lit(List<RimPoint> rim) {
        double[] falls = rim.stream().mapToDouble(RimPoint::fall).sorted().toArray();
        double strong = LIT_SHARE * falls[(int) (0.85 * (falls.length - 1))];
        List<RimPoint> lit = rim.stream().filter(p -> p.fall() >= strong).toList();
        return lit.size() >= LEAST_ARC * RAYS ? lit : rim;
    }

    private static double tolerance(Circle circle) {
        return Math.max(0.8, 0.07 * circle.r());
    }

    private static double scatter(List<RimPoint> rim, Circle circle) {
        double[] off = rim.stream().mapToDouble(p -> Math.abs(circle.outside(p))).sorted().toArray();
        return off.length == 0 ? 0 : 1.48 * off[off.length / 2];
    }

    /** Of each ray the point nearest to the circle, where it is within reach. */
    private static List<RimPoint> near(List<List<RimPoint>> rays, Circle circle, double within) {
        List<RimPoint> near = new ArrayList<>();
        for (List<RimPoint> ray : rays) {
            RimPoint best = null;
            for (RimPoint p : ray) {
                if (Math.abs(circle.outside(p)) <= (best == null ? within : Math.abs(circle.outside(best)))) {
                    best = p;
                }
            }
            if (best != null) {
                near.add(best);
            }
        }
        return near;
    }

    /** The circle through three of the points that lies on most rays; of two alike the larger, the other is shade. */
    private static Optional<Circle> agreed(List<List<RimPoint>> rays) {
        List<RimPoint> all = new ArrayList<>();
        rays.forEach(all::addAll);
        if (rays.size() < LEAST_ARC * RAYS) {
            return Optional.empty();
        }
        SplittableRandom random = new SplittableRandom(all.size());
        Circle best = null;
        double most = LEAST_ARC * RAYS;
        for (int i = 0; i < 1200; i++) {
            Circle c = Circle.through(all.get(random.nextInt(all.size())), all.get(random.nextInt(all.size())),
                    all.get(random.nextInt(all.size())));
            if (!(c.r() > 3.5 && c.r() < MOST_RADIUS_PX)) {
                continue;
            }
            List<RimPoint> on = near(rays, c, tolerance(c));
            double off = on.stream().mapToDouble(p -> Math.abs(c.outside(p))).average().orElse(0);
            double score = on.size() * (1 - 0.3 * off / tolerance(c));
            if (on.size() >= LEAST_ARC * RAYS && score > most) {
                most = score;
                best = c;
            }
        }
        return Optional.ofNullable(best);
    }

    private List<List<RimPoint>> rays(double cx, double cy, double from, double to) {
        List<List<RimPoint>> rays = new ArrayList<>();
        for (int k = 0; k < RAYS; k++) {
            double angle = 2 * Math.PI * k / RAYS;
            double[] grey = profile(cx, cy, from, to, angle);
            List<RimPoint> points = new ArrayList<>();
            for (int at : falls(grey)) {
                double r = from + (at + peak(grey, at)) * STEP_PX;
                points.add(new RimPoint(cx + r * Math.cos(angle), cy + r * Math.sin(angle), fall(grey, at)));
            }
            if (!points.isEmpty()) {
                rays.add(points);
            }
        }
        return rays;
    }

    private double[] profile(double cx, double cy, double from, double to, double angle) {
        double[] grey = new double[Math.max(2 * REACH + 2, (int) ((to - from) / STEP_PX))];
        for (int i = 0; i < grey.length; i++) {
            grey[i] = arc(cx, cy, from + i * STEP_PX, angle);
        }
        return grey;
    }

    /** The variance of the edge where the rim was found, the middle of all rays, px². */
    private double edge(Circle circle, List<RimPoint> inliers) {
        double from = Math.max(0.5, circle.r() - 5);
        return inliers.stream().mapToDouble(p -> {
            double[] grey = profile(circle.x(), circle.y(), from, circle.r() + 5,
                    Math.atan2(p.y() - circle.y(), p.x() - circle.x()));
            int at = (int) Math.round((circle.r() - from) / STEP_PX);
            return variance(grey, at);
        }).sorted().skip(inliers.size() / 3).limit(1).findFirst().orElse(0);
    }

    /** Brightness at a radius, averaged over the arc between two rays, at most 3 px of it to either side. */
    private double arc(double cx, double cy, double r, double angle) {
        double half = Math.min(Math.PI / RAYS * 1.5, 3 / Math.max(r, 1));
        double sum = 0;
        for (int k = -2; k <= 2; k++) {
            double a = angle + half * k / 2.5;
            sum += at(cx + r * Math.cos(a), cy + r * Math.sin(a));
        }
        return sum / 5;
    }

    private double at(double x, double y) {
        int x0 = (int) Math.floor(x - 0.5);
        int y0 = (int) Math.floor(y - 0.5);
        double fx = x - 0.5 - x0;
        double fy = y - 0.5 - y0;
        return (1 - fy) * ((1 - fx) * frame.whiteness(x0, y0) + fx * frame.whiteness(x0 + 1, y0))
                + fy * ((1 - fx) * frame.whiteness(x0, y0 + 1) + fx * frame.whiteness(x0 + 1, y0 + 1));
    }

    private static final int MOST_FALLS = 4;
    /** Half the reach of the difference that stands for the slope, samples. */
    private static final int REACH = 4;

    private static double fall(double[] grey, int i) {
        return grey[i - REACH] - grey[i + REACH];
    }

    /** Where the brightness falls steepest, the few places that matter. */
    private static List<Integer> falls(double[] grey) {
        List<Integer> places = new ArrayList<>();
        for (int i = REACH + 1; i < grey.length - REACH - 1; i++) {
            double f = fall(grey, i);
            if (f > LEAST_FALL && f >= fall(grey, i - 1) && f > fall(grey, i + 1)) {
                places.add(i);
            }
        }
        places.sort((a, b) -> Double.compare(fall(grey, b), fall(grey, a)));
        return places.size() > MOST_FALLS ? places.subList(0, MOST_FALLS) : places;
    }

    /** Where between the samples the slope is steepest: the middle of mass of what exceeds half of it. */
    private static double peak(double[] grey, int at) {
        double half = fall(grey, at) / 2;
        double sum = 0;
        double weight = 0;
        for (int side = -1; side <= 1; side += 2) {
            for (int i = at + (side < 0 ? 0 : 1); i >= REACH && i < grey.length - REACH && fall(grey, i) > half;
                 i += side) {
                sum += (fall(grey, i) - half) * (i - at);
                weight += fall(grey, i) - half;
            }
        }
        return weight > 0 ? sum / weight : 0;
    }

    /** The edge's own variance, px²: that of the slope less that of the difference taken. */
    private static double variance(double[] grey, int at) {
        double weight = 0;
        double squares = 0;
        for (int i = Math.max(REACH, at - 14); i < Math.min(grey.length - REACH, at + 15); i++) {
            double f = Math.max(0, fall(grey, i) - 0.1 * fall(grey, at));
            weight += f;
            squares += f * (i - at) * (i - at);
        }
        double difference = (2.0 * REACH) * (2.0 * REACH) / 12;
        return weight > 0 ? Math.max(0, squares / weight - difference) * STEP_PX * STEP_PX : 0;
    }
}
