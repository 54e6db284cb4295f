package org.toeline.scene;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.toeline.mark.FloorReference;

/** The empty practice bay: turf mat with two rods laid as a T, floor, walls with a door and upright posts, a screen. */
final class Bay {

    static final double ROD_M = 0.0065;

    /** Upright edges by name, and where they stand (t, h): both sides of the door, the room's corner, a screen post. */
    static final Map<String, double[]> UPRIGHTS = new TreeMap<>(Map.of(
            "door-near",
            new double[] {1.42, 2.75},
            "door-far",
            new double[] {2.30, 2.75},
            "corner",
            new double[] {4.6, 2.75},
            "screen-post",
            new double[] {4.6, 2.405}));
    /** How high the lowest of them, the door, reaches. */
    static final double UPRIGHT_U = 2.05;

    private static final double WALL_H = 2.75;
    private static final double OTHER_WALL_H = -5.4;
    private static final double SCREEN_T = 4.6;
    private static final double REAR_T = -5.8;
    private static final double CEILING_U = 3.1;
    private static final int[] ROD_COLOURS = {0xE0572A, 0x2F7FC1};
    private static final double TIP_M = 0.035;

    private final List<FloorReference> rods;
    private final int wall;
    private final int panel;

    /** @param rods the ends of the two rods, pair by pair */
    Bay(List<FloorReference> rods, int wall, int panel) {
        this.rods = rods;
        this.wall = wall;
        this.panel = panel;
    }

    /** What a ray from inside the bay meets. */
    void look(Vec from, Vec along, double finePerM, Hit hit) {
        double best = Double.MAX_VALUE;
        hit.floor = false;
        int side = -1;
        double[] distances = {
            plane(from.z(), along.z(), 0),
            plane(from.z(), along.z(), CEILING_U),
            plane(from.y(), along.y(), WALL_H),
            plane(from.y(), along.y(), OTHER_WALL_H),
            plane(from.x(), along.x(), SCREEN_T),
            plane(from.x(), along.x(), REAR_T)
        };
        for (int i = 0; i < distances.length; i++) {
            if (distances[i] < best) {
                best = distances[i];
                side = i;
            }
        }
        Vec p = from.plus(along.times(best));
        double fine = best * finePerM;
        hit.t = p.x();
        hit.h = p.y();
        switch (side) {
            case 0 -> floor(p, fine, hit);
            case 1 -> hit.swatch.colour(0xC9C8C4);
            case 4 -> screen(p, fine, hit.swatch);
            default -> wall(p, side, fine, hit.swatch);
        }
        if (side == 0) {
            for (int i = 0; i < rods.size(); i += 2) {
                rod(from, along, rods.get(i), rods.get(i + 1), ROD_COLOURS[i / 2 % 2], fine, hit);
            }
        } else {
            hit.swatch.times(light(p));
        }
    }

    private static double plane(double from, double along, double at) {
        double d = (at - from) / along;
        return d > 1e-6 ? d : Double.MAX_VALUE;
    }

    /** Even light that falls off into the corners. */
    private static double light(Vec p) {
        double low = corner(p.z(), 0.35);
        double high = corner(CEILING_U - p.z(), 0.6);
        double back = corner(WALL_H - p.y(), 0.45);
        double end = corner(SCREEN_T - p.x(), 0.45);
        double both = Math.min(back + (p.y() > WALL_H - 1e-6 ? 1 : 0), end + (p.x() > SCREEN_T - 1e-6 ? 1 : 0));
        return 0.92
                * (0.80 + 0.20 * Math.min(1, low))
                * (0.85 + 0.15 * Math.min(1, high))
                * (0.84 + 0.16 * Math.min(1, both))
                * (0.93 + 0.05 * Math.sin(0.7 * p.x() + 0.4 * p.y() + 1));
    }

    private static double corner(double away, double reach) {
        double s = Math.min(1, Math.max(0, away / reach));
        return s * (2 - s);
    }

    private void floor(Vec p, double fine, Hit hit) {
        hit.floor = true;
        Swatch s = hit.swatch;
        double t = p.x();
        double h = p.y();
        double edge = Math.max(Math.max(-1.50 - t, t - 1.30), Math.max(-0.80 - h, h - 1.80));
        double strip = Math.max(Math.abs(h) - 0.9, 1.36 - t);
        if (edge < 0 || strip < 0) {
            turf(t, h, fine, s, edge < 0);
        } else {
            s.colour(0x9B9A95);
            double a = Math.abs(t / 0.6 - Math.round(t / 0.6)) * 0.6;
            double b = Math.abs(h / 0.6 - Math.round(h / 0.6)) * 0.6;
            s.times(1 - 0.22 * Swatch.line(Math.min(a, b), 0.0025, fine));
            s.times(1 + 0.05 * Grain.clouds(t * 9, h * 9) + fade(fine, 0.006) * 0.07 * Grain.at(t / 0.005, h / 0.005));
        }
        if (edge > 0 && edge < 0.035) {
            s.colour(0x34363A);
        }
        if (edge >= 0.035) {
            s.times(1 - 0.35 * Math.exp(-(edge - 0.035) / 0.02));
        }
        double rim = Math.min(corner(WALL_H - h, 0.5), corner(SCREEN_T - t, 0.5));
        s.times(0.82 * (0.75 + 0.25 * rim));
    }

    private static void turf(double t, double h, double fine, Swatch s, boolean mat) {
        s.colour(mat ? 0x678A5C : 0x5D8057);
        double blades = Grain.at(t / 0.0035, h / 0.006);
        double tufts = Grain.at(t / 0.016, h / 0.021);
        s.times(1
                + 0.20 * fade(fine, 0.0035) * blades
                + 0.10 * fade(fine, 0.016) * tufts
                + 0.06 * Grain.clouds(t * 5, h * 5));
        s.times(1 + 0.16 * fade(fine, 0.0012) * Grain.at(t / 0.0011, h / 0.0032 + 31));
        s.over(0x8FA36B, 0.22 * fade(fine, 0.006) * Math.max(0, Grain.at(t / 0.006 + 77, h / 0.004)));
    }

    /** 1 for a grain well above the size of a pixel, 0 below it. */
    private static double fade(double fine, double grainM) {
        return Math.max(0, Math.min(1, 1.4 - fine / grainM));
    }

    private void wall(Vec p, int side, double fine, Swatch s) {
        boolean back = side == 2;
        double along = side <= 3 ? p.x() : p.y();
        boolean low = p.z() < 1.02;
        s.colour(low ? panel : wall);
        double joint = along - 1.15 * Math.round(along / 1.15);
        if (low) {
            s.times(1 - 0.35 * Swatch.line(joint, 0.004, fine));
        }
        s.over(0xE9E6DF, Swatch.line(p.z() - 1.04, 0.022, fine));
        s.times(1 - 0.4 * Swatch.line(p.z() - 1.015, 0.004, fine));
        s.over(0x4A4B4D, Swatch.inside(p.z() - 0.09, fine));
        if (back) {
            door(p, fine, s);
        }
    }

    private static void door(Vec p, double fine, Swatch s) {
        double left = 1.42;
        double right = 2.30;
        double off = Math.max(Math.max(left - p.x(), p.x() - right), p.z() - 2.06);
        if (off < 0.085) {
            s.colour(0xEFEDE8);
            s.times(1 - 0.45 * Swatch.line(off - 0.083, 0.003, fine));
            s.times(1 - 0.5 * Swatch.line(off - 0.002, 0.004, fine));
        }
        if (off < 0) {
            s.colour(0xA9845D);
            s.times(1 + 0.05 * Math.sin(90 * p.x() + 6 * Math.sin(2.2 * p.z() + 3 * p.x())));
            double inset = Math.max(Math.abs(p.x() - 1.86) - 0.30, Math.abs(p.z() - 1.45) - 0.42);
            double lower = Math.max(Math.abs(p.x() - 1.86) - 0.30, Math.abs(p.z() - 0.52) - 0.34);
            s.times(1 - 0.3 * Swatch.line(Math.min(Math.abs(inset), Math.abs(lower)), 0.006, fine));
            double knob = Math.hypot(p.x() - 1.49, p.z() - 1.02) - 0.03;
            s.over(0x54565A, Swatch.inside(knob, fine));
        }
    }

    private static void screen(Vec p, double fine, Swatch s) {
        s.colour(0xB9BEC0);
        s.times(1 + 0.035 * Math.sin(2.1 * p.y() + 1.5 * Math.sin(1.3 * p.z())));
        double post = Math.min(Math.abs(p.y() - 2.45), Math.abs(p.y() + 2.75)) - 0.045;
        s.over(0x3B3F44, Swatch.inside(post, fine));
        s.over(0x3B3F44, Swatch.line(p.z() - 2.82, 0.045, fine));
        s.times(1 - 0.5 * Swatch.inside(p.z() - 0.16, fine));
    }

    /** A rod pressed half into the turf, its axis on the ground, with light tips. */
    private static void rod(Vec from, Vec along, FloorReference a, FloorReference b, int colour, double fine, Hit hit) {
        Vec start = new Vec(a.t(), a.h(), 0);
        Vec axis = new Vec(b.t() - a.t(), b.h() - a.h(), 0);
        double length = axis.length();
        axis = axis.unit();
        Vec beside = new Vec(-axis.y(), axis.x(), 0);
        Vec floor = new Vec(hit.t, hit.h, 0);
        double alongFloor = floor.minus(start).dot(axis);
        double off = Math.abs(floor.minus(start).dot(beside));
        double past = Math.max(0, Math.max(-alongFloor, alongFloor - length));
        if (Math.hypot(off, past) > 0.08) {
            return;
        }
        Vec o = from.minus(start);
        double ox = o.dot(beside);
        double dx = along.dot(beside);
        double qa = dx * dx + along.z() * along.z();
        double qb = ox * dx + o.z() * along.z();
        double qc = ox * ox + o.z() * o.z() - ROD_M * ROD_M;
        double root = qb * qb - qa * qc;
        if (root > 0) {
            double d = (-qb - Math.sqrt(root)) / qa;
            Vec p = from.plus(along.times(d));
            double s = p.minus(start).dot(axis);
            if (s >= 0 && s <= length && p.z() > 0) {
                boolean tip = s < TIP_M || s > length - TIP_M;
                hit.swatch.colour(tip ? 0xF7F4EA : colour);
                double ring = Math.min(Math.abs(s - TIP_M), Math.abs(length - TIP_M - s));
                hit.swatch.over(0x222222, Swatch.line(ring, 0.004, fine));
                Vec n = beside.times(p.minus(start).dot(beside))
                        .plus(Vec.UP.times(p.z()))
                        .unit();
                hit.swatch.times(0.55 + 0.5 * Math.max(0, n.dot(Light.KEY)));
                return;
            }
        }
        hit.swatch.times(1 - 0.45 * Math.exp(-Math.max(0, Math.hypot(off, past) - ROD_M) / 0.007));
    }
}
