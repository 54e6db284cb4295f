package org.toeline.desk.shots;

import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Quantity;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;
import org.toeline.language.Written;

/**
 * The units a coach types and reads shots in. Angles are in degrees, spin in turns a minute, sides letters: L and R as seen
 * looking at the target.
 *
 * @param speed  a unit of speed
 * @param length a unit of carry, side and total
 * @param height a unit of the apex
 */
record ShotUnits(FigureUnit speed, FigureUnit length, FigureUnit height) {

    static final ShotUnits METRIC = new ShotUnits(FigureUnit.METRES_PER_SECOND, FigureUnit.METRE, FigureUnit.METRE);

    /** What a number of the computer's may be above a round one. */
    private static final double SLACK = 1e-9;

    ShotUnits {
        if (speed.quantity() != Quantity.SPEED
                || length.quantity() != Quantity.LENGTH
                || height.quantity() != Quantity.LENGTH) {
            throw new IllegalArgumentException(Texts.of("shots.settings.units", speed.id(), length.id(), height.id()));
        }
    }

    FigureUnit of(Meaning meaning) {
        return switch (meaning.quantity()) {
            case SPEED -> speed;
            case LENGTH -> meaning == Meaning.APEX ? height : length;
            case ANGLE -> FigureUnit.DEGREE;
            case SPIN -> FigureUnit.TURNS_PER_MINUTE;
            case TIME -> FigureUnit.SECOND;
            case RATIO -> FigureUnit.TIMES;
        };
    }

    FigureUnit of(ShotFigure figure) {
        return of(Meaning.of(figure));
    }

    /** The number alone; a side as a letter after it. */
    String number(Meaning meaning, double inside) {
        String text = width(meaning, meaning.sided() ? Math.abs(inside) : inside);
        boolean none = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return text + (!meaning.sided() || none ? "" : inside > 0 ? " L" : " R");
    }

    String number(ShotFigure figure, double inside) {
        return number(Meaning.of(figure), inside);
    }

    /** The number with its unit. */
    String figure(ShotFigure figure, double inside) {
        return figure.sided()
                ? number(figure, inside)
                        .replaceFirst("( [LR])?$", " " + of(figure).id() + "$1")
                : number(figure, inside) + " " + of(figure).id();
    }

    /** A width, never a side. */
    String width(Meaning meaning, double inside) {
        return Written.number("%." + decimals(meaning) + "f", of(meaning).fromInside(inside));
    }

    String width(ShotFigure figure, double inside) {
        return width(Meaning.of(figure), inside);
    }

    /** Half an interval, rounded up: it is never nothing. */
    String half(ShotFigure figure, double inside) {
        double step = Math.pow(10, -decimals(Meaning.of(figure)));
        double shown = of(figure).fromInside(inside);
        double up = Math.max(1, Math.ceil(shown / step - SLACK)) * step;
        return width(figure, of(figure).toInside(up));
    }

    private static int decimals(Meaning meaning) {
        return switch (meaning.quantity()) {
            case SPIN -> 0;
            case TIME, RATIO -> 2;
            case SPEED, LENGTH, ANGLE -> 1;
        };
    }

    /** A change: with its sign, of a sided figure with the side it goes to. */
    String change(ShotFigure figure, double inside) {
        return figure.sided() || inside < 0 ? number(figure, inside) : "+" + number(figure, inside);
    }
}
