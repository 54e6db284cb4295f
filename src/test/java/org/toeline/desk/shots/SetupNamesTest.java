package org.toeline.desk.shots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;

/** Setups by their names, whatever a table calls them, and shots of several of them that are taken together. */
class SetupNamesTest {

    @ParameterizedTest
    @CsvSource({
        "B, Setup B",
        "12, Setup 12",
        "ball forward, ball forward",
        "'chest \"up\" {0}', 'chest \"up\" {0}'",
        "'two\nlines', two lines",
        "'turned\u202Eround', turned round",
        "כדור קדימה, כדור קדימה"
    })
    void areShownOnOneLine(String label, String shown) {
        assertThat(LessonNames.setup(label)).isEqualTo(shown);
    }

    /** Names that begin alike are told apart by their ends; characters of two units are not cut in two. */
    @Test
    void longOnesAreShownByBeginningAndEnd() {
        String name = "ball one width farther forward ".repeat(10);
        assertThat(LessonNames.setup(name + "left")).isEqualTo("ball one width fart…rward left");
        assertThat(LessonNames.setup(name + "right")).isNotEqualTo(LessonNames.setup(name + "left"));
        String wide = LessonNames.setup("\uD83C\uDFCC".repeat(300));
        assertThat(wide.codePoints()).hasSize(30).allMatch(c -> c == 0x1F3CC || c == '…');
        assertThat(LessonNames.setup("x".repeat(30))).hasSize(30);
    }

    /** A lesson of several setups beside another one: all its shots are taken together, and counted as so many. */
    @Test
    void areCountedWhereTheyAreTakenTogether() {
        List<Shot> both = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            Shot shot = new Shot(Map.of(ShotFigure.CARRY, 200.0 + i % 5));
            both.add(i == 11 ? shot.withSetup("C").withAside("slipped") : shot.withSetup(i % 2 == 0 ? "A" : "B"));
        }
        List<Shot> plain = both.stream().map(s -> s.withSetup("")).toList();
        Reckoned reckoned = Reckoned.of(
                new Reckoned.Asked("this lesson", both),
                new Reckoned.Against.Lesson(new Reckoned.Asked("another", plain), Reckoned.Order.OTHER_FIRST),
                new RememberedFlights(Conditions.USUAL.air()),
                new Watch(both.size()));
        assertThat(reckoned.compared().setups())
                .extracting(ComparedSetups.Setup::kinds)
                .as("what is put aside is of no setup")
                .containsExactly(Set.of(""), Set.of("A", "B"));
        assertThat(lesson(both).ofSeveralSetups()).isTrue();
        assertThat(lesson(plain).ofSeveralSetups()).isFalse();
        assertThat(lesson(List.of()).ofSeveralSetups()).isFalse();
    }

    private static PlayersShots.OfLesson lesson(List<Shot> shots) {
        return new PlayersShots.OfLesson(1, Optional.empty(), Club.DRIVER, Handedness.RIGHT, "", shots, List.of());
    }
}
