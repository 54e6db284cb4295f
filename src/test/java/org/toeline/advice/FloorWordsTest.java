package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorReference;
import org.toeline.mark.View;
import org.toeline.posture.Doubt;

/** A coach sees ends of rods, and never the names that documents have for them. */
class FloorWordsTest {

    @Test
    void aDoubtedEndIsCalledByWhatOneSees() {
        Doubt doubt = new Doubt(View.FACE_ON, "rod-far", 64, 0.9, true);
        assertThat(new ContradictionWords(Words.english()).doubt(doubt))
                .contains("target end")
                .doesNotContain("rod-far");
        Words german = Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE);
        assertThat(new ContradictionWords(german).doubt(doubt))
                .contains("Ende am Ziel")
                .doesNotContain("rod-far");
    }

    @Test
    void allThatTheLayoutsHaveHasAName() {
        for (Words words : new Words[] {Words.english(), Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE)}) {
            for (FloorKind kind : FloorKind.values()) {
                for (FloorReference point : kind.layout().points()) {
                    assertThat(new FloorWords(words).name(point.id())).isNotEqualTo(point.id());
                }
            }
        }
        assertThat(new FloorWords(Words.english()).name("my tee peg")).isEqualTo("my tee peg");
    }
}
