package org.toeline.flight.table;

import java.util.regex.Pattern;

/** Whether a label says that its row sums other rows up; the words are data. */
final class Labels {

    private static final int LONG = 6;
    private static final int SHORT = 3;
    /** What follows a label: a sign, or a remark in brackets. */
    private static final Pattern BESIDE = Pattern.compile("[=:]$|\\s*[(\\[][^)\\]]*[)\\]]$");

    private Labels() {}

    /** A label that is nothing but such a word. */
    static boolean isSummary(String cell) {
        String plain = cleaned(cell);
        return !plain.isEmpty() && HeadingNames.words("summary").contains(plain);
    }

    /** A label that begins or ends with such a word. */
    static boolean sumsUp(String cell) {
        String plain = cleaned(cell);
        return isSummary(cell)
                || HeadingNames.words("summary").stream()
                        .anyMatch(w -> plain.startsWith(w)
                                && (HeadingNames.ideographic(w)
                                        || !Character.isLetterOrDigit(w.charAt(0))
                                        || plain.length() > w.length()
                                                && !Character.isLetterOrDigit(plain.charAt(w.length()))
                                        || w.length() >= SHORT && plain.endsWith(" " + w)));
    }

    /** The same of words that are too long to be a name. */
    static boolean longAndSumsUp(String cell) {
        String plain = cleaned(cell);
        return HeadingNames.words("summary").stream()
                .anyMatch(w -> (w.length() >= LONG || HeadingNames.ideographic(w))
                        && (plain.equals(w) || plain.startsWith(w + " ") || plain.endsWith(" " + w)));
    }

    private static String cleaned(String cell) {
        return BESIDE.matcher(HeadingNames.plain(cell)).replaceAll("").strip();
    }
}
