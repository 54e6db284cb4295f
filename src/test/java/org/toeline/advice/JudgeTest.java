package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.mark.Club;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Spread;

/** The decision rule against JCGM 106:2012, the shipped ranges against common practice. */
class JudgeTest {

    private static final EnumSet<Club> ALL = EnumSet.allOf(Club.class);

    private static Reading reading(ReadingKind kind, double shown, double sigmaShown) {
        double value = kind.unit().toInside(shown);
        Spread spread = new Normal(value, kind.unit().toInside(sigmaShown));
        return new Reading(kind, value, spread, Source.MARKS);
    }

    private static double conformity(Reading reading, Range range) {
        return reading.spread().probabilityBelow(range.high())
                - reading.spread().probabilityBelow(range.low());
    }

    private static Range range(ReadingKind kind, double low, double high) {
        double a = kind.unit().toInside(low);
        double b = kind.unit().toInside(high);
        return new Range(kind, ALL, a, b, (a + b) / 2, Provenance.COACHS_OWN, "a test", "");
    }

    /** JCGM 106:2012, examples (inputs from memory, results computed): P = 0.9192 and 0.6626. */
    @Test
    void conformityOfTheStandardsExamples() {
        double below = conformity(
                reading(ReadingKind.SHOULDER_TILT, -5.47, 0.05), range(ReadingKind.SHOULDER_TILT, -50, -5.40));
        assertThat(below).isCloseTo(0.9192, within(5e-5));
        double between =
                conformity(reading(ReadingKind.SHOULDER_TILT, 13.6, 1.8), range(ReadingKind.SHOULDER_TILT, 12.5, 16.3));
        assertThat(between).isCloseTo(0.6626, within(5e-5));
    }

    /** A guard of g standard uncertainties at one limit: normal distribution, 0.500, 0.8413, 0.950, 0.9772. */
    @Test
    void conformityWithAGuard() {
        double[][] cases = {{0, 0.500}, {1, 0.8413}, {1.645, 0.950}, {2, 0.9772}};
        for (double[] c : cases) {
            double p =
                    conformity(reading(ReadingKind.SIDE_BEND, c[0] * 0.5, 0.5), range(ReadingKind.SIDE_BEND, 0, 1000));
            assertThat(p).isCloseTo(c[1], within(5e-5));
        }
    }

    @Test
    void saysOneOfFiveThings() {
        Range range = range(ReadingKind.SHOULDER_TILT, 5, 15);
        assertThat(verdict(10, 1, range)).isEqualTo(Verdict.IN_RANGE);
        assertThat(verdict(1.5, 1.5, range)).isEqualTo(Verdict.OUT_LOW);
        assertThat(verdict(19, 1.5, range)).isEqualTo(Verdict.OUT_HIGH);
        assertThat(verdict(5.5, 1.5, range)).isEqualTo(Verdict.TOO_CLOSE);
        assertThat(verdict(10, 4, range)).isEqualTo(Verdict.CANNOT_TELL);
    }

    /** Guarded acceptance and rejection (JCGM 106:2012, 8.3): the guard is the half width of the interval, 1.96 u. */
    @Test
    void turnsWhereTheDrawnIntervalCrossesTheLimit() {
        Range range = range(ReadingKind.SHOULDER_TILT, 5, 25);
        assertThat(verdict(5 + 1.97, 1, range)).isEqualTo(Verdict.IN_RANGE);
        assertThat(verdict(5 + 1.95, 1, range)).isEqualTo(Verdict.TOO_CLOSE);
        assertThat(verdict(5 - 1.95, 1, range)).isEqualTo(Verdict.TOO_CLOSE);
        assertThat(verdict(5 - 1.97, 1, range)).isEqualTo(Verdict.OUT_LOW);
    }

    /** 15 ± 18 against 30 to 55 overlaps, so nothing is said; 5 ± 20 lies wholly outside, wide as it is. */
    @Test
    void saysOutOnlyWhereTheIntervalLiesOutside() {
        Range range = range(ReadingKind.FORWARD_BEND, 30, 55);
        assertThat(Judge.verdict(reading(ReadingKind.FORWARD_BEND, 15, 18 / 1.96), range))
                .isEqualTo(Verdict.CANNOT_TELL);
        assertThat(Judge.verdict(reading(ReadingKind.FORWARD_BEND, 5, 20 / 1.96), range))
                .isEqualTo(Verdict.OUT_LOW);
    }

    private static Verdict verdict(double shown, double sigma, Range range) {
        return Judge.verdict(reading(ReadingKind.SHOULDER_TILT, shown, sigma), range);
    }

    /** Common practice: with a driver half the ball stands above the crown; off the lead foot is too far forward. */
    @Test
    void shippedRangesKeepToCommonPractice() {
        assertThat(shipped(ReadingKind.BALL_ABOVE_CROWN, 50, 3)).isEqualTo(Verdict.IN_RANGE);
        assertThat(shipped(ReadingKind.BALL_ABOVE_CROWN, 10, 3)).isEqualTo(Verdict.OUT_LOW);
        assertThat(shipped(ReadingKind.BALL_TO_LEAD_SHOULDER, 0, 1)).isEqualTo(Verdict.IN_RANGE);
        assertThat(shipped(ReadingKind.BALL_TO_LEAD_SHOULDER, 15, 1)).isEqualTo(Verdict.OUT_HIGH);
        assertThat(shipped(ReadingKind.BALL_IN_STANCE, 115, 2)).isEqualTo(Verdict.OUT_HIGH);
        assertThat(shipped(ReadingKind.SHOULDERS_TO_FEET, 0, 2)).isEqualTo(Verdict.IN_RANGE);
        assertThat(shipped(ReadingKind.SHOULDER_TILT, -2, 1)).isEqualTo(Verdict.OUT_LOW);
        assertThat(shipped(ReadingKind.LEAD_FOOT_OUTSIDE_SHOULDER, -8, 1)).isEqualTo(Verdict.OUT_LOW);
    }

    private static Verdict shipped(ReadingKind kind, double shown, double sigma) {
        return Judge.verdict(
                reading(kind, shown, sigma),
                RangeBook.shipped().range(kind, Club.DRIVER).orElseThrow());
    }

    /** The most upstream of what is out is named, and only what is out and downstream may follow from it. */
    @Test
    void namesTheFirstLinkOfTheChain() {
        Advice advice = Judge.advise(
                List.of(
                        reading(ReadingKind.BALL_TO_LEAD_SHOULDER, 12, 1),
                        reading(ReadingKind.SHOULDERS_TO_FEET, 10, 1),
                        reading(ReadingKind.SHOULDER_TILT, 0, 1),
                        reading(ReadingKind.STANCE_WIDTH, 48, 1)),
                Club.DRIVER,
                RangeBook.shipped(),
                CauseChain.shipped());
        FirstThing first = advice.first().orElseThrow();
        assertThat(first.finding().kind()).isEqualTo(ReadingKind.BALL_TO_LEAD_SHOULDER);
        assertThat(first.mayFollow()).containsExactly(ReadingKind.SHOULDERS_TO_FEET, ReadingKind.SHOULDER_TILT);
    }

    @Test
    void namesNothingWhenNothingIsOut() {
        Advice advice = Judge.advise(
                List.of(reading(ReadingKind.SHOULDER_TILT, 9, 1)),
                Club.DRIVER,
                RangeBook.shipped(),
                CauseChain.shipped());
        assertThat(advice.first()).isEmpty();
    }

    /** Common practice: for irons the ball's place in the stance is looked at before anything of the shoulders. */
    @Test
    void looksAtTheBallInTheStanceFirstWithIrons() {
        List<Reading> readings = List.of(
                reading(ReadingKind.BALL_TO_LEAD_SHOULDER, 20, 1),
                reading(ReadingKind.BALL_IN_STANCE, 110, 2),
                reading(ReadingKind.SHOULDERS_TO_FEET, 10, 1));
        assertThat(first(readings, Club.MID_IRON).finding().kind()).isEqualTo(ReadingKind.BALL_IN_STANCE);
        assertThat(first(readings, Club.MID_IRON).mayFollow())
                .containsExactly(ReadingKind.BALL_TO_LEAD_SHOULDER, ReadingKind.SHOULDERS_TO_FEET);
        assertThat(first(readings, Club.DRIVER).finding().kind()).isEqualTo(ReadingKind.BALL_TO_LEAD_SHOULDER);
    }

    /** Kim et al. 2018: the ball forward opens the shoulders, the ball back closes them; so only that may follow. */
    @Test
    void whatGoesTheOtherWayDoesNotFollow() {
        Reading forward = reading(ReadingKind.BALL_TO_LEAD_SHOULDER, 12, 1);
        assertThat(first(List.of(forward, reading(ReadingKind.SHOULDERS_TO_FEET, -10, 1)), Club.DRIVER)
                        .mayFollow())
                .isEmpty();
        assertThat(first(List.of(forward, reading(ReadingKind.SHOULDER_TILT, 22, 1)), Club.DRIVER)
                        .mayFollow())
                .isEmpty();
        Reading back = reading(ReadingKind.BALL_TO_LEAD_SHOULDER, -12, 1);
        assertThat(first(
                                List.of(
                                        back,
                                        reading(ReadingKind.SHOULDERS_TO_FEET, -10, 1),
                                        reading(ReadingKind.SHOULDER_TILT, 22, 1)),
                                Club.DRIVER)
                        .mayFollow())
                .as("that closed shoulders tilt more is not shown")
                .containsExactly(ReadingKind.SHOULDERS_TO_FEET);
    }

    private static FirstThing first(List<Reading> readings, Club club) {
        return Judge.advise(readings, club, RangeBook.shipped(), CauseChain.shipped())
                .first()
                .orElseThrow();
    }

    /** The picture of the chain has one box a thing, leaves out what a longer way says too, and puts effects after causes. */
    @Test
    void drawsUpTheChain() {
        Advice advice = Judge.advise(
                List.of(
                        reading(ReadingKind.BALL_TO_LEAD_SHOULDER, 12, 1),
                        reading(ReadingKind.SHOULDERS_TO_TARGET, 9, 1),
                        reading(ReadingKind.SHOULDERS_TO_FEET, 10, 1),
                        reading(ReadingKind.SHOULDER_TILT, 9, 1),
                        reading(ReadingKind.KNEE_FLEX, 20, 1)),
                Club.DRIVER,
                RangeBook.shipped(),
                CauseChain.shipped());
        CauseGraph graph = CauseGraph.of(advice, CauseChain.shipped(), Club.DRIVER);
        assertThat(graph.nodes())
                .extracting(CauseGraph.Node::kind)
                .containsExactly(
                        ReadingKind.BALL_TO_LEAD_SHOULDER, ReadingKind.SHOULDERS_TO_FEET, ReadingKind.SHOULDER_TILT);
        assertThat(graph.nodes()).extracting(CauseGraph.Node::step).containsExactly(0, 1, 2);
        assertThat(graph.nodes())
                .extracting(CauseGraph.Node::role)
                .containsExactly(CauseGraph.Role.FIRST, CauseGraph.Role.MAY_FOLLOW, CauseGraph.Role.BESIDE);
        assertThat(graph.edges()).hasSize(2).allSatisfy(e -> {
            assertThat(Topic.of(e.cause())).isNotEqualTo(Topic.of(e.effect()));
            assertThat(new CauseWords(Words.english()).step(e, graph.out(e.cause())))
                    .isNotBlank();
            assertThat(new CauseWords(Words.english()).grounds(e)).isNotBlank();
        });
        assertThat(new CauseWords(Words.english()).grounds(graph.edges().get(0)))
                .contains("Kim et al. 2018");
    }

    /** Every step of the shipped chain is explained, with what it stands on, in every language. */
    @Test
    void explainsEveryStep() {
        for (java.util.Locale locale : Words.languages()) {
            Words words = Words.of(locale, LengthUnit.CENTIMETRE);
            for (CauseChain.Link link : CauseChain.shipped().links()) {
                if (Topic.of(link.cause()) != Topic.of(link.effect())) {
                    assertThat(new CauseWords(words).step(link, link.when())).isNotBlank();
                    assertThat(new CauseWords(words).step(link, Optional.of(Verdict.OUT_LOW)))
                            .isNotBlank();
                }
                assertThat(new CauseWords(words).grounds(link))
                        .as(link.toString())
                        .contains(
                                link.grounds() == CauseChain.Grounds.PUBLISHED
                                        ? Citations.in(words, link.source())
                                        : "");
            }
        }
    }
}
