package org.toeline.flight.compare;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import org.toeline.flight.ShotFigure;
import org.toeline.geometry.Finite;

/**
 * One lesson of a player, as one point: what the setup read, and where its shots lay.
 *
 * @param readings by the reading's name in documents, in any unit as long as it is the same in all lessons
 * @param figures  the centre of the lesson's shots in each figure
 */
public record LessonFigures(Map<String, Double> readings, Map<ShotFigure, Double> figures) {

    public LessonFigures {
        readings = Collections.unmodifiableMap(new TreeMap<>(readings));
        readings.forEach((name, value) -> Finite.require(value, name));
        EnumMap<ShotFigure, Double> copy = new EnumMap<>(ShotFigure.class);
        copy.putAll(figures);
        copy.forEach((figure, value) -> Finite.require(value, figure.id()));
        figures = Collections.unmodifiableMap(copy);
    }
}
