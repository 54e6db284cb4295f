package org.toeline.language;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;

/**
 * Numbers as a person reads them: with the decimal sign of their language and a minus sign (U+2212), where machines and most
 * languages' own formats write a hyphen. What rounds to nothing has no sign. For files that machines read it is not meant.
 */
public final class Written {

    private static final char MINUS = '\u2212';

    private Written() {}

    /** @param pattern one number's, as {@link String#format} takes it, such as {@code %.1f} or {@code %+.0f} */
    public static String number(String pattern, double value) {
        return minus(String.format(Language.written(), pattern, value));
    }

    /** @param pattern as {@link DecimalFormat} takes it, such as {@code 0.##} */
    public static String patterned(String pattern, double value) {
        return minus(new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Language.written())).format(value));
    }

    static String minus(String number) {
        boolean nothing = number.chars().noneMatch(c -> Character.isLetterOrDigit(c) && c != '0');
        return nothing ? number.replace("-", "") : number.replace('-', MINUS);
    }

    /** The same format, with a minus sign. */
    public static void withMinus(DecimalFormat format) {
        DecimalFormatSymbols symbols = format.getDecimalFormatSymbols();
        symbols.setMinusSign(MINUS);
        format.setDecimalFormatSymbols(symbols);
    }
}
