package org.toeline.advice;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;
import org.toeline.reading.Unit;

/**
 * Numbers as a person reads them. A figure has as many decimals as its uncertainty deserves: the half width of the 95 %
 * interval is rounded up and keeps one or two digits, and the value as many decimals (JCGM 100:2008, 7.2.6).
 */
final class Figures {

    private static final double FOOT_M = 0.3048;

    private final Locale locale;
    private final LengthUnit lengthUnit;

    Figures(Locale locale, LengthUnit lengthUnit) {
        this.locale = locale;
        this.lengthUnit = lengthUnit;
    }

    LengthUnit lengthUnit() {
        return lengthUnit;
    }

    /** A value of metres, radians or a plain number, in the unit it is read in. */
    double shown(Unit unit, double inside) {
        return inInches(unit) ? lengthUnit.fromMetres(inside) : unit.fromInside(inside);
    }

    /** The unit's key in the resource bundle. */
    String unitKey(Unit unit) {
        return "unit." + (inInches(unit) ? lengthUnit.id() : unit.id());
    }

    private boolean inInches(Unit unit) {
        return lengthUnit == LengthUnit.INCH && (unit == Unit.CENTIMETRE || unit == Unit.MILLIMETRE);
    }

    static int decimals(double halfWidth) {
        return Written.decimals(halfWidth);
    }

    /** A figure of metres, radians or a plain number with its interval, and what it is held against. */
    Written written(Unit unit, double value, double low, double high, Optional<Range> range) {
        return Written.of(
                shown(unit, value),
                shown(unit, low),
                shown(unit, high),
                range.map(r -> new Written.Limits(shown(unit, r.low()), shown(unit, r.high()))));
    }

    /** Decimals for a limit, which is a round number of the reader's unit or has been converted to it. */
    int limitDecimals(Unit unit, double... limits) {
        if (unit == Unit.RATIO || inInches(unit)) {
            return 2;
        }
        for (double limit : limits) {
            double shown = shown(unit, limit);
            if (Math.abs(shown - Math.rint(shown)) > 0.01) {
                return 1;
            }
        }
        return 0;
    }

    String number(double shown, int decimals, RoundingMode rounding) {
        DecimalFormat format = (DecimalFormat) NumberFormat.getNumberInstance(locale);
        org.toeline.language.Written.withMinus(format);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        format.setRoundingMode(rounding);
        double step = Math.pow(10, -decimals);
        boolean vanishes = rounding == RoundingMode.HALF_UP && Math.abs(shown) < step / 2;
        return format.format(vanishes ? 0 : shown);
    }

    String number(double shown, int decimals) {
        return number(shown, decimals, RoundingMode.HALF_UP);
    }

    /** A length across a room, with its unit. */
    String far(double lengthM, java.util.function.Function<String, String> text) {
        boolean inches = lengthUnit == LengthUnit.INCH;
        if (Math.abs(lengthM) < 0.995) {
            return number(lengthUnit.fromMetres(lengthM), 0) + text.apply("unit." + lengthUnit.id());
        }
        return number(inches ? lengthM / FOOT_M : lengthM, 1) + text.apply(inches ? "unit.ft" : "unit.m");
    }
}
