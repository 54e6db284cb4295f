package org.toeline.flight;

import java.util.List;
import org.toeline.geometry.WorldPoint;

/**
 * A computed flight, from the launch to where the ball comes down to the height from which it left.
 *
 * @param model         the aerodynamic model it comes from; to be named beside every figure
 * @param points        the flight at even times, or its two ends only; the landing last
 * @param apexM         highest point
 * @param descentRad    angle of the last flight below the horizontal, (0, π/2]
 * @param outsideShare  share of the time for which the model was not published, [0, 1]
 */
public record Flight(String model, List<FlightPoint> points, double apexM, double descentRad, double outsideShare) {

    public Flight {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a flight of " + points.size() + " points; at least 2 are needed");
        }
    }

    public FlightPoint landing() {
        return points.get(points.size() - 1);
    }

    /** Level distance from the launch to the landing, straight over the ground. */
    public double carryM() {
        WorldPoint place = landing().place();
        return Math.hypot(place.t(), place.h());
    }

    /** Where it lands, from the target line: positive towards {@code h}, the left for whoever looks at the target. */
    public double sideM() {
        return landing().place().h();
    }

    public double hangTimeS() {
        return landing().timeS();
    }
}
