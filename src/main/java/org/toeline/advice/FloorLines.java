package org.toeline.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;

/**
 * The straight lines of a floor layout, and which points change places when one is taken from its other end: for a T of
 * two rods the ends of each, for a mat the two ends of its sides.
 *
 * @param along  lines along the target line, each from its trail end
 * @param across lines to the player's side, each from the ball's end
 */
record FloorLines(List<List<FloorReference>> along, List<List<FloorReference>> across) {

    /** Points this near to each other across a line lie on it, metres. */
    private static final double ONE_LINE_M = 0.1;

    static FloorLines of(FloorLayout floor) {
        return new FloorLines(
                lines(floor.points(), FloorReference::h, FloorReference::t),
                lines(floor.points(), FloorReference::t, FloorReference::h));
    }

    private static List<List<FloorReference>> lines(
            List<FloorReference> points, ToDoubleFunction<FloorReference> beside, ToDoubleFunction<FloorReference> on) {
        List<FloorReference> sorted =
                points.stream().sorted(Comparator.comparingDouble(beside)).toList();
        List<List<FloorReference>> lines = new ArrayList<>();
        List<FloorReference> line = new ArrayList<>();
        for (FloorReference p : sorted) {
            if (!line.isEmpty() && beside.applyAsDouble(p) - beside.applyAsDouble(line.get(0)) > ONE_LINE_M) {
                add(line, on, lines);
                line = new ArrayList<>();
            }
            line.add(p);
        }
        add(line, on, lines);
        return lines;
    }

    private static void add(
            List<FloorReference> line, ToDoubleFunction<FloorReference> on, List<List<FloorReference>> lines) {
        if (line.size() > 1) {
            lines.add(line.stream().sorted(Comparator.comparingDouble(on)).toList());
        }
    }

    /** Whether no point lies on the other side of one that the program's own layouts have it on, along the target line. */
    static boolean isAsUsual(FloorLayout floor) {
        for (FloorKind kind : FloorKind.values()) {
            List<FloorReference> usual = kind.layout().points();
            for (FloorReference a : usual) {
                for (FloorReference b : usual) {
                    Optional<FloorReference> hereA = floor.point(a.id());
                    Optional<FloorReference> hereB = floor.point(b.id());
                    if (hereA.isPresent()
                            && hereB.isPresent()
                            && (a.t() - b.t()) * (hereA.get().t() - hereB.get().t()) < -ONE_LINE_M * ONE_LINE_M) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Every line along the target line from its other end: the name of each point by what it would be called then. */
    Map<String, String> alongTurned() {
        return turned(along);
    }

    Map<String, String> acrossTurned() {
        return turned(across);
    }

    private static Map<String, String> turned(List<List<FloorReference>> lines) {
        Map<String, String> names = new HashMap<>();
        for (List<FloorReference> line : lines) {
            FloorReference first = line.get(0);
            FloorReference last = line.get(line.size() - 1);
            names.put(first.id(), last.id());
            names.put(last.id(), first.id());
        }
        return names;
    }

    /** The one line along taken for the one across, from either end; nothing where there are more lines. */
    List<Map<String, String>> exchanged() {
        if (along.size() != 1 || across.size() != 1) {
            return List.of();
        }
        List<Map<String, String>> ways = new ArrayList<>();
        String trail = along.get(0).get(0).id();
        String lead = along.get(0).get(along.get(0).size() - 1).id();
        String ball = across.get(0).get(0).id();
        String feet = across.get(0).get(across.get(0).size() - 1).id();
        boolean corner = trail.equals(ball) || lead.equals(ball);
        if (corner) {
            String end = trail.equals(ball) ? lead : trail;
            ways.add(Map.of(end, feet, feet, end));
        } else {
            ways.add(Map.of(trail, ball, ball, trail, lead, feet, feet, lead));
            ways.add(Map.of(trail, feet, feet, trail, lead, ball, ball, lead));
        }
        return ways;
    }
}
