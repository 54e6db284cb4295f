package org.toeline.paint;

import java.util.Optional;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightPoint;
import org.toeline.flight.ShotFigure;
import org.toeline.geometry.ImagePoint;

/**
 * From above: distance to the right, the left of the target line up.
 *
 * @param left where the ball lay, in the picture
 * @param zero the target line, in the picture
 */
record AboveView(double left, double zero, ShotScale scale) implements PlotView {

    @Override
    public boolean sees(boolean tellsSide) {
        return tellsSide;
    }

    @Override
    public double across(FlightPoint point) {
        return point.place().h();
    }

    @Override
    public String side(double acrossM) {
        return acrossM > 0 ? " L" : " R";
    }

    @Override
    public ShotFigure figure() {
        return ShotFigure.SIDE;
    }

    @Override
    public Optional<ImagePoint> measured(ShotPicture.Trace shot) {
        if (shot.carryM().isEmpty() || shot.sideM().isEmpty()) {
            return Optional.empty();
        }
        double side = shot.sideM().getAsDouble();
        return Optional.of(new ImagePoint(x(PlotView.along(shot.carryM().getAsDouble(), side)), y(side)));
    }

    @Override
    public double middleAlong(double carryM, double sideM, Optional<Flight> middle) {
        return PlotView.along(carryM, sideM);
    }
}
