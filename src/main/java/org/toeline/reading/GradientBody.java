package org.toeline.reading;

import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.toeline.mark.Landmark;
import org.toeline.posture.Body;
import org.toeline.posture.Coordinates;

/** A body whose every coordinate is an independent variable, so that a formula yields its gradient. */
final class GradientBody implements Body<Gradient> {

    private final Coordinates coordinates;

    GradientBody(Coordinates coordinates) {
        this.coordinates = coordinates;
    }

    @Override
    public FieldVector3D<Gradient> at(Landmark landmark) {
        return point(coordinates.indexOf(landmark));
    }

    @Override
    public FieldVector3D<Gradient> ball() {
        return point(coordinates.indexOfBall());
    }

    @Override
    public Gradient ballDiameter() {
        return variable(coordinates.indexOfBall() + 3);
    }

    private FieldVector3D<Gradient> point(int at) {
        return new FieldVector3D<>(variable(at), variable(at + 1), variable(at + 2));
    }

    private Gradient variable(int at) {
        return Gradient.variable(coordinates.size(), at, coordinates.value(at));
    }
}
