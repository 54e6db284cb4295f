package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Range;
import org.toeline.advice.RangeBook;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** The ranges that ship are those listed for people to read, and agree with the figures they cite. */
class RangeTableTest {

    @Test
    void everyRangeIsListedAsItShips() throws Exception {
        String file = Files.readString(RangeTable.FILE);
        assertThat(file.substring(file.indexOf(RangeTable.BEGINS))).isEqualTo(RangeTable.table());
    }

    private static Range range(ReadingKind kind, Club club) {
        return RangeBook.shipped().range(kind, club).orElseThrow();
    }

    /**
     * Reference: CaddieSet (CVPR Workshops 2025), percentiles 5 and 95 at address, computed from its public table. Most of
     * those good players must not be told that they stand wrongly.
     */
    @Test
    void nineInTenOfTheCitedPlayersAreWithin() {
        record Cited(ReadingKind kind, Club club, double p5, double p95) {}
        double slack = 1.0;
        for (Cited c : List.of(
                new Cited(ReadingKind.SHOULDER_TILT, Club.DRIVER, 5.9, 18.4),
                new Cited(ReadingKind.SHOULDER_TILT, Club.MID_IRON, 3.9, 12.4),
                new Cited(ReadingKind.SHOULDER_TILT, Club.SHORT_IRON, 4.4, 12.2),
                new Cited(ReadingKind.FORWARD_BEND, Club.DRIVER, 90 - 83.6, 90 - 66.4),
                new Cited(ReadingKind.FORWARD_BEND, Club.MID_IRON, 90 - 68.1, 90 - 55.4),
                new Cited(ReadingKind.FORWARD_BEND, Club.SHORT_IRON, 90 - 66.4, 90 - 51.4),
                new Cited(ReadingKind.KNEE_FLEX, Club.DRIVER, 180 - 171.9, 180 - 150.5),
                new Cited(ReadingKind.KNEE_FLEX, Club.MID_IRON, 180 - 168.5, 180 - 146.1))) {
            Range range = range(c.kind, c.club);
            assertThat(range.shownLow()).as(c.toString()).isLessThanOrEqualTo(c.p5 + 2 * slack);
            assertThat(range.shownHigh()).as(c.toString()).isGreaterThanOrEqualTo(c.p95 - slack);
        }
    }

    /**
     * Reference: an unreviewed article of a teachers' federation on tour players: 81 to 91, 56 to 66 and 46 to 56 cm from the
     * lead toe with driver, 5-iron and 9-iron; the lead foot turned out by 25°; the stance 5 cm wider than the shoulders on each
     * side with a driver.
     */
    @Test
    void aimsAgreeWithTheirOwnSource() {
        assertThat(range(ReadingKind.BALL_DISTANCE, Club.DRIVER).shownAim()).isBetween(81.0, 91.0);
        assertThat(range(ReadingKind.BALL_DISTANCE, Club.MID_IRON).shownAim()).isBetween(56.0, 66.0);
        assertThat(range(ReadingKind.BALL_DISTANCE, Club.SHORT_IRON).shownAim()).isBetween(46.0, 56.0);
        assertThat(range(ReadingKind.LEAD_FOOT_FLARE, Club.DRIVER).shownAim()).isBetween(24.0, 26.0);
        assertThat(range(ReadingKind.LEAD_FOOT_OUTSIDE_SHOULDER, Club.DRIVER).shownAim())
                .isBetween(4.0, 6.0);
        assertThat(range(ReadingKind.FEET_TO_TARGET, Club.WEDGE).shownAim())
                .as("slightly open with wedges: common practice")
                .isPositive();
    }

    /** What goes with the club goes one way: the shorter the club, the farther back the ball and the narrower the stance. */
    @Test
    void aimsFollowTheLengthOfTheClub() {
        List<Club> shorter = List.of(
                Club.DRIVER,
                Club.FAIRWAY_WOOD,
                Club.HYBRID,
                Club.LONG_IRON,
                Club.MID_IRON,
                Club.SHORT_IRON,
                Club.WEDGE);
        for (ReadingKind kind : List.of(
                ReadingKind.BALL_IN_STANCE,
                ReadingKind.BALL_TO_LEAD_SHOULDER,
                ReadingKind.BALL_TO_LEAD_HEEL,
                ReadingKind.STANCE_WIDTH,
                ReadingKind.STANCE_TO_SHOULDER_WIDTH,
                ReadingKind.BALL_DISTANCE,
                ReadingKind.SHOULDER_TILT)) {
            for (int i = 1; i < shorter.size(); i++) {
                assertThat(range(kind, shorter.get(i)).aim())
                        .as(kind + " " + shorter.get(i))
                        .isLessThanOrEqualTo(range(kind, shorter.get(i - 1)).aim());
            }
        }
    }
}
