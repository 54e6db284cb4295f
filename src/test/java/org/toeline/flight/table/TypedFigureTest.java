package org.toeline.flight.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.flight.FigureUnit;

/** Cells as a coach types them, and the top of a table as a coach looks at it. */
class TypedFigureTest {

    private static double degrees(String text) {
        return Math.toDegrees(TypedFigure.of(text, Meaning.LAUNCH_DIRECTION, FigureUnit.DEGREE)
                .inside()
                .orElseThrow());
    }

    @Test
    void sidesAreLettersOrSigns() {
        assertThat(degrees("3.2R")).isCloseTo(-3.2, within(1e-12));
        assertThat(degrees("3,2 l")).isCloseTo(3.2, within(1e-12));
        assertThat(degrees("L 3.2")).isCloseTo(3.2, within(1e-12));
        assertThat(degrees("3.2")).as("a plus is to the right").isCloseTo(-3.2, within(1e-12));
        assertThat(degrees("-3.2")).isCloseTo(3.2, within(1e-12));
        assertThat(degrees("−3.2")).as("a minus sign").isCloseTo(3.2, within(1e-12));
        assertThat(degrees("–3,2")).as("a dash").isCloseTo(3.2, within(1e-12));
    }

    /** 147 mph are 65.714 88 m/s, 236 km/h 65.555 6 m/s (NIST SP 811). */
    @Test
    void aUnitInTheCellGoesBeforeTheChosenOne() {
        assertThat(TypedFigure.of("147", Meaning.BALL_SPEED, FigureUnit.MILES_PER_HOUR)
                        .inside()
                        .orElseThrow())
                .isCloseTo(65.71488, within(1e-9));
        assertThat(TypedFigure.of("236 km/h", Meaning.BALL_SPEED, FigureUnit.MILES_PER_HOUR)
                        .inside()
                        .orElseThrow())
                .isCloseTo(65.555556, within(1e-6));
    }

    @Test
    void whatIsNoFigureIsSaidWhy() {
        assertThat(TypedFigure.of("  ", Meaning.CARRY, FigureUnit.METRE))
                .isEqualTo(TypedFigure.of("–", Meaning.CARRY, FigureUnit.METRE));
        assertThat(TypedFigure.of(" ", Meaning.CARRY, FigureUnit.METRE).fault()).isEmpty();
        assertThat(TypedFigure.of("1x2", Meaning.CARRY, FigureUnit.METRE)
                        .fault()
                        .orElseThrow())
                .isEqualTo("“1x2” is not a number");
        assertThat(TypedFigure.of("12 L", Meaning.CARRY, FigureUnit.METRE)
                        .fault()
                        .orElseThrow())
                .contains("has none");
        assertThat(TypedFigure.of("-2500", Meaning.SPIN_RATE, FigureUnit.TURNS_PER_MINUTE)
                        .fault()
                        .orElseThrow())
                .contains("below zero");
    }

    @Test
    void theTopOfATable() {
        byte[] bytes = "from the bay\n\nBall Speed (mph);Who;Carry (yd)\n147,1;x;240\n\n148,2;y\n149;z;241\n150;z;243\n"
                .getBytes(StandardCharsets.UTF_8);
        Template template = Proposal.of(bytes, "proposed").template();
        TableLook look = TableLook.of(bytes, template, 2);
        assertThat(look.headings()).containsExactly("Ball Speed (mph)", "Who", "Carry (yd)");
        assertThat(look.rows()).containsExactly(List.of("147,1", "x", "240"), List.of("148,2", "y", ""));
        assertThat(look.has(template)).isTrue();
        assertThat(look.has(ShotExport.template())).isFalse();
        assertThat(TableLook.of(new byte[0], template, 2).has(template)).isFalse();
    }

    /** A driver's ball leaves at about 147 mph, an amateur's club comes at about 93 (common practice). */
    @Test
    void aBareSpeedIsSuggestedAsWhatItsFiguresCanBe() {
        assertThat(suggested("Speed (mph)", "148.2", "146.9", "151.0")).isEqualTo(Meaning.BALL_SPEED);
        assertThat(suggested("Speed", "148.2", "146.9", "151.0")).isEqualTo(Meaning.BALL_SPEED);
        assertThat(suggested("Speed (mph)", "93.1", "92.2", "94.8")).isEqualTo(Meaning.CLUB_SPEED);
    }

    private static Meaning suggested(String heading, String... figures) {
        StringBuilder table = new StringBuilder("Shot;" + heading + ";Carry (yd);Launch Angle (deg)\n");
        for (int i = 0; i < figures.length; i++) {
            table.append(i + 1)
                    .append(';')
                    .append(figures[i])
                    .append(";210.5;13.")
                    .append(i)
                    .append('\n');
        }
        return Proposal.of(table.toString().getBytes(StandardCharsets.UTF_8), "x").asked().stream()
                .filter(a -> a.heading().equals(heading))
                .flatMap(a -> a.perhaps().stream())
                .findFirst()
                .orElseThrow()
                .meaning();
    }
}
