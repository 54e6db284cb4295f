package org.toeline.paint;

import java.util.Optional;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightPoint;
import org.toeline.flight.ShotFigure;
import org.toeline.geometry.ImagePoint;

/**
 * From the side: distance to the right, height up. A measured apex is drawn where the computed one is.
 *
 * @param left where the ball lay, in the picture
 * @param zero the ground, in the picture
 */
record SideView(double left, double zero, ShotScale scale) implements PlotView {

    @Override
    public boolean sees(boolean tellsSide) {
        return true;
    }

    @Override
    public double across(FlightPoint point) {
        return point.place().u();
    }

    @Override
    public String side(double upM) {
        return "";
    }

    @Override
    public ShotFigure figure() {
        return ShotFigure.APEX;
    }

    @Override
    public Optional<ImagePoint> measured(ShotPicture.Trace shot) {
        return shot.apexM().isEmpty()
                ? Optional.empty()
                : shot.computed()
                        .map(f -> new ImagePoint(
                                x(PlotView.highest(f)), y(shot.apexM().getAsDouble())));
    }

    @Override
    public double middleAlong(double carryM, double sideM, Optional<Flight> middle) {
        return middle.map(f -> PlotView.highest(f).place().t()).orElse(carryM / 2);
    }
}
