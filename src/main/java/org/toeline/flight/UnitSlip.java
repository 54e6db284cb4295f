package org.toeline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.toeline.language.Sentences;
import org.toeline.language.Written;

/** Whether a figure would make sense had it been written down in another unit than it was read in. */
final class UnitSlip {

    private static final Sentences SAID = Sentences.of(UnitSlip.class);

    private UnitSlip() {}

    /**
     * The likely slip in words, such as “14.1 m would fit: feet read as metres?”. Of several slips that fit, all are
     * named.
     *
     * @param value  in the unit used inside
     * @param fits   whether a value, in the unit used inside, would make sense
     */
    static Optional<String> words(ShotFigure figure, double value, DoublePredicate fits) {
        List<String> slips = new ArrayList<>();
        for (FigureUnit written : FigureUnit.of(figure.quantity())) {
            for (FigureUnit read : FigureUnit.of(figure.quantity())) {
                double meant = written.toInside(read.fromInside(value));
                if (written != read && usual(read) && fits.test(meant)) {
                    slips.add(SAID.of("slip", plural(written), plural(read), shown(figure, meant)));
                }
            }
        }
        return slips.isEmpty() ? Optional.empty() : Optional.of(String.join(SAID.of("slip.or"), slips));
    }

    /** Slips from one unit a coach uses to another; radians are never a coach's. */
    private static boolean usual(FigureUnit read) {
        return read != FigureUnit.RADIAN && read != FigureUnit.RADIANS_PER_SECOND;
    }

    static String shown(ShotFigure figure, double value) {
        double inUnit = figure.shownUnit().fromInside(value);
        String format = Math.abs(inUnit) >= 1000 ? "%.0f" : "%.1f";
        return Written.number(format, inUnit) + " " + figure.shownUnit().id();
    }

    private static String plural(FigureUnit unit) {
        return switch (unit) {
            case METRE, YARD, FOOT, DEGREE, RADIAN ->
                SAID.of("unit." + unit.name().toLowerCase(Locale.ROOT));
            default -> unit.id();
        };
    }
}
