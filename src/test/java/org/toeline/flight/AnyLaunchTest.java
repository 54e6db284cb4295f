package org.toeline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Any launch that is allowed makes a flight that ends on the ground, by any model and in any weather. */
class AnyLaunchTest {

    private final SplittableRandom random = new SplittableRandom(71);

    private double upTo(double most) {
        // Ends of the range as often as the middle.
        return switch (random.nextInt(4)) {
            case 0 -> most * 1e-4 * random.nextDouble();
            case 1 -> most * (1 - 1e-4 * random.nextDouble());
            default -> most * random.nextDouble();
        };
    }

    @Test
    void everyFlightEndsOnTheGround() {
        for (int i = 0; i < 700; i++) {
            Launch launch = new Launch(
                    Math.max(0.01, upTo(120)),
                    Math.max(1e-4, upTo(Math.PI / 2 - 1e-6)),
                    random.nextDouble(-1.5, 1.5),
                    upTo(2000),
                    random.nextDouble(-Math.PI / 2, Math.PI / 2));
            Air air = Air.of(random.nextDouble(-30, 50), random.nextDouble(50_000, 110_000), random.nextDouble())
                    .withWind(random.nextDouble(-28, 28), random.nextDouble(-28, 28));
            Flight flight = new Trajectory(air, FlightBand.MODELS.get(i % FlightBand.MODELS.size())).fly(launch);
            assertThat(flight.landing().place().u()).as(launch + " " + air).isCloseTo(0, within(1e-6));
            assertThat(flight.hangTimeS()).as(launch + " " + air).isPositive().isLessThan(Trajectory.LONGEST_S);
            assertThat(flight.apexM()).isGreaterThanOrEqualTo(0);
            assertThat(flight.descentRad()).isBetween(0.0, Math.PI / 2);
            assertThat(flight.points())
                    .allSatisfy(p -> assertThat(p.place().u()).isLessThanOrEqualTo(flight.apexM() + 1e-6));
        }
    }

    @Test
    void whatMakesNoFlightIsRefusedOrAbsent() {
        assertThatThrownBy(() -> Launch.straight(70, -3, 2500)).hasMessageContaining("(0, π/2)");
        assertThatThrownBy(() -> Launch.straight(700, 12, 2500)).hasMessageContaining("120");
        Shot topped = new Shot(
                Map.of(ShotFigure.BALL_SPEED, 40.0, ShotFigure.LAUNCH_ANGLE, -0.05, ShotFigure.SPIN_RATE, 100.0));
        assertThat(topped.launch()).isEmpty();
        assertThat(topped.with(ShotFigure.LAUNCH_ANGLE, 0.2).launch()).isPresent();
        assertThat(new Shot(Map.of(ShotFigure.BALL_SPEED, 40.0, ShotFigure.LAUNCH_ANGLE, 0.2)).launch())
                .isEmpty();
        assertThatThrownBy(() -> new Shot(Map.of(ShotFigure.SPIN_RATE, -1.0))).hasMessageContaining("zero or more");
        assertThatThrownBy(() -> new Shot(Map.of(ShotFigure.CARRY, Double.NaN))).hasMessageContaining("carry");
    }

    @Test
    void aMirrorTurnsWhatHasSides() {
        Shot shot =
                new Shot(Map.of(ShotFigure.CARRY, 200.0, ShotFigure.SIDE, 7.0, ShotFigure.SPIN_AXIS, -0.1), "driver");
        assertThat(shot.mirrored())
                .isEqualTo(new Shot(
                        Map.of(ShotFigure.CARRY, 200.0, ShotFigure.SIDE, -7.0, ShotFigure.SPIN_AXIS, 0.1), "driver"));
        assertThat(shot.mirrored().mirrored()).isEqualTo(shot);
    }

    /** Computed figures fill in what nobody measured, and never stand beside measured ones of the same kind. */
    @Test
    void computedAndMeasuredAreNotMixed() {
        Shot launched = new Shot(
                Map.of(ShotFigure.BALL_SPEED, 65.0, ShotFigure.LAUNCH_ANGLE, 0.22, ShotFigure.SPIN_RATE, 270.0));
        Shot measured = launched.with(ShotFigure.CARRY, 215);
        Trajectory trajectory = new Trajectory(Air.USUAL, SmitsSmith.WITH_REYNOLDS_TERM);
        ComputedFigures filled = ComputedFigures.of(List.of(launched, measured), trajectory);
        assertThat(filled.computed())
                .isEqualTo(Set.of(ShotFigure.APEX, ShotFigure.DESCENT_ANGLE, ShotFigure.HANG_TIME));
        assertThat(filled.shots().get(0).figure(ShotFigure.CARRY)).isEmpty();
        assertThat(filled.shots().get(0).figure(ShotFigure.APEX).getAsDouble())
                .isCloseTo(trajectory.fly(launched.launch().orElseThrow()).apexM(), within(1e-9));
        assertThat(filled.model()).isEqualTo("Smits & Smith 1994");
    }

    /** Where a ball went sideways follows from its start line and the tilt of its axis: without one of them a side is a supposition. */
    @Test
    void aSideIsComputedOnlyOfShotsThatTellIt() {
        Shot launched = new Shot(
                Map.of(ShotFigure.BALL_SPEED, 65.0, ShotFigure.LAUNCH_ANGLE, 0.22, ShotFigure.SPIN_RATE, 270.0));
        Shot started = launched.with(ShotFigure.LAUNCH_DIRECTION, 0.03);
        Shot all = started.with(ShotFigure.SPIN_AXIS, 0.1);
        Trajectory trajectory = new Trajectory(Air.USUAL, SmitsSmith.WITH_REYNOLDS_TERM);
        assertThat(ComputedFigures.of(List.of(launched, started), trajectory).computed())
                .contains(ShotFigure.CARRY)
                .doesNotContain(ShotFigure.SIDE);
        ComputedFigures beside = ComputedFigures.of(List.of(launched, started, all), trajectory);
        assertThat(beside.computed()).contains(ShotFigure.SIDE);
        assertThat(beside.shots())
                .extracting(s -> s.figure(ShotFigure.SIDE).isPresent())
                .containsExactly(false, false, true);
        assertThat(beside.shots()).allMatch(s -> s.figure(ShotFigure.CARRY).isPresent());
    }
}
