package org.toeline.flight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** What the words of a heading most likely mean; the words are data, in {@code header-words.properties}. */
final class HeaderWords {

    static final String REMARK = "remark";
    static final String OTHER = "other";

    private static final Map<String, String> PHRASES = load();

    private HeaderWords() {}

    private static Map<String, String> load() {
        Properties lines = new Properties();
        try (InputStream in = HeaderWords.class.getResourceAsStream("header-words.properties")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own header-words.properties");
            }
            lines.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("header-words.properties", e);
        }
        Map<String, String> phrases = new LinkedHashMap<>();
        lines.forEach((meaning, words) -> {
            for (String phrase : words.toString().split("\\|")) {
                String already = phrases.put(plain(phrase), meaning.toString());
                if (already != null && !already.equals(meaning)) {
                    throw new IllegalStateException(
                            "header-words.properties: “" + phrase + "” means both " + already + " and " + meaning);
                }
            }
        });
        return phrases;
    }

    /** A meaning's name, {@link #REMARK} or {@link #OTHER}, and how many letters of the heading speak for it. */
    record Guess(String meaning, int letters, boolean whole) {

        boolean better(Guess than) {
            return whole != than.whole ? whole : letters > than.letters;
        }
    }

    /** The longest phrase in the heading; a phrase that is all of the heading goes before every other. */
    static Optional<Guess> guess(String heading) {
        String padded = " " + plain(heading) + " ";
        Guess best = null;
        for (Map.Entry<String, String> e : PHRASES.entrySet()) {
            if (padded.contains(" " + e.getKey() + " ")) {
                Guess guess = new Guess(
                        e.getValue(),
                        e.getKey().length(),
                        padded.length() == e.getKey().length() + 2);
                if (best == null || guess.better(best)) {
                    best = guess;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static String plain(String words) {
        return words.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[_\\-/:]+", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
