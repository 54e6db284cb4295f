package org.toeline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FaceAndPathTest {

    /** Reference: the share of 61 to 83 % towards the face (Proceedings 2018, 2(6), 249), by hand: 2° − 0.61·5°, 2° − 0.83·5°. */
    @Test
    void startsBetweenPathAndFace() {
        FaceAndPath sure = of(2, 0, -5, 0);
        assertThat(Math.toDegrees(sure.mostRad())).isCloseTo(-1.05, within(1e-9));
        assertThat(Math.toDegrees(sure.leastRad())).isCloseTo(-2.15, within(1e-9));
        assertThat(sure.bend()).isEqualTo(FaceAndPath.Bend.RIGHT);
        assertThat(of(2, 0, 5, 0).bend()).isEqualTo(FaceAndPath.Bend.LEFT);
    }

    /** What is not known of path and face widens the start, and a bend is only said where the whole interval lies on a side. */
    @Test
    void whatIsNotKnownIsAllowedFor() {
        FaceAndPath vague = of(2, 0.3, -5, 0.4 / 0.83);
        assertThat(Math.toDegrees(vague.mostRad())).isCloseTo(-1.05 + 0.5, within(1e-9));
        assertThat(Math.toDegrees(vague.leastRad())).isCloseTo(-2.15 - 0.5, within(1e-9));
        assertThat(of(2, 0, -5, 6).bend()).isEqualTo(FaceAndPath.Bend.UNCLEAR);
    }

    private static FaceAndPath of(double pathDeg, double pathHalfDeg, double faceDeg, double faceHalfDeg) {
        return FaceAndPath.of(
                new FaceAndPath.Known(Math.toRadians(pathDeg), Math.toRadians(pathHalfDeg)),
                new FaceAndPath.Known(Math.toRadians(faceDeg), Math.toRadians(faceHalfDeg)));
    }

    /** Every model's best launch is within its own window; a faster ball carries farther, from a lower angle or the same. */
    @Test
    void theWindowHoldsTheBestAndGoesWithTheSpeed() {
        LaunchWindow slow = LaunchWindow.of(50, Air.USUAL);
        LaunchWindow fast = LaunchWindow.of(75, Air.USUAL);
        assertThat(slow.models()).hasSameSizeAs(FlightBand.MODELS);
        for (int i = 0; i < slow.models().size(); i++) {
            LaunchWindow.OfModel a = slow.models().get(i);
            LaunchWindow.OfModel b = fast.models().get(i);
            assertThat(a.bestDeg()).isBetween(a.leastDeg(), a.mostDeg());
            assertThat(a.bestRpm()).isBetween(a.leastRpm(), a.mostRpm());
            assertThat(b.carryM()).isGreaterThan(1.2 * a.carryM());
            double flown = new Trajectory(Air.USUAL, FlightBand.MODELS.get(i))
                    .land(Launch.straight(50, a.bestDeg(), a.bestRpm()))
                    .carryM();
            assertThat(flown).isCloseTo(a.carryM(), within(1e-9));
        }
    }
}
