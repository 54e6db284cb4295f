package org.toeline.desk.shots;

import javafx.collections.ObservableListBase;

/** The rows of a table by their numbers, from 0; none of them is held. */
final class RowNumbers extends ObservableListBase<Integer> {

    private int size;

    @Override
    public Integer get(int index) {
        if (index < 0 || index >= size) {
            throw new IndexOutOfBoundsException(index + " of " + size);
        }
        return index;
    }

    @Override
    public int size() {
        return size;
    }

    /** Rows come or go at the end. */
    void resize(int rows) {
        if (rows == size) {
            return;
        }
        beginChange();
        if (rows > size) {
            int from = size;
            size = rows;
            nextAdd(from, rows);
        } else {
            java.util.List<Integer> gone =
                    java.util.stream.IntStream.range(rows, size).boxed().toList();
            size = rows;
            nextRemove(rows, gone);
        }
        endChange();
    }
}
