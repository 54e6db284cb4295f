package org.toeline.flight.table;

import java.util.List;
import java.util.Optional;

/**
 * A column that only a person can decide: it is in no shot until someone does.
 *
 * @param place   of the column, from 0
 * @param perhaps what it may mean, as a column of a template; empty where even that is not known
 * @param why     a sentence without a full stop
 * @param values  its first ten
 */
public record Asked(int place, String heading, Optional<Column> perhaps, String why, List<String> values) {

    static final int VALUES = 10;

    public Asked {
        values = List.copyOf(values);
    }
}
