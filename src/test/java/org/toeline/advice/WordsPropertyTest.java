package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.toeline.advice.page.PlayerWords;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/** Property: whatever was found, in every language and unit and with a coach's own phrases, words claim no more. */
class WordsPropertyTest {

    /** What the languages say only of what is out of range. */
    private static final List<String> TOO = List.of(
            " too low",
            " too high",
            " too far",
            " too near",
            " too wide",
            " too narrow",
            " too open",
            " too closed",
            " too upright",
            " too straight",
            " too much",
            " too little",
            " zu tief",
            " zu hoch",
            " zu weit",
            " zu nah",
            " zu breit",
            " zu eng",
            " zu aufrecht",
            " zu gestreckt",
            " zu stark",
            " zu wenig");

    private record Said(Words words, Finding finding) {}

    @Provide
    Arbitrary<Said> said() {
        Arbitrary<Reading> readings = Combinators.combine(
                        Arbitraries.of(ReadingKind.values()),
                        Arbitraries.doubles().between(-120, 120),
                        Arbitraries.doubles().between(-2, 4),
                        Arbitraries.of(Source.values()))
                .as((kind, shown, size, source) -> {
                    double value = kind.unit().toInside(shown);
                    return new Reading(
                            kind, value, new Normal(value, kind.unit().toInside(Math.exp(size))), source);
                });
        Arbitrary<Words> words = Combinators.combine(
                        Arbitraries.of(Words.languages()),
                        Arbitraries.of(LengthUnit.values()),
                        Arbitraries.of(true, false))
                .as((locale, unit, own) -> own ? Words.of(locale, unit).with(sure()) : Words.of(locale, unit));
        return Combinators.combine(words, readings, Arbitraries.of(Club.values()))
                .as((w, reading, club) ->
                        new Said(w, Finding.judged(reading, RangeBook.shipped().range(reading.kind(), club))));
    }

    /** Own phrases of a coach who would rather be sure than right: in the place of every phrase there is. */
    private static Phrases sure() {
        Phrases phrases = Phrases.NONE;
        for (Verdict verdict : Verdict.values()) {
            phrases = phrases.with("en", "finding." + verdict.id(), "This is too far.")
                    .with("de", "finding." + verdict.id(), "Das ist zu weit.")
                    .with("en", "verdict." + verdict.id(), "too far")
                    .with("de", "verdict." + verdict.id(), "zu weit");
        }
        return phrases.with("en", "figure", "{0}{2}")
                .with("de", "figure", "{0}{2}")
                .with("en", "nothing.unsure", "All is well");
    }

    @Property(tries = 3000, seed = "20261")
    void onlyWhatIsOutIsCalledTooMuchOrGivenAnInstruction(@ForAll("said") Said said) {
        Finding finding = said.finding();
        boolean out = finding.verdict().map(Verdict::isOut).orElse(false);
        String sentence = new FindingWords(said.words()).sentence(finding);
        assertThat(TOO.stream().anyMatch(sentence.replace("\u00a0", " ")::contains))
                .as(sentence)
                .isEqualTo(out);
        PlayerWords player = new PlayerWords(
                said.words(),
                Handedness.LEFT,
                Club.DRIVER,
                new Advice(List.of(finding), Optional.empty(), Optional.empty()));
        if (out) {
            assertThat(player.instruction(finding)).isNotBlank().doesNotContain("{");
        } else {
            assertThatThrownBy(() -> player.instruction(finding)).isInstanceOf(IllegalStateException.class);
            assertThatThrownBy(() -> new FindingWords(said.words()).fault(finding))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    /** Judged or not, the sentence states the interval: as ±, as “give or take”, or as its two ends. */
    @Property(tries = 3000, seed = "20261")
    void theIntervalIsAlwaysThere(@ForAll("said") Said said) {
        Finding finding = said.finding();
        String sentence = new FindingWords(said.words()).sentence(finding);
        boolean cannot = finding.verdict().equals(Optional.of(Verdict.CANNOT_TELL));
        boolean german = said.words().language().equals("de");
        if (cannot) {
            assertThat(sentence)
                    .contains(said.words()
                            .range(
                                    finding.kind(),
                                    finding.reading().low(),
                                    finding.reading().high()))
                    .contains(german ? "nicht zu erkennen" : "cannot tell")
                    .doesNotContain("±");
        } else {
            assertThat(sentence)
                    .as(sentence)
                    .matches(s -> s.contains("±") || s.contains(german ? " genau" : "give or take"));
        }
    }

    /** A side is named only when the whole interval lies on it. */
    @Property(tries = 3000, seed = "20261")
    void aSideIsNamedOnlyWhenTheIntervalHasOne(@ForAll("said") Said said) {
        Reading reading = said.finding().reading();
        String sentence = new FindingWords(said.words()).sentence(said.finding());
        boolean straddles = reading.low() < 0 && reading.high() > 0;
        boolean german = said.words().language().equals("de");
        if (sentence.contains(german ? " genau" : "give or take")) {
            assertThat(straddles).as(sentence).isTrue();
        }
        if (sentence.contains(german ? "offen zu" : "are open to")
                || sentence.contains(german ? "geschlossen zu" : "closed to")) {
            assertThat(straddles).as(sentence).isFalse();
        }
    }

    /** Numbers are written as the language writes them. */
    @Property(tries = 500, seed = "20261")
    void germanNumbersHaveACommaAndEnglishOnesAPoint(@ForAll("said") Said said) {
        String figure = said.words().figure(said.finding());
        assertThat(figure).as(figure).doesNotContain(said.words().locale().equals(Locale.GERMAN) ? "." : ",");
    }
}
