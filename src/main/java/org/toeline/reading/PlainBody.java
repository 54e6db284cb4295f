package org.toeline.reading;

import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.toeline.mark.Landmark;
import org.toeline.posture.Body;
import org.toeline.posture.Coordinates;

/** A body at one vector of coordinates, in plain numbers. */
final class PlainBody implements Body<Binary64> {

    private final Coordinates coordinates;

    PlainBody(Coordinates coordinates) {
        this.coordinates = coordinates;
    }

    @Override
    public FieldVector3D<Binary64> at(Landmark landmark) {
        return point(coordinates.indexOf(landmark));
    }

    @Override
    public FieldVector3D<Binary64> ball() {
        return point(coordinates.indexOfBall());
    }

    @Override
    public Binary64 ballDiameter() {
        return new Binary64(coordinates.value(coordinates.indexOfBall() + 3));
    }

    private FieldVector3D<Binary64> point(int at) {
        return new FieldVector3D<>(
                new Binary64(coordinates.value(at)),
                new Binary64(coordinates.value(at + 1)),
                new Binary64(coordinates.value(at + 2)));
    }
}
