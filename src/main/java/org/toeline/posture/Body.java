package org.toeline.posture;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.toeline.mark.Landmark;

/**
 * Where everything is, over any number type: plain numbers give a value, derivative-carrying numbers give a value and
 * its gradient. Coordinates are (t, h, u) in metres, in the frame whose origin is the ground under the ball.
 */
public interface Body<T extends CalculusFieldElement<T>> {

    FieldVector3D<T> at(Landmark landmark);

    /** The centre of the ball. */
    FieldVector3D<T> ball();

    /** The ball's diameter, metres. */
    T ballDiameter();
}
