package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.document.Json;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** Property: a coach's own ranges count for what they are about and for nothing else. */
class RangeBookTest {

    /** What is written is rounded to a millionth of the unit. */
    private static final double WRITTEN = 1e-6;

    private static final Range OWN =
            Range.coachsOwn(ReadingKind.BALL_IN_STANCE, Set.of(Club.HYBRID), 60, 80, 70, "my own");

    @Test
    void ownRangesCountForTheirClubsOnly() {
        RangeBook all = RangeBook.shipped().with(OWN);
        assertThat(all.range(ReadingKind.BALL_IN_STANCE, Club.HYBRID)).contains(OWN);
        Range wood = all.range(ReadingKind.BALL_IN_STANCE, Club.FAIRWAY_WOOD).orElseThrow();
        Range before = RangeBook.shipped()
                .range(ReadingKind.BALL_IN_STANCE, Club.FAIRWAY_WOOD)
                .orElseThrow();
        assertThat(before.clubs())
                .as("the case is about a range that several clubs share")
                .contains(Club.HYBRID);
        assertThat(wood.low()).isEqualTo(before.low());
        assertThat(wood.clubs()).doesNotContain(Club.HYBRID);
        for (ReadingKind kind : EnumSet.complementOf(EnumSet.of(ReadingKind.BALL_IN_STANCE))) {
            for (Club club : Club.values()) {
                assertThat(all.range(kind, club))
                        .as("%s, %s", kind, club)
                        .isEqualTo(RangeBook.shipped().range(kind, club));
            }
        }
    }

    @Test
    void restoringBringsBackWhatCameWithTheProgram() {
        RangeBook own = new RangeBook(List.of()).with(OWN).without(OWN.kind(), Club.HYBRID);
        assertThat(RangeBook.shipped().with(own)).isEqualTo(RangeBook.shipped());
    }

    @Test
    void whatIsWrittenIsReadAgain() throws Exception {
        RangeBook all = RangeBook.shipped().with(OWN);
        RangeBook again = RangeBook.of(all.json());
        assertThat(again.ranges()).hasSameSizeAs(all.ranges());
        for (int i = 0; i < all.ranges().size(); i++) {
            Range expected = all.ranges().get(i);
            Range actual = again.ranges().get(i);
            assertThat(actual.shownLow()).isCloseTo(expected.shownLow(), within(WRITTEN));
            assertThat(actual.shownHigh()).isCloseTo(expected.shownHigh(), within(WRITTEN));
            assertThat(actual.shownAim()).isCloseTo(expected.shownAim(), within(WRITTEN));
            assertThat(List.of(actual.kind(), actual.clubs(), actual.provenance(), actual.source(), actual.note()))
                    .isEqualTo(List.of(
                            expected.kind(),
                            expected.clubs(),
                            expected.provenance(),
                            expected.source(),
                            expected.note()));
        }
        assertThat(again.json()).isEqualTo(all.json());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "[]",
                "{}",
                "{\"format\": \"toeline-ranges\", \"version\": 1}",
                "no json",
                "{\"format\": \"toeline-ranges\", \"version\": 1, \"ranges\": []} 7",
                "{\"format\": \"toeline-ranges\", \"version\": 1, \"ranges\": [{\"reading\": \"luck\"}]}",
                "{\"format\": \"toeline-ranges\", \"version\": 1, \"ranges\": [{\"reading\": \"shaft-lean\","
                        + " \"clubs\": [\"driver\"], \"low\": 5, \"high\": 1, \"aim\": 2, \"provenance\": \"coachs-own\","
                        + " \"source\": \"me\"}]}"
            })
    void whatHoldsNoRangesIsRefused(String json) {
        assertThatThrownBy(() -> RangeBook.of(json.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOfAny(Json.NotJson.class, IllegalArgumentException.class);
    }
}
