package org.toeline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The rough run keeps to what everyone knows of balls on turf; more it does not claim. */
class RoughRunTest {

    private static RoughRun run(double speedMps, double angleDeg, double rpm) {
        return RoughRun.after(
                new Trajectory(Air.USUAL, SmitsSmith.WITH_REYNOLDS_TERM).fly(Launch.straight(speedMps, angleDeg, rpm)));
    }

    /** Common practice: a drive runs some 10 to 50 m, a full wedge hardly at all. */
    @Test
    void drivesRunAndWedgesStop() {
        RoughRun drive = run(67, 12, 2600);
        RoughRun wedge = run(45, 28, 9500);
        assertThat(drive.softM()).isBetween(5.0, 40.0);
        assertThat(drive.firmM()).isBetween(15.0, 70.0);
        assertThat(wedge.firmM()).isLessThan(15);
        assertThat(wedge.softM()).isBetween(-10.0, 8.0);
    }

    @Test
    void firmTurfRunsFartherAndBackSpinShorter() {
        for (double angle = 8; angle <= 20; angle += 2) {
            RoughRun little = run(65, angle, 2000);
            assertThat(little.firmM()).isGreaterThan(little.softM());
            assertThat(run(65, angle, 5000).firmM()).isLessThan(little.firmM());
        }
    }
}
