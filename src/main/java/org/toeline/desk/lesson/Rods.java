package org.toeline.desk.lesson;

import java.util.List;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorDirection;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * What is drawn along with one stroke: which two points of the floor are the ends of one rod or one side of a mat, and which of
 * them is which in a picture. Pure functions.
 */
public final class Rods {

    /**
     * Which share of a stroke must run in the direction that tells one end from the other against how it was drawn, before it is turned
     * round: a stroke nearly across it says nothing, in a clip that lies on its side for one.
     */
    private static final double TELLS = 0.3;

    /** The two ends of whatever the common layouts lay down. */
    private static final List<Rod> KNOWN = List.of(
            new Rod("rod-near", "rod-far"),
            new Rod("cross-ball", "cross-feet"),
            new Rod("corner", "rod-far"),
            new Rod("corner", "cross-feet"),
            new Rod("tape-trail", "tape-lead"),
            new Rod("mat-ball-trail", "mat-ball-lead"),
            new Rod("mat-ball-trail", "mat-feet-trail"),
            new Rod("mat-feet-trail", "mat-feet-lead"),
            new Rod("mat-ball-lead", "mat-feet-lead"));

    /** By the names of its ends. */
    public record Rod(String one, String other) {

        private Optional<String> beside(String id) {
            return id.equals(one) ? Optional.of(other) : id.equals(other) ? Optional.of(one) : Optional.empty();
        }
    }

    private Rods() {}

    /** All that lies there of which both ends are known. */
    public static List<Rod> of(FloorLayout floor) {
        if (floor.points().size() == 2) {
            return List.of(
                    new Rod(floor.points().get(0).id(), floor.points().get(1).id()));
        }
        return KNOWN.stream()
                .filter(rod -> floor.point(rod.one).isPresent()
                        && floor.point(rod.other).isPresent())
                .toList();
    }

    /** The other end of the rod that a point is an end of; empty for what lies at a corner and for what is none's end. */
    public static Optional<String> otherEnd(FloorLayout floor, String id) {
        List<String> ends = beside(floor, id);
        return ends.size() == 1 ? Optional.of(ends.get(0)) : Optional.empty();
    }

    private static List<String> beside(FloorLayout floor, String id) {
        return of(floor).stream().flatMap(rod -> rod.beside(id).stream()).toList();
    }

    /** The other end of what a floor point is the end of, one that is not marked before one that is; empty where nobody knows. */
    public static Optional<String> otherEnd(FloorLayout floor, ViewMarks view, String id) {
        List<String> ends = beside(floor, id);
        return ends.stream()
                .filter(other -> view.floorMark(other).isEmpty())
                .findFirst()
                .or(() -> ends.stream().findFirst());
    }

    /** Whether a stroke that was meant for two ends runs from the first to the second, and not clearly back. */
    static boolean runsOn(
            FloorReference first,
            FloorReference second,
            ImagePoint from,
            ImagePoint to,
            View view,
            Handedness handedness) {
        return !(FloorDirection.share(first, second, from, to, view, handedness) < -TELLS);
    }
}
