package org.toeline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoublePredicate;

/** Whether a figure would make sense had it been written down in another unit than it was read in. */
final class UnitSlip {

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
                    slips.add(String.format(
                            Locale.ROOT,
                            "%s read as %s (%s would fit)",
                            plural(written),
                            plural(read),
                            shown(figure, meant)));
                }
            }
        }
        return slips.isEmpty() ? Optional.empty() : Optional.of(String.join(", or ", slips));
    }

    /** Slips from one unit a coach uses to another; radians are never a coach's. */
    private static boolean usual(FigureUnit read) {
        return read != FigureUnit.RADIAN && read != FigureUnit.RADIANS_PER_SECOND;
    }

    static String shown(ShotFigure figure, double value) {
        double inUnit = figure.shownUnit().fromInside(value);
        String format = Math.abs(inUnit) >= 1000 ? "%.0f %s" : "%.1f %s";
        return String.format(Locale.ROOT, format, inUnit, figure.shownUnit().id());
    }

    private static String plural(FigureUnit unit) {
        return switch (unit) {
            case METRE -> "metres";
            case YARD -> "yards";
            case FOOT -> "feet";
            case DEGREE -> "degrees";
            case RADIAN -> "radians";
            default -> unit.id();
        };
    }
}
