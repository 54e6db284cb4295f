package org.toeline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

class FaceAndPathTest {

    /** Reference: the share of 61 to 83 % towards the face (Proceedings 2018, 2(6), 249), by hand: 2° + 0.61·(−5°), 2° − 0.83·5°. */
    @Test
    void startsBetweenPathAndFace() {
        FaceAndPath both = FaceAndPath.of(new Shot(
                        Map.of(ShotFigure.CLUB_PATH, Math.toRadians(2), ShotFigure.FACE_TO_PATH, Math.toRadians(-5))))
                .orElseThrow();
        assertThat(Math.toDegrees(both.mostRad())).isCloseTo(-1.05, within(1e-9));
        assertThat(Math.toDegrees(both.leastRad())).isCloseTo(-2.15, within(1e-9));
        assertThat(both.bendRad()).isNegative();
        assertThat(FaceAndPath.of(new Shot(Map.of(ShotFigure.CLUB_PATH, 0.1)))).isEmpty();
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
