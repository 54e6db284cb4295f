package org.toeline.ledger.store.rows;

import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** The words of a text as they are searched: without accents, in small letters, whatever the machine's language. */
final class FoldedWords {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern GAPS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int LONGEST = 40;
    /** Notes longer than a book are searched by their beginning. */
    private static final int MOST = 2000;

    private FoldedWords() {}

    static Set<String> of(String text) {
        String folded = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                // to capitals first: “ß” is “ss” where one letter is two (Unicode, section 3.13)
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT);
        Set<String> words = new LinkedHashSet<>();
        for (String word : GAPS.split(folded)) {
            if (!word.isEmpty() && words.size() < MOST) {
                words.add(
                        word.codePointCount(0, word.length()) <= LONGEST
                                ? word
                                : word.substring(0, word.offsetByCodePoints(0, LONGEST)));
            }
        }
        return words;
    }

    /** The first text that sorts, by code points, after every word with this beginning. */
    static String after(String beginning) {
        return beginning + "\uDBFF\uDFFF";
    }
}
