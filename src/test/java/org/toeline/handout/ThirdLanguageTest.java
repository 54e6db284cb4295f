package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.language.Language;

/** A language more for the player needs files alone: French, of which no code knows. */
class ThirdLanguageTest {

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
                    .doesNotContainPattern("\\b(the|your|with|measured|recommended|and|for)\\b")
                    .doesNotContain("{");
        }
    }
}
