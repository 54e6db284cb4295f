package org.toeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The words on the screen against their list: every name of a thing stands in it as it is shown, and what the list says is not said
 * is not said. Sentences use those names; buttons say what they do in everyday words, which are no terms.
 */
class GlossaryTest {

    private static final Path GLOSSARY = Path.of("docs", "glossary.md");
    /** What is measured, marked, hit with, said of a reading; what lies on the ground; where one is. */
    private static final Pattern NAMES = Pattern.compile("(reading|landmark|club|verdict|floor|screen)\\.[a-z-]+");

    private static final Pattern NOT = Pattern.compile("\\(not: ([^)]*)\\)");
    private static final List<String> BUNDLES = List.of("org.toeline.advice.words", "org.toeline.desk.desk");

    private static ResourceBundle bundle(String name, String language) {
        return ResourceBundle.getBundle(
                name,
                Locale.forLanguageTag(language),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** The cells of the words of a language, one a line of a table. */
    private static List<String> words(String language) throws Exception {
        int column = language.equals("de") ? 2 : 1;
        try (Stream<String> lines = Files.lines(GLOSSARY)) {
            return lines.filter(l -> l.startsWith("| ") && !l.startsWith("| ---") && !l.startsWith("| word "))
                    .map(l -> l.split("\\|")[column].strip())
                    .toList();
        }
    }

    private static boolean says(String text, String word) {
        return Pattern.compile("(?<!\\p{L})" + Pattern.quote(word) + "(?!\\p{L})", Pattern.CASE_INSENSITIVE)
                .matcher(text)
                .find();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyNameStandsInTheList(String language) throws Exception {
        List<String> words = words(language);
        List<String> missing = new ArrayList<>();
        int names = 0;
        for (String name : BUNDLES) {
            ResourceBundle bundle = bundle(name, language);
            for (String key : new TreeSet<>(bundle.keySet())) {
                String text = bundle.getString(key);
                if (NAMES.matcher(key).matches() && !text.contains("{")) {
                    names++;
                    if (words.stream().noneMatch(w -> says(w, text))) {
                        missing.add(key + "=" + text);
                    }
                }
            }
        }
        assertThat(names).as("names that were looked for").isGreaterThan(60);
        assertThat(missing).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void whatIsNotSaidIsNotSaid(String language) throws Exception {
        List<String> banned = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (String cell : words(language)) {
            Matcher not = NOT.matcher(cell);
            if (not.find()) {
                banned.addAll(Arrays.asList(not.group(1).split(", ")));
            }
            String without = not.reset().replaceAll("").strip();
            if (without.contains(" ")) {
                said.add(without);
            }
        }
        assertThat(banned).hasSizeGreaterThan(3);
        List<String> faults = new ArrayList<>();
        for (String name : BUNDLES) {
            ResourceBundle bundle = bundle(name, language);
            for (String key : new TreeSet<>(bundle.keySet())) {
                String text = bundle.getString(key);
                for (String phrase : said) {
                    // a word may well be part of another thing's name
                    text = text.replaceAll("(?i)" + Pattern.quote(phrase), "");
                }
                for (String word : banned) {
                    if (says(text, word)) {
                        faults.add(key + "=" + bundle.getString(key) + ": not “" + word + "”");
                    }
                }
            }
        }
        assertThat(faults).isEmpty();
    }
}
