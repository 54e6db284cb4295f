package org.toeline.paint;

import java.util.Optional;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightPoint;
import org.toeline.flight.ShotFigure;
import org.toeline.geometry.ImagePoint;

/** One of the two ways to look at a flight: where its points lie in the picture. */
sealed interface PlotView permits SideView, AboveView {

    /** Where the ball lay, in the picture. */
    double left();

    /** The ground or the target line, in the picture. */
    double zero();

    ShotScale scale();

    default double x(double alongM) {
        return left() + alongM * scale().pxPerM();
    }

    /** @param acrossM metres up, or towards {@code h} */
    default double y(double acrossM) {
        return zero() - acrossM * scale().pxPerM();
    }

    /** Whether a flight is seen from here that does or does not tell where it goes sideways. */
    boolean sees(boolean tellsSide);

    /** What is drawn across the distance. */
    double across(FlightPoint point);

    /** The letter beside a figure of the axis. */
    String side(double acrossM);

    /** The figure that is drawn across the distance. */
    ShotFigure figure();

    /** Where the measured figures of a shot lie, if they say so. */
    Optional<ImagePoint> measured(ShotPicture.Trace shot);

    /** Where along the middle of this view's figure lies. */
    double middleAlong(double carryM, double sideM, Optional<Flight> middle);

    default double x(FlightPoint point) {
        return x(point.place().t());
    }

    default double y(FlightPoint point) {
        return y(across(point));
    }

    /** Where a flight is highest. */
    static FlightPoint highest(Flight flight) {
        return flight.points().stream()
                .max(java.util.Comparator.comparingDouble(p -> p.place().u()))
                .orElseThrow();
    }

    /** How far along the target line a ball landed that carried so far and so much to a side. */
    static double along(double carryM, double sideM) {
        return Math.sqrt(Math.max(0, carryM * carryM - sideM * sideM));
    }
}
