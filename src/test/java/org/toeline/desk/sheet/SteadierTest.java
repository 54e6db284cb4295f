package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Words;
import org.toeline.assist.Track;
import org.toeline.assist.Track.Outcome;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;

/** What is said of marks that were followed. */
class SteadierTest {

    private static final ImagePoint AT = new ImagePoint(100, 100);

    private static Mark mark(Landmark landmark) {
        return Mark.placed(landmark, AT, 2);
    }

    private static Track track(Outcome outcome, double swayPx) {
        return new Track(AT, outcome, List.of(new Track.Step(1, AT), new Track.Step(1.1, AT.plus(swayPx, 0))), 0);
    }

    @Test
    void namesWhatDriftedAndWhatSwayedMost() {
        String said = Steadier.sentence(
                List.of(
                        mark(Landmark.LEAD_HIP),
                        mark(Landmark.NECK),
                        mark(Landmark.LEAD_WRIST),
                        mark(Landmark.TRAIL_TOE)),
                List.of(
                        track(Outcome.NOTHING_TO_HOLD, 0),
                        track(Outcome.HELD, 0.2),
                        track(Outcome.HELD, 2),
                        track(Outcome.LOST, 0)),
                Words.english());
        assertThat(said)
                .startsWith("2 of 4 marks")
                .contains("Most at the lead wrist, 1.4 px")
                .contains("lead hip (nothing there to hold on to), trail toe (hidden or changed)");
    }
}
