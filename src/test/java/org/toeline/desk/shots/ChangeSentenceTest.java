package org.toeline.desk.shots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.Estimate;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.State;

/** Among very many shots the least change is real: a player is told of those that are worth acting on. */
class ChangeSentenceTest {

    private static final double WORTH = ShotFigure.CARRY.worthwhile();

    private static Difference real(ShotFigure figure, double change, double worth) {
        return new Difference(
                figure,
                50_000,
                50_000,
                State.REAL,
                new Estimate(change, change * 0.9, change * 1.1, 0.001, 0),
                0,
                worth);
    }

    private static String told(Difference... differences) {
        return new ChangeSentence(ShotSettings.USUAL.units())
                .of(new SetupComparison(List.of(differences), List.of(), List.of()), Optional.of("ball forward"));
    }

    @Test
    void aChangeTooSmallToActOnIsNotTold() {
        Difference small = real(ShotFigure.CARRY, WORTH * 0.1, WORTH);
        Difference large = real(ShotFigure.SPIN_RATE, 60, 20);
        assertThat(small.words()).isEqualTo("real, but too small to act on");
        assertThat(large.words()).isEqualTo("real");
        assertThat(told(small)).isEqualTo("Nothing changed that would be worth acting on.");
        assertThat(told(small, large)).contains("rpm").doesNotContain("carr");
    }

    /** One that may be as large as what is acted on is told. */
    @Test
    void aChangeThatMayBeWorthItIsTold() {
        assertThat(told(real(ShotFigure.CARRY, WORTH * 0.95, WORTH))).contains("carr");
    }
}
