package org.toeline.desk.text;

import java.util.OptionalDouble;
import org.toeline.language.Written;

/**
 * A number in a field: shown as the person's language writes it, and read as anybody types it, with a point or a comma, a minus of
 * any kind, and the digits of any script.
 */
public final class TypedNumber {

    private TypedNumber() {}

    /** Empty when it is none, or not finite. */
    public static OptionalDouble read(String typed) {
        StringBuilder plain = new StringBuilder();
        typed.strip().codePoints().forEach(c -> plain.append(plain(c)));
        try {
            double value = Double.parseDouble(plain.toString());
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** U+066B is the decimal sign that goes with Arabic digits, U+2212 the minus of print; marks of direction are no digits. */
    private static String plain(int c) {
        return switch (c) {
            case ',', '\u066b' -> ".";
            case '\u2212', '\u2013', '\u2010' -> "-";
            case '\u200e', '\u200f', '\u061c' -> "";
            default -> Character.isDigit(c) ? Integer.toString(Character.digit(c, 10)) : Character.toString(c);
        };
    }

    /** With so many decimals; of a round number none but those asked for. */
    public static String shown(double value, String pattern) {
        return Written.patterned(pattern, value);
    }
}
