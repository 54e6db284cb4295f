package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.toeline.across.ChangeCall;
import org.toeline.reading.ReadingKind;

/**
 * Against the truth of the sample player's two lessons, filmed from different places: what the tool calls a change is one, and
 * what a protractor and a ruler on the pictures say is false. The table is in docs/accuracy.md.
 */
class LessonsByPictureTest {

    /** What the lesson was about: ball, shoulders and their tilt changed by several standard uncertainties. */
    private static final Set<ReadingKind> CHANGED = EnumSet.of(
            ReadingKind.BALL_TO_LEAD_SHOULDER,
            ReadingKind.BALL_IN_STANCE,
            ReadingKind.SHOULDERS_TO_TARGET,
            ReadingKind.SHOULDERS_TO_FEET,
            ReadingKind.SHOULDER_TILT);

    private static Map<ReadingKind, LessonsByPicture.Row> rows;

    @BeforeAll
    static void compare() throws Exception {
        List<LessonsByPicture.Row> all = LessonsByPicture.rows("before", "after");
        rows = all.stream().collect(Collectors.toMap(LessonsByPicture.Row::kind, Function.identity()));
    }

    @Test
    void theToolCallsRealWhatChangedAndNothingElse() {
        assertThat(rows.keySet()).containsAll(CHANGED);
        assertThat(rows.get(ReadingKind.BALL_TO_LEAD_SHOULDER).called().call()).isEqualTo(ChangeCall.REAL);
        rows.forEach((kind, row) -> {
            if (row.called().call() == ChangeCall.REAL) {
                assertThat(CHANGED).contains(kind);
            } else if (CHANGED.contains(kind)) {
                assertThat(row.called().call())
                        .as("%s, one of twenty that are looked at together", kind.id())
                        .isEqualTo(ChangeCall.TOO_CLOSE);
            }
            assertThat(row.tool().isFalse(row.truth())).as(kind.id()).isFalse();
        });
    }

    /** The feet turned by half a degree; the pictures say that they opened by more than their clicks allow. */
    @Test
    void thePicturesTurnFeetThatStoodStill() {
        LessonsByPicture.Row feet = rows.get(ReadingKind.FEET_TO_TARGET);
        assertThat(Math.abs(feet.truth().difference())).isLessThan(1);
        assertThat(feet.picture().says()).isTrue();
        assertThat(feet.picture().difference()).isGreaterThan(5);
        assertThat(feet.picture().isFalse(feet.truth())).isTrue();
    }

    /** The shoulders closed by 8.5°; the pictures show none of it. */
    @Test
    void thePicturesMissShouldersThatClosed() {
        LessonsByPicture.Row shoulders = rows.get(ReadingKind.SHOULDERS_TO_TARGET);
        assertThat(shoulders.truth().difference()).isLessThan(-8);
        assertThat(shoulders.picture().says()).isFalse();
        assertThat(shoulders.picture().isFalse(shoulders.truth())).isTrue();
    }

    /** The ball went back by a hand's breadth; by the pictures by three. */
    @Test
    void thePicturesMoveTheBallThreeTimesAsFar() {
        for (ReadingKind kind : List.of(ReadingKind.BALL_TO_LEAD_SHOULDER, ReadingKind.BALL_IN_STANCE)) {
            LessonsByPicture.Row ball = rows.get(kind);
            assertThat(ball.picture().isFalse(ball.truth())).as(kind.id()).isTrue();
            assertThat(ball.picture().difference() / ball.truth().difference())
                    .as(kind.id())
                    .isGreaterThan(3);
        }
    }
}
