package org.toeline.flight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the words of headings and labels mean; the words are data, in {@code headings.properties}. */
final class HeadingNames {

    static final String PERHAPS = ".perhaps";
    /** Names of setups. */
    static final String SETUP = "setup";

    private static final Pattern RUN_TOGETHER = Pattern.compile("(?<=\\p{Ll})(?=\\p{Lu})");
    private static final Pattern GAPS = Pattern.compile("[_\\-–/:\\s]+");
    private static final Map<String, Set<String>> WORDS = load();
    private static final Map<String, Meaning> SURELY = new HashMap<>();
    private static final Map<String, List<Meaning>> HINTS = new LinkedHashMap<>();

    static {
        for (Meaning meaning : Meaning.values()) {
            for (String phrase : words(meaning.id())) {
                once(phrase, meaning);
                HINTS.put(phrase, List.of(meaning));
            }
        }
        for (Meaning meaning : Meaning.values()) {
            words(meaning.id() + PERHAPS).stream()
                    .filter(p -> !SURELY.containsKey(p))
                    .forEach(p -> HINTS.merge(p, List.of(meaning), HeadingNames::joined));
        }
    }

    private HeadingNames() {}

    private static List<Meaning> joined(List<Meaning> some, List<Meaning> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private static void once(String phrase, Meaning meaning) {
        Meaning already = SURELY.put(phrase, meaning);
        if (already != null && already != meaning) {
            throw new IllegalStateException("headings.properties: “" + phrase + "” is both " + already.id() + " and "
                    + meaning.id() + "; one is needed");
        }
    }

    private static Map<String, Set<String>> load() {
        Properties lines = new Properties();
        try (InputStream in = HeadingNames.class.getResourceAsStream("headings.properties")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own headings.properties");
            }
            lines.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("headings.properties", e);
        }
        Map<String, Set<String>> words = new HashMap<>();
        lines.forEach((kind, phrases) -> {
            Set<String> plain = new HashSet<>();
            Arrays.stream(phrases.toString().split("\\|"))
                    .map(HeadingNames::plain)
                    .forEach(plain::add);
            words.put(kind.toString(), plain);
        });
        return words;
    }

    /** The phrases of one kind, as {@link #plain} makes them. */
    static Set<String> words(String kind) {
        return WORDS.getOrDefault(kind, Set.of());
    }

    /** The figure that a heading, without unit and signs, names word for word. */
    static Optional<Meaning> surely(String words) {
        return Optional.ofNullable(SURELY.get(plain(words)));
    }

    /** Whether a heading is word for word one of a kind: shot-number, time, filter, setup, remark, other. */
    static boolean is(String kind, String words) {
        return words(kind).contains(plain(words));
    }

    /** Whether below a heading stand names of what shots are hit with, by or when, which are never mixed. */
    static boolean names(String words) {
        return is("filter", words) || is(SETUP, words) || is(SETUP + PERHAPS, words);
    }

    /** The figures that a heading may be about, the likeliest first: those of the longest phrase in it. */
    static List<Meaning> perhaps(String words) {
        return longest(HINTS.keySet(), plain(words)).map(HINTS::get).orElse(List.of());
    }

    private static Optional<String> longest(Collection<String> phrases, String plain) {
        String padded = " " + plain + " ";
        return phrases.stream()
                .filter(p -> ideographic(p) ? plain.contains(p) : padded.contains(" " + p + " "))
                .max(java.util.Comparator.comparingInt(String::length));
    }

    /** Whether words are written without spaces between them. */
    static boolean ideographic(String text) {
        return text.codePoints()
                .anyMatch(c -> Character.isIdeographic(c)
                        || Character.UnicodeScript.of(c) == Character.UnicodeScript.KATAKANA
                        || Character.UnicodeScript.of(c) == Character.UnicodeScript.HIRAGANA);
    }

    /** Lower case, one kind of each letter, words apart, no dots and dashes. */
    static String plain(String words) {
        String one = Normalizer.normalize(words.replace('º', '°').replace('’', '\''), Normalizer.Form.NFKC);
        String apart = RUN_TOGETHER.matcher(one).replaceAll(" ").toLowerCase(Locale.ROOT);
        return GAPS.matcher(apart.replace(".", "")).replaceAll(" ").strip();
    }
}
