package org.toeline.handout;

/**
 * Text that others wrote, without what would do something where it is shown: control characters, the controls that turn
 * the direction of writing around, halves of characters. Markup is left as it is; whoever writes markup escapes it.
 */
final class Plain {

    private Plain() {}

    /** Line breaks stay. */
    static String text(String written) {
        StringBuilder kept = new StringBuilder();
        written.codePoints().filter(Plain::harmless).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** All on one line. */
    static String line(String written) {
        return text(written).replaceAll("\\s+", " ").strip();
    }

    private static boolean harmless(int c) {
        boolean control = c < 32 && c != '\n' && c != '\t' || c >= 0x7F && c < 0xA0;
        boolean turns = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
        boolean none = c >= 0xD800 && c <= 0xDFFF || (c & 0xFFFE) == 0xFFFE || c >= 0xFDD0 && c <= 0xFDEF;
        return !control && !turns && !none;
    }
}
