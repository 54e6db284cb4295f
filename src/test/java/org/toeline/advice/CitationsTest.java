package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A German desk and a German page say in German on whose word something stands. */
class CitationsTest {

    static Stream<String> shipped() {
        return Stream.concat(
                        RangeBook.shipped().ranges().stream().flatMap(r -> Stream.of(r.source(), r.note())),
                        CauseChain.shipped().links().stream().map(CauseChain.Link::source))
                .distinct();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void allThatCameWithTheProgramIsKnownInGerman(String source) {
        assertThat(Citations.german(source)).isPresent();
        assertThat(Citations.german(source).orElseThrow())
                .doesNotContain(" the ", "common practice")
                .doesNotContainPattern("\\d\\.\\d");
    }

    @Test
    void ofACoachsOwnWordsNothingIsChanged() {
        Words german = Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE);
        assertThat(Citations.in(german, "common practice: inside the lead heel"))
                .isEqualTo("übliche Lehre: innerhalb der vorderen Ferse");
        assertThat(Citations.in(german, "my own eye; common practice")).isEqualTo("my own eye; common practice");
        assertThat(Citations.in(Words.english(), "common practice")).isEqualTo("common practice");
    }

    @Test
    void whatIsCommonPracticeIsSaidOnce() {
        for (Words words : new Words[] {Words.english(), Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE)}) {
            assertThat(CauseChain.shipped().links()).allSatisfy(link -> {
                String said = new CauseWords(words).grounds(link).toLowerCase(Locale.ROOT);
                for (String practice : new String[] {"common practice", "übliche lehre"}) {
                    assertThat(said.split(practice, -1).length - 1).isLessThan(2);
                }
            });
        }
    }
}
