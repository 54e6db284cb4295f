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

/** Of many shots some are drawn: every one that has a curve, and from all over them. */
class ManyInThePictureTest {

    @Test
    void everyCurveOfManyShotsIsDrawn() {
        for (int count : new int[] {100, 1000, 2000, 5000}) {
            Reckoned reckoned = Reckoned.of(
                    new Reckoned.Asked("this lesson", shots(count)),
                    new Reckoned.Against.Nothing(),
                    new RememberedFlights(Conditions.USUAL.air()),
                    new Watch(count));
            long drawn = new PictureOfSetups(reckoned.compared(), ShotSettings.USUAL)
                    .onScreen(-1).setups().get(0).shots().stream()
                            .filter(t -> t.computed().isPresent())
                            .count();
            assertThat(drawn).as("curves of " + count + " shots").isGreaterThanOrEqualTo(100);
        }
    }

    private static List<Shot> shots(int count) {
        SplittableRandom random = new SplittableRandom(5);
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            shots.add(new Shot(Map.of(
                    ShotFigure.BALL_SPEED, random.nextDouble(60, 70),
                    ShotFigure.LAUNCH_ANGLE, Math.toRadians(random.nextDouble(9, 16)),
                    ShotFigure.SPIN_RATE, random.nextDouble(250, 330))));
        }
        return shots;
    }
}
