package org.toeline.flight.table;

import org.toeline.flight.FigureUnit;

/**
 * What one column of a table means.
 *
 * @param header       its heading; case and spaces do not matter
 * @param unit         the unit of its figures, of the meaning's own quantity; a unit in a cell goes before it
 * @param positiveSide what a plus means, where the meaning has sides; letters L and R in a cell go before it
 */
public record Column(String header, Meaning meaning, FigureUnit unit, PositiveSide positiveSide) {

    public Column {
        if (header.isBlank()) {
            throw new IllegalArgumentException("a column for " + meaning.id() + " has no heading");
        }
        if (unit.quantity() != meaning.quantity()) {
            throw new IllegalArgumentException(
                    "“" + header + "” is " + meaning.id() + " in " + unit.id() + "; that is not a unit for it");
        }
    }
}
