package org.toeline.flight.table;

import java.util.List;

/** A row of a table: its cells, trimmed, and the number of the line on which it begins, from 1. */
record Row(int line, List<String> cells) {

    Row {
        cells = List.copyOf(cells);
    }

    /** The cell of a column; empty where the row is too short. */
    String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }

    boolean blank() {
        return cells.stream().allMatch(String::isEmpty);
    }

    long filled() {
        return cells.stream().filter(c -> !c.isEmpty()).count();
    }
}
