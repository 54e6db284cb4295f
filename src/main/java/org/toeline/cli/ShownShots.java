package org.toeline.cli;

import org.toeline.flight.FigureUnit;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Written;

/** Figures of shots as a person reads them: in which units, and sides in words. */
enum ShownShots {
    METRIC,
    YARDS;

    /** What a number of the computer's may be above a round one. */
    private static final double SLACK = 1e-9;

    FigureUnit unit(ShotFigure figure) {
        if (this == METRIC) {
            return figure.shownUnit();
        }
        return switch (figure.quantity()) {
            case SPEED -> FigureUnit.MILES_PER_HOUR;
            case LENGTH -> figure == ShotFigure.APEX ? FigureUnit.FOOT : FigureUnit.YARD;
            default -> figure.shownUnit();
        };
    }

    /** The number in the unit; sides with a letter, L or R as seen looking at the target. */
    String number(ShotFigure figure, double inside) {
        return shown(figure, inside, "");
    }

    /** The number and its unit, the side after it. */
    String figure(ShotFigure figure, double inside) {
        return shown(figure, inside, " " + unit(figure).id());
    }

    private String shown(ShotFigure figure, double inside, String unit) {
        double shown = unit(figure).fromInside(inside);
        String text = width(figure, figure.sided() ? Math.abs(inside) : inside);
        boolean none = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return text + unit + (!figure.sided() || none ? "" : shown > 0 ? " L" : " R");
    }

    /** A width or a distance between two figures: never a side. */
    String width(ShotFigure figure, double inside) {
        return Written.number("%." + decimals(figure) + "f", unit(figure).fromInside(inside));
    }

    /** Half an interval, rounded up: it is never nothing. */
    String half(ShotFigure figure, double inside) {
        double step = Math.pow(10, -decimals(figure));
        double shown = unit(figure).fromInside(inside);
        double up = Math.max(1, Math.ceil(shown / step - SLACK)) * step;
        return width(figure, unit(figure).toInside(up));
    }

    /** A change, with its sign; of a sided figure with the side it goes to. */
    String change(ShotFigure figure, double inside) {
        return figure.sided() || inside < 0 ? number(figure, inside) : "+" + number(figure, inside);
    }

    private static int decimals(ShotFigure figure) {
        return switch (figure) {
            case SPIN_RATE -> 0;
            case HANG_TIME -> 2;
            default -> 1;
        };
    }
}
