package org.toeline.posture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;

/**
 * A vector of coordinates with names: t, h, u of each landmark in turn, then t, h, u of the ball's centre, then the
 * ball's diameter; metres.
 */
public final class Coordinates {

    private final List<Landmark> landmarks;
    private final Map<Landmark, Integer> index = new EnumMap<>(Landmark.class);
    private final boolean ballMarked;
    private final double[] values;

    /** @param ballMarked whether a mark supports the ball; its coordinates are there in either case */
    Coordinates(List<Landmark> landmarks, BallKnown ballMarked, double[] values) {
        this.landmarks = List.copyOf(landmarks);
        for (int i = 0; i < landmarks.size(); i++) {
            index.put(landmarks.get(i), i);
        }
        if (values.length != size(landmarks.size())) {
            throw new IllegalArgumentException(values.length + " values for " + landmarks.size() + " landmarks; "
                    + size(landmarks.size()) + " are needed");
        }
        this.ballMarked = ballMarked == BallKnown.MARKED;
        this.values = values.clone();
    }

    /** Whether the ball's place rests on a mark. */
    enum BallKnown {
        MARKED,
        ASSUMED
    }

    static int size(int landmarks) {
        return 3 * landmarks + 4;
    }

    public int size() {
        return values.length;
    }

    public List<Landmark> landmarks() {
        return landmarks;
    }

    public boolean has(Landmark landmark) {
        return index.containsKey(landmark);
    }

    public boolean hasBall() {
        return ballMarked;
    }

    public double value(int at) {
        return values[at];
    }

    /** Where t of a landmark stands; h and u follow it. */
    public int indexOf(Landmark landmark) {
        Integer i = index.get(landmark);
        if (i == null) {
            throw new IllegalArgumentException("no mark supports “" + landmark.id() + "”");
        }
        return 3 * i;
    }

    /** Where t of the ball's centre stands; h, u and the diameter follow it. */
    public int indexOfBall() {
        return 3 * landmarks.size();
    }

    public WorldPoint at(Landmark landmark) {
        return point(indexOf(landmark));
    }

    public WorldPoint ball() {
        return point(indexOfBall());
    }

    private WorldPoint point(int at) {
        return new WorldPoint(values[at], values[at + 1], values[at + 2]);
    }
}
