package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.language.Language;

/** A language more for the player needs files alone: French, of which no code knows. */
class ThirdLanguageTest {

    private static final Pattern ENGLISH =
            Pattern.compile("\\b(the|your|with|measured|recommended|and|for|is|was|of)\\b");

    @Test
    void aPageInFrenchNeedsNoCode() throws Exception {
        assertThat(Language.all()).doesNotContain(Locale.FRENCH);
        Words french = Words.of(Locale.FRANCE, LengthUnit.CENTIMETRE);
        for (String sample : List.of("before", "left-handed")) {
            String html = new String(Samples.handout(sample).withWords(french).html(), StandardCharsets.UTF_8);
            String text = html.replaceAll("(?s)<style>.*?</style>|<img[^>]*>|<[^>]*>", " ");
            assertThat(html).contains("<html lang=\"fr\">");
            assertThat(text)
                    .containsPattern("Recule la balle|Avance la balle")
                    .contains("Pourquoi", " 2026")
                    .doesNotContainPattern(ENGLISH)
                    .doesNotContain("{");
        }
    }

    /** Whatever a lesson brings, doubts and nothing to judge among it: no English is left on the page. */
    @ParameterizedTest
    @ValueSource(ints = {1, 4, 7, 10, 15, 26, 33, 47, 59})
    void noPageFallsBackToEnglish(int lesson) {
        Words french = Words.of(Locale.FRANCE, LengthUnit.CENTIMETRE);
        Page page = ManyLessons.lesson(lesson).withWords(french).page();
        List<String> said = new ArrayList<>(List.of(page.title(), page.headline(), page.lead(), page.small()));
        Stream.of(page.beside(), page.below()).flatMap(List::stream).forEach(s -> {
            said.add(s.heading());
            said.addAll(s.paragraphs());
        });
        assertThat(said).noneMatch(t -> ENGLISH.matcher(t).find()).noneMatch(t -> t.contains("{"));
    }
}
