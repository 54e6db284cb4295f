package org.toeline.flight.table;

import java.util.List;
import org.toeline.flight.Shot;

/**
 * What came of a table: the shots, and what was left out by line and reason.
 *
 * @param shots    in the order of the table
 * @param lines    for each shot, the line of the file it stands on
 * @param leftOut  what was not read, in the order of the table; blank lines do not count
 * @param notes    what holds for the whole table: sentences without a full stop
 * @param encoding the encoding the bytes turned out to have
 */
public record Imported(
        List<Shot> shots, List<Integer> lines, List<LeftOut> leftOut, List<String> notes, String encoding) {

    public Imported {
        shots = List.copyOf(shots);
        lines = List.copyOf(lines);
        leftOut = List.copyOf(leftOut);
        notes = List.copyOf(notes);
        if (shots.size() != lines.size()) {
            throw new IllegalArgumentException(shots.size() + " shots on " + lines.size() + " lines");
        }
    }
}
