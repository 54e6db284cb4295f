package org.toeline.flight.table;

import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.flight.FigureUnit;
import org.toeline.language.Sentences;

/**
 * What a person typed into one cell: a figure, nothing, or something that is not one. Decimal points and commas, units, and
 * sides as letters (“3.2R”) are understood as in a table; without a letter a plus is to the right.
 *
 * @param inside the figure in the unit used inside, positive towards {@code h}; empty when nothing was typed or it could not
 *               be read
 * @param fault  why it could not be read, in the middle of a sentence; empty when it could
 */
public record TypedFigure(OptionalDouble inside, Optional<String> fault) {

    /** @param unit what counts where the text names no unit */
    public static TypedFigure of(String text, Meaning meaning, FigureUnit unit) {
        if (FigureCell.nothing(text)) {
            return new TypedFigure(OptionalDouble.empty(), Optional.empty());
        }
        try {
            double figure = FigureCell.read(
                    text,
                    new Column(meaning.id(), meaning, unit, PositiveSide.RIGHT),
                    FigureCell.decisive(text) == ',' ? ',' : '.');
            boolean below = (meaning == Meaning.SPIN_RATE || meaning == Meaning.BACK_SPIN) && figure < 0;
            return below
                    ? unread(Sentences.of(TypedFigure.class).of("table.below-zero", FigureCell.shortened(text)))
                    : new TypedFigure(OptionalDouble.of(figure), Optional.empty());
        } catch (FigureCell.Unreadable e) {
            return unread(e.getMessage());
        }
    }

    private static TypedFigure unread(String fault) {
        return new TypedFigure(OptionalDouble.empty(), Optional.of(fault));
    }
}
