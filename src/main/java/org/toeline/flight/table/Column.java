package org.toeline.flight.table;

import org.toeline.flight.FigureUnit;
import org.toeline.language.Sentences;

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
            throw new IllegalArgumentException(Sentences.of(Column.class).of("template.no-heading", meaning.id()));
        }
        if (unit.quantity() != meaning.quantity()) {
            throw new IllegalArgumentException(
                    Sentences.of(Column.class).of("template.unit", header, meaning.id(), unit.id()));
        }
    }
}
