package org.toeline.desk.shots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.State;

/** Shots of one lesson that say with which setup they were hit, compared in the order of the rows. */
class SetupsInTurnsTest {

    private static final int SHOTS = 40;

    /** A player who warms up from shot to shot, and nothing else: only who hits in turns is not misled. */
    @Test
    void warmingUpIsNoSetupWhereTheyAreHitInTurns() {
        List<Shot> drifting = drifting();
        Reckoned turns = reckoned(labelled(drifting, 5));
        assertThat(turns.compared().order().orElseThrow().runs()).isEqualTo(SHOTS / 5);
        assertThat(speed(turns).state()).isNotEqualTo(State.REAL);
        Reckoned blocks = reckoned(labelled(drifting, SHOTS / 2));
        assertThat(blocks.compared().order().orElseThrow().inTurns()).isFalse();
        double inTurns = Math.abs(speed(turns).estimate().orElseThrow().difference());
        double oneAfterTheOther =
                Math.abs(speed(blocks).estimate().orElseThrow().difference());
        assertThat(oneAfterTheOther).as("warming up counts as the setup's").isGreaterThan(3 * inTurns);
    }

    /** What does not count is in no run, what has no setup in neither, and every shot keeps the row it stands in. */
    @Test
    void everyShotKeepsItsRowAndItsPlaceInTheOrder() {
        List<Shot> shots = new ArrayList<>(labelled(drifting(), 5));
        shots.set(5, shots.get(5).withAside("a mishit"));
        shots.add(3, drifting().get(0));
        Reckoned reckoned = reckoned(shots);
        assertThat(reckoned.withNeither()).isEqualTo(1);
        ComparedSetups.Setup second = reckoned.compared().setups().get(1);
        assertThat(second.name()).isEqualTo("Setup B");
        assertThat(second.at(3)).isEmpty();
        assertThat(second.at(6).orElseThrow()).isZero();
        assertThat(second.counts().get(0)).isFalse();
        assertThat(second.counted()).isEqualTo(SHOTS / 2 - 1);
        assertThat(reckoned.compared().order().orElseThrow().shots())
                .extracting(s -> s.figure(ShotFigure.BALL_SPEED).orElseThrow())
                .containsExactlyElementsOf(shots.stream()
                        .filter(s -> !s.setup().isEmpty() && s.aside().isEmpty())
                        .map(s -> s.figure(ShotFigure.BALL_SPEED).orElseThrow())
                        .toList());
    }

    private static Difference speed(Reckoned reckoned) {
        return reckoned.compared().comparison().orElseThrow().differences().stream()
                .filter(d -> d.figure() == ShotFigure.BALL_SPEED)
                .findFirst()
                .orElseThrow();
    }

    private static Reckoned reckoned(List<Shot> shots) {
        return Reckoned.of(
                new Reckoned.Asked("this lesson", shots),
                new Reckoned.Against.Setups("A", "B"),
                new RememberedFlights(Conditions.USUAL.air()),
                new Watch(shots.size()));
    }

    private static List<Shot> drifting() {
        SplittableRandom random = new SplittableRandom(11);
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < SHOTS; i++) {
            shots.add(new Shot(Map.of(
                    ShotFigure.BALL_SPEED, 60 + 0.1 * i + random.nextDouble(-0.5, 0.5), ShotFigure.CARRY, 200.0 + i)));
        }
        return shots;
    }

    private static List<Shot> labelled(List<Shot> shots, int run) {
        List<Shot> all = new ArrayList<>();
        for (int i = 0; i < shots.size(); i++) {
            all.add(shots.get(i).withSetup(i / run % 2 == 0 ? "A" : "B"));
        }
        return all;
    }
}
