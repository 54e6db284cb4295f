package org.toeline.flight.table;

import java.util.List;
import java.util.stream.Stream;
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

    /**
     * A column that somebody decided the meaning of: unit and sides as its heading states them, else a unit in which its first
     * figures lie where such figures usually lie.
     *
     * @param cells     the first of its cells
     * @param otherwise its unit where nothing tells
     */
    public static Column decided(String header, Meaning meaning, List<String> cells, FigureUnit otherwise) {
        HeadingText text = HeadingText.of(header);
        double[] figures = cells.stream()
                .flatMapToDouble(c -> FigureCell.bare(c, c.contains(",") && !c.contains(".") ? ',' : '.').stream())
                .toArray();
        List<FigureUnit> possible = Usual.units(meaning, figures);
        return new Column(
                header,
                meaning,
                text.unit()
                        .filter(u -> u.quantity() == meaning.quantity())
                        .or(() -> Stream.concat(
                                        Stream.of(otherwise, ColumnJudge.usual(meaning.quantity())), possible.stream())
                                .filter(possible::contains)
                                .findFirst())
                        .orElse(otherwise),
                text.plus().orElse(PositiveSide.RIGHT));
    }
}
