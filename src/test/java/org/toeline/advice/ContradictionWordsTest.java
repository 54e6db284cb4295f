package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/** What is said of marks that contradict each other reads as a sentence, whatever is put into it. */
class ContradictionWordsTest {

    private static Words words(String language) {
        return Words.of(Locale.forLanguageTag(language), LengthUnit.CENTIMETRE);
    }

    private static Contradiction of(Slip slip, Optional<View> view) {
        MarkSheet sheet = MarkSheet.empty(Handedness.RIGHT, Club.DRIVER);
        return new Contradiction(
                Contradiction.Clash.CAMERA_UNDERGROUND,
                Optional.of(View.FACE_ON),
                Optional.of(new Mend(slip, view, sheet)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void aSlipInOneViewNamesItAsWordsOfItsOwn(String language) {
        Words words = words(language);
        ContradictionWords said = new ContradictionWords(words);
        assertThat(Arrays.stream(Slip.values())
                        .filter(slip -> !said.slip(of(slip, Optional.of(View.FACE_ON)))
                                .equals(said.slip(of(slip, Optional.empty()))))
                        .map(slip -> said.slip(of(slip, Optional.of(View.FACE_ON)))))
                .hasSize(4)
                .allSatisfy(s -> assertThat(s).containsPattern(" (in the|in der) " + words.name(View.FACE_ON)));
    }

    @ParameterizedTest
    @EnumSource(Slip.class)
    void nothingStandsTwiceOrIsLeftOpen(Slip slip) {
        for (String language : new String[] {"en", "de"}) {
            ContradictionWords words = new ContradictionWords(words(language));
            for (Optional<View> view : List.of(Optional.<View>empty(), Optional.of(View.DOWN_THE_LINE))) {
                assertThat(words.sentence(of(slip, view))).doesNotContain("  ", "{", " .", " ,");
                assertThat(words.mend(of(slip, view))).doesNotContain("  ", "{", " .", " ,");
            }
        }
    }
}
