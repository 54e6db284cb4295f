package org.toeline.posture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.GolfBall;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;

/** What the estimator takes for usual, against the limits of the Equipment Rules (R&A and USGA). */
class EquipmentRulesTest {

    /** Part 4: a ball is at least 42.67 mm across; the prior leans above that. */
    @Test
    void theBallIsNotTooSmall() {
        assertThat(GolfBall.USUAL_DIAMETER_M).isBetween(0.04267, 0.0430);
    }

    /** Part 6: a tee is at most 101.6 mm; the prior holds that to be out of reach (over 2.5 standard deviations). */
    @Test
    void theTeeIsNotTooLong() {
        for (Club club : Club.values()) {
            ClubStance stance = ClubStance.of(club);
            assertThat(stance.teed() + 2.5 * stance.teedSigma()).isLessThan(0.1016);
        }
    }

    /** Part 2: clubs are 457 to 1219 mm long. */
    @Test
    void clubsAreAllowed() {
        for (Club club : Club.values()) {
            assertThat(ClubStance.of(club).clubLength()).isBetween(0.457, 1.219);
        }
    }

    /** Clubhead dimensions 4b(i): sole to crown at most 71.12 mm. */
    @Test
    void theDriversCrownIsNotTooHigh() {
        Population drivers = Population.with(Club.DRIVER);
        assertThat(drivers.mean(Landmark.CROWN, 2)).isBetween(0.045, 0.07112);
    }

    /** ANSUR II, both sexes alike often: biacromial breadth 0.366 to 0.416 m on average, before clothing. */
    @Test
    void shouldersAreAsWideAsPeoples() {
        SplittableRandom random = new SplittableRandom(4);
        double sum = 0;
        int n = 2000;
        for (int i = 0; i < n; i++) {
            DrawnPlayer player = new DrawnPlayer(Club.MID_IRON, random);
            double[] a = player.at(Landmark.LEAD_SHOULDER);
            double[] b = player.at(Landmark.TRAIL_SHOULDER);
            sum += Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
        }
        assertThat(sum / n).isBetween(0.366, 0.416);
    }
}
