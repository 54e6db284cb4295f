package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.toeline.document.Json;

/** The phrases of every language, and a coach's own in their place. */
class PhrasesTest {

    private static Properties bundle(String name) throws Exception {
        try (Reader in = new InputStreamReader(Words.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
            Properties properties = new Properties();
            properties.load(in);
            return properties;
        }
    }

    private static Set<String> places(String text) {
        return Pattern.compile("\\{\\d}")
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** No phrase is missing, none is left over, and each number is filled in with the same. */
    @Test
    void germanHasEveryPhraseEnglishHas() throws Exception {
        for (String bundle : List.of("words", "page")) {
            Properties english = bundle(bundle + ".properties");
            Properties german = bundle(bundle + "_de.properties");
            assertThat(phrases(german)).containsExactlyInAnyOrderElementsOf(phrases(english));
            for (String key : phrases(english)) {
                if (!key.equals("list.further")) {
                    assertThat(places(german.getProperty(key))).as(key).isEqualTo(places(english.getProperty(key)));
                }
            }
        }
    }

    /** All but the words for a player's sides, of which a language needs as many forms as it has. */
    private static Set<String> phrases(Properties bundle) {
        return bundle.stringPropertyNames().stream()
                .filter(k -> !k.startsWith("slot."))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void ownPhrasesTakeThePlaceOfShippedOnes() {
        Phrases own = Phrases.NONE
                .with("en", "why.knee.out-low", "Loose knees turn.")
                .with("de", "why.knee.out-low", "Knie locker.");
        Words english = Words.english().with(own);
        assertThat(english.text("why.knee.out-low")).isEqualTo("Loose knees turn.");
        assertThat(Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE).with(own).text("why.knee.out-low"))
                .isEqualTo("Knie locker.");
        assertThat(english.with(own.without("en", "why.knee.out-low")).text("why.knee.out-low"))
                .isEqualTo("A straight knee makes you stiff, and it is harder to keep your balance as you swing.");
        assertThat(Phrases.replaceable())
                .contains("why.knee.out-low", "do.knee.out-low", "handout.title")
                .doesNotContain("finding.too-close", "figure", "handout.cautions", "verdict.cannot-tell");
    }

    @Test
    void whatIsWrittenIsReadAgainWithWhatNobodyKnows() throws Exception {
        Phrases own = new Phrases(
                java.util.Map.of("en", java.util.Map.of("why.knee.out-low", "“Loose” <knees>")),
                List.of("Well done.", "Gut gemacht."),
                "C. Coach, coach@example.org",
                "{\"later\":{\"x\":1}}");
        Phrases.Read read = Phrases.read(own.written(), "phrases.json");
        assertThat(read.said()).isEmpty();
        assertThat(read.phrases()).isEqualTo(own);
    }

    /** Fault K11: what cannot be used is said and left alone; the rest is used. */
    @Test
    void whatOfItCannotBeUsedIsSaid() throws Exception {
        Phrases.Read read = Phrases.read("""
            {"format": "toeline-phrases", "version": 1, "phrases": {"en": {
             "why.knee.out-low": "Loose knees turn.", "why.side-bend": 7, "finding.too-close": "Surely too far.",
             "no.such": "x", "check.feet": "uses {3}", "do.knee.out-low": " "}}}\
            """.getBytes(StandardCharsets.UTF_8), "own.json");
        assertThat(read.said())
                .hasSize(5)
                .allMatch(s -> s.startsWith("own.json: "))
                .anyMatch(s -> s.contains("no.such"))
                .anyMatch(s -> s.contains("finding.too-close"));
        Words words = Words.english().with(read.phrases());
        assertThat(words.text("why.knee.out-low")).isEqualTo("Loose knees turn.");
        assertThat(words.text("finding.too-close")).startsWith("{0}. Too close to call");
        assertThat(words.text("check.feet")).startsWith("Lay a club");
        assertThat(Phrases.read(read.phrases().written(), "own.json").phrases())
                .as("left alone")
                .isEqualTo(read.phrases());
    }

    @Test
    void aDocumentThatIsNoneIsRefusedWithAClause() {
        String whole =
                new String(Phrases.NONE.with("en", "why.knee.out-low", "x").written(), StandardCharsets.UTF_8);
        for (String broken : List.of(
                "",
                "{",
                "[]",
                "7",
                "{\"format\":\"toeline-phrases\",\"version\":2}",
                "{\"format\":\"toeline-phrases\",\"version\":1,\"own\":3}",
                "[".repeat(100_000),
                whole.substring(0, 40))) {
            assertThatThrownBy(() -> Phrases.read(broken.getBytes(StandardCharsets.UTF_8), "own.json"))
                    .as(broken.substring(0, Math.min(20, broken.length())))
                    .isInstanceOfAny(Json.NotJson.class, IllegalArgumentException.class)
                    .hasMessageMatching("(?s).{5,}");
        }
    }

    /** What is filled in is not filled in again. */
    @Test
    void fillsEachPlaceOnce() {
        assertThat(Words.english().text("list.two", "{1}", "b")).isEqualTo("{1} and b");
    }
}
