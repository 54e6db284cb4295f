package org.toeline.desk.shots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;

/** Figures of shots in German: a comma before the decimals, and what is shown can be typed again. */
class GermanShotsTest {

    private static final ShotUnits METRIC = ShotUnits.METRIC;

    private final Locale before = Locale.getDefault(Locale.Category.DISPLAY);

    @BeforeEach
    void german() {
        Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMANY);
    }

    @AfterEach
    void back() {
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    @Test
    void aFigureHasAComma() {
        assertThat(METRIC.number(ShotFigure.BALL_SPEED, 66.64)).isEqualTo("66,6");
        assertThat(METRIC.figure(ShotFigure.LAUNCH_DIRECTION, Math.toRadians(-1.4)))
                .isEqualTo("1,4 ° R");
        assertThat(METRIC.number(ShotFigure.LAUNCH_DIRECTION, 0)).as("no side").isEqualTo("0,0");
        assertThat(METRIC.width(ShotFigure.HANG_TIME, 5.972)).isEqualTo("5,97");
        assertThat(METRIC.number(ShotFigure.SMASH_FACTOR, 1.444))
                .as("three hundredths are worth acting on")
                .isEqualTo("1,44");
        assertThat(METRIC.number(ShotFigure.ATTACK_ANGLE, Math.toRadians(-4.2)))
                .as("a minus sign, no hyphen")
                .isEqualTo("−4,2");
        assertThat(METRIC.change(ShotFigure.CARRY, -3.25)).isEqualTo("−3,3");
        assertThat(METRIC.number(
                        ShotFigure.SPIN_RATE, ShotFigure.SPIN_RATE.shownUnit().toInside(12_345)))
                .as("no groups")
                .isEqualTo("12345");
    }

    /** No uncertainty is nothing: half widths are rounded up (JCGM 100:2008, 7.2.6). */
    @Test
    void aHalfWidthIsRoundedUpAndNeverNothing() {
        assertThat(METRIC.half(ShotFigure.BALL_SPEED, 0.004)).isEqualTo("0,1");
        assertThat(METRIC.half(ShotFigure.BALL_SPEED, 0.31)).isEqualTo("0,4");
        assertThat(METRIC.half(ShotFigure.BALL_SPEED, 0.3)).isEqualTo("0,3");
        assertThat(METRIC.half(ShotFigure.HANG_TIME, 0.0001)).isEqualTo("0,01");
        assertThat(METRIC.half(ShotFigure.SPIN_RATE, 0.001)).isEqualTo("1");
    }

    @Test
    void whatACellShowsIsReadAgainFromIt() {
        TypedShot shot = new TypedShot(
                new Shot(Map.of(
                        ShotFigure.BALL_SPEED,
                        66.64,
                        ShotFigure.LAUNCH_DIRECTION,
                        Math.toRadians(-1.44),
                        ShotFigure.ATTACK_ANGLE,
                        Math.toRadians(-4.2),
                        ShotFigure.HANG_TIME,
                        5.972)),
                Map.of());
        for (Meaning meaning :
                new Meaning[] {Meaning.ATTACK_ANGLE, Meaning.BALL_SPEED, Meaning.LAUNCH_DIRECTION, Meaning.HANG_TIME}) {
            String shown = shot.text(meaning, METRIC);
            assertThat(shown).contains(",");
            assertThat(shot.typed(meaning, shown, METRIC)).as("left as it was").isEqualTo(shot);
            TypedShot other = TypedShot.EMPTY.typed(meaning, shown, METRIC);
            assertThat(other.unread()).isEmpty();
            assertThat(other.text(meaning, METRIC)).isEqualTo(shown);
        }
    }
}
