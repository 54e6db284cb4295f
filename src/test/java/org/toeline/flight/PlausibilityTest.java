package org.toeline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Implausible.Grade;

/** What no flight could give is flagged with the likely reason; what a flight gives is not. */
class PlausibilityTest {

    private final Plausibility plausibility = new Plausibility(Air.USUAL);

    /** A drive in m/s, degrees, turns a minute; carry and apex in metres; seconds. */
    private static Shot drive(double speed, double launch, double spin, double carry, double apex) {
        Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
        figures.put(ShotFigure.BALL_SPEED, speed);
        figures.put(ShotFigure.LAUNCH_ANGLE, Math.toRadians(launch));
        figures.put(ShotFigure.SPIN_RATE, FigureUnit.TURNS_PER_MINUTE.toInside(spin));
        figures.put(ShotFigure.CARRY, carry);
        figures.put(ShotFigure.APEX, apex);
        return new Shot(figures);
    }

    /** Common practice: 147 mph, 13°, 2600 turns a minute: some 245 yd and 90 ft. */
    private static final Shot USUAL = drive(65.7, 13, 2600, 224, 27.4);

    @Test
    void aUsualDriveIsNotFlaggedThoughItCarriesPastItsVacuumRange() {
        double vacuumRange = 65.7 * 65.7 * Math.sin(Math.toRadians(26)) / Trajectory.GRAVITY;
        assertThat(USUAL.figure(ShotFigure.CARRY).getAsDouble()).isGreaterThan(vacuumRange);
        assertThat(plausibility.check(USUAL)).isEmpty();
    }

    @Test
    void milesReadAsMetresASecond() {
        assertThat(only(USUAL.with(ShotFigure.BALL_SPEED, 147)).reason())
                .contains("147.0 m/s")
                .contains("mph read as m/s (65.7 m/s would fit)");
        assertThat(only(USUAL.with(ShotFigure.BALL_SPEED, 236)).reason()).contains("km/h read as m/s (65.6 m/s");
    }

    /** The most a head of 0.2 kg can give with restitution 0.83: 1.49 times its own speed (momentum; common practice). */
    @Test
    void aBallIsNotMuchFasterThanTheClub() {
        assertThat(plausibility.check(USUAL.with(ShotFigure.CLUB_SPEED, 65.7 / 1.48)))
                .isEmpty();
        Implausible flag = only(USUAL.with(ShotFigure.CLUB_SPEED, 65.7 / 1.7));
        assertThat(flag.figure()).isEqualTo(ShotFigure.BALL_SPEED);
        assertThat(flag.reason()).contains("faster than a ball leaves a club of 38.6 m/s");
    }

    @Test
    void flightsThatAreRememberedSayTheSame() {
        Plausibility remembering = new Plausibility(new RememberedFlights(Air.USUAL));
        for (double carry : new double[] {90, 224, 290}) {
            Shot shot = USUAL.with(ShotFigure.CARRY, carry);
            assertThat(remembering.check(shot)).isEqualTo(plausibility.check(shot));
            assertThat(remembering.check(shot)).as("asked again").isEqualTo(plausibility.check(shot));
        }
    }

    @Test
    void feetReadAsMetres() {
        Implausible flag = only(USUAL.with(ShotFigure.APEX, 88));
        assertThat(flag.figure()).isEqualTo(ShotFigure.APEX);
        assertThat(flag.reason()).contains("feet read as metres (26.8 m would fit)");
        assertThat(only(USUAL.with(ShotFigure.APEX, 70)).reason()).contains("feet read as metres");
    }

    @Test
    void carryBeyondTheLongestVacuumRangeIsImpossible() {
        Shot slow = drive(40, 20, 6000, 170, 20);
        Implausible flag = only(slow);
        assertThat(flag.grade()).isEqualTo(Grade.IMPOSSIBLE);
        assertThat(flag.figure()).isEqualTo(ShotFigure.CARRY);
        assertThat(flag.reason()).contains("without any air, 163.1 m");
    }

    @Test
    void apexAboveTheVacuumIsImpossible() {
        Implausible flag = only(drive(30, 30, 6000, 70, 50));
        assertThat(flag.grade()).isEqualTo(Grade.IMPOSSIBLE);
        assertThat(flag.figure()).isEqualTo(ShotFigure.APEX);
        assertThat(flag.reason()).contains("straight up").contains("45.9 m");
    }

    @Test
    void spinOutOfRange() {
        assertThat(only(USUAL.with(ShotFigure.SPIN_RATE, FigureUnit.TURNS_PER_MINUTE.toInside(26_000)))
                        .reason())
                .contains("26000 rpm")
                .contains("14000 rpm");
        assertThat(only(USUAL.with(ShotFigure.LAUNCH_ANGLE, 13)).reason()).contains("744.8 °");
    }

    @Test
    void timesThatCannotBe() {
        assertThat(plausibility.check(USUAL.with(ShotFigure.HANG_TIME, 1.9)))
                .extracting(Implausible::reason)
                .anyMatch(r -> r.contains("fall from in 1.9 s"))
                .anyMatch(r -> r.contains("the ball's first speed"));
        Shot low = drive(65.7, 13, 2600, 224, 10).with(ShotFigure.HANG_TIME, 3.0);
        assertThat(only(low).reason()).contains("3.0 s at the ball's first speed");
    }

    /** Yards read as metres are 9 % long: seen in several shots together, not in one. */
    @Test
    void yardsReadAsMetresShowInTheMiddleShot() {
        List<Shot> rightly = new ArrayList<>();
        List<Shot> wrongly = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 9; i++) {
            Shot shot = USUAL.with(ShotFigure.BALL_SPEED, 65.7 + random.nextGaussian());
            double carry = 224 + 3 * random.nextGaussian();
            rightly.add(shot.with(ShotFigure.CARRY, carry));
            wrongly.add(shot.with(ShotFigure.CARRY, FigureUnit.YARD.fromInside(carry)));
        }
        assertThat(plausibility.checkTogether(rightly)).isEmpty();
        assertThat(plausibility.checkTogether(wrongly).orElseThrow().reason()).contains("yards read as metres");
        assertThat(plausibility.checkTogether(wrongly.subList(0, 2))).isEmpty();
    }

    /** Property: what a model of flight gives is never flagged, over all that is hit with clubs, in a usual wind. */
    @Test
    void computedFlightsAreNeverFlagged() {
        SplittableRandom random = new SplittableRandom(17);
        for (int i = 0; i < 200; i++) {
            Aerodynamics model = FlightBand.MODELS.get(i % FlightBand.MODELS.size());
            double speed = random.nextDouble(25, 80);
            double loft = Math.min(45, random.nextDouble(0.7, 1.3) * (50 - 0.55 * speed));
            Launch launch = new Launch(
                    speed,
                    Math.toRadians(loft),
                    random.nextDouble(-0.1, 0.1),
                    FigureUnit.TURNS_PER_MINUTE.toInside(random.nextDouble(0.7, 1.3) * 220 * loft),
                    0);
            Air air = Air.USUAL.withWind(random.nextDouble(-3, 3), random.nextDouble(-3, 3));
            Flight flight = new Trajectory(air, model).fly(launch);
            Shot shot = drive(
                            speed,
                            loft,
                            FigureUnit.TURNS_PER_MINUTE.fromInside(launch.spinRadPerS()),
                            flight.carryM(),
                            flight.apexM())
                    .with(ShotFigure.HANG_TIME, flight.hangTimeS());
            assertThat(plausibility.check(shot)).as(launch + " " + model).isEmpty();
        }
    }

    private Implausible only(Shot shot) {
        List<Implausible> found = plausibility.check(shot);
        assertThat(found).hasSize(1);
        return found.get(0);
    }
}
