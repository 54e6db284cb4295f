package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Doubt;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/** What the words say, and that they never say more than the finding. */
class WordsTest {

    private final Words words = Words.english();

    private static Finding finding(ReadingKind kind, double shown, double sigmaShown) {
        double value = kind.unit().toInside(shown);
        Reading reading = new Reading(kind, value, new Normal(value, kind.unit().toInside(sigmaShown)), Source.CAMERA);
        return Finding.judged(reading, RangeBook.shipped().range(kind, Club.DRIVER));
    }

    /** Reference: 1.96 × 0.66 cm = 1.29 cm, rounded up to 1.3. */
    @Test
    void saysTheFigureAndWhatMayFollow() {
        Finding out = finding(ReadingKind.BALL_TO_LEAD_SHOULDER, 12.1, 0.66);
        assertThat(words.figure(out)).isEqualTo("+12.1 ± 1.3\u00a0cm");
        assertThat(new CauseWords(words).mayFollow(new FirstThing(out, List.of(ReadingKind.SHOULDERS_TO_FEET))))
                .contains("Shoulders and feet may follow from it.");
    }

    /** Reference: 12.1 cm / 2.54 = 4.8 in, 1.3 cm = 0.51 in. */
    @Test
    void writesInchesAndTheLocalesNumbers() {
        Finding out = finding(ReadingKind.BALL_TO_LEAD_SHOULDER, -12.1, 0.66);
        assertThat(Words.of(Locale.US, LengthUnit.INCH).figure(out)).isEqualTo("−4.8 ± 0.6\u00a0in");
        assertThat(Words.of(Locale.GERMANY, LengthUnit.CENTIMETRE).figure(out)).isEqualTo("−12,1 ± 1,3\u00a0cm");
    }

    @Test
    void namesTheDoubtfulMark() {
        assertThat(new ContradictionWords(words).doubt(new Doubt(View.FACE_ON, "trail-heel", 14.2, 0.98, true)))
                .isEqualTo("The trail heel does not fit the rest: 14 px off in the face-on view.");
    }

    static List<Words> everyLanguage() {
        return Words.languages().stream()
                .map(l -> Words.of(l, LengthUnit.CENTIMETRE))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("everyLanguage")
    void hasWordsForEverything(Words words) {
        for (Landmark landmark : Landmark.values()) {
            assertThat(words.name(landmark)).isNotBlank();
            assertThat(words.where(landmark)).isNotBlank();
        }
        for (Source source : Source.values()) {
            assertThat(words.help(source)).isNotBlank();
        }
        for (ReadingKind kind : ReadingKind.values()) {
            assertThat(words.name(kind)).isNotBlank();
            for (Verdict verdict : List.of(Verdict.OUT_LOW, Verdict.OUT_HIGH)) {
                Range range = new Range(kind, java.util.Set.of(Club.DRIVER), -1, 1, 0, Provenance.COACHS_OWN, "", "");
                double value = verdict == Verdict.OUT_LOW ? -2 : 2;
                Finding out = new Finding(
                        new Reading(kind, value, new Normal(value, 0.1), Source.MARKS),
                        Optional.of(range),
                        Optional.of(verdict));
                assertThat(new FindingWords(words).sentence(out))
                        .startsWith(new FindingWords(words).fault(out))
                        .doesNotContain("{");
            }
        }
    }

    /** Property: over random findings, no word of a fault, of “within” or of a side that the finding does not bear. */
    @Test
    void neverClaimsMoreThanTheFinding() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 4000; i++) {
            ReadingKind kind = ReadingKind.values()[random.nextInt(ReadingKind.values().length)];
            Finding finding = finding(kind, 40 * random.nextGaussian(), Math.exp(random.nextDouble(-1, 3.5)));
            String sentence = new FindingWords(words).sentence(finding);
            Verdict verdict = finding.verdict().orElse(Verdict.TOO_CLOSE);
            assertThat(sentence.contains("too ")).as(sentence).isEqualTo(verdict.isOut());
            assertThat(sentence.contains("within the recommended")).as(sentence).isEqualTo(verdict == Verdict.IN_RANGE);
            assertThat(sentence.contains("cannot tell")).as(sentence).isEqualTo(verdict == Verdict.CANNOT_TELL);
            if (sentence.contains("give or take")) {
                assertThat(finding.reading().low()).isNegative();
                assertThat(finding.reading().high()).isPositive();
            }
        }
    }
}
