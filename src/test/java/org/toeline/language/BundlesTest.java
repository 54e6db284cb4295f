package org.toeline.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every bundle says the same in every language: the same keys, and the same places to fill in. */
class BundlesTest {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)[^}]*}");

    /** A name within a sentence: a small letter begins it in English, and a noun keeps its capital in German. */
    private static final String OF_ITS_OWN = "list.further";

    static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources/org/toeline"))) {
            return files.filter(f -> f.toString().endsWith(".properties"))
                    .filter(f -> !f.getFileName().toString().matches(".*_..\\.properties"))
                    .filter(f -> !f.getFileName().toString().equals("headings.properties"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void saysTheSameInEveryLanguage(Path english) throws IOException {
        for (Locale language : Language.all()) {
            if (!language.equals(Locale.ENGLISH)) {
                saysTheSame(english, language);
            }
        }
    }

    private static void saysTheSame(Path english, Locale language) throws IOException {
        String name = english.getFileName().toString();
        Path inIt = english.resolveSibling(name.replace(".properties", "_" + language.getLanguage() + ".properties"));
        assertThat(inIt).exists();
        Properties one = read(english);
        Properties other = read(inIt);
        assertThat(other.stringPropertyNames()).containsExactlyInAnyOrderElementsOf(one.stringPropertyNames());
        for (String key : one.stringPropertyNames()) {
            if (!key.equals(OF_ITS_OWN)) {
                assertThat(places(other.getProperty(key))).as(key).isEqualTo(places(one.getProperty(key)));
            }
            assertThat(other.getProperty(key).isBlank())
                    .as(key)
                    .isEqualTo(one.getProperty(key).isBlank());
        }
    }

    /** A line that stands twice would silently count once. */
    @ParameterizedTest
    @MethodSource("bundles")
    void noKeyStandsTwice(Path english) throws IOException {
        List<String> keys = Files.readAllLines(english).stream()
                .filter(l -> l.matches("[\\w.-]+=.*"))
                .map(l -> l.substring(0, l.indexOf('=')))
                .toList();
        assertThat(keys).doesNotHaveDuplicates();
    }

    /** A blank before a value is no part of it, and one behind it is lost to the eye: where one is meant it is written out. */
    @ParameterizedTest
    @MethodSource("bundles")
    void blanksAtTheEndsAreWrittenOut(Path english) throws IOException {
        for (Locale language : Language.all()) {
            String other = "_" + language.getLanguage() + ".properties";
            Path file = language.equals(Locale.ENGLISH)
                    ? english
                    : english.resolveSibling(english.getFileName().toString().replace(".properties", other));
            assertThat(Files.readAllLines(file).stream().filter(l -> l.matches("[\\w.-]+=([ \t].*|.*[ \t])")))
                    .as(file.toString())
                    .isEmpty();
        }
    }

    private static Set<String> places(String sentence) {
        return PLACE.matcher(sentence)
                .results()
                .map((MatchResult m) -> m.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Properties read(Path file) throws IOException {
        Properties all = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            all.load(in);
        }
        return all;
    }

    /** A sentence that chooses by a number is given numbers, as code gives them. */
    @ParameterizedTest
    @MethodSource("bundles")
    void whatChoosesByANumberCanBeSaid(Path english) throws IOException {
        String name = english.toString().replace('\\', '/').replaceFirst(".*resources/", "");
        Sentences sentences = Sentences.in(name.replace(".properties", "").replace('/', '.'));
        Properties one = read(english);
        for (String key : one.stringPropertyNames()) {
            if (one.getProperty(key).contains(",choice,")) {
                for (int n = 0; n < 3; n++) {
                    assertThat(sentences.of(key, n, n, n, n, n))
                            .as(key + " of " + n)
                            .doesNotContain("{", "<", "|");
                }
            }
        }
    }
}
