package org.toeline.desk.shots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;

/** What stands in the columns that nobody types into. */
class ShotColumnsTest {

    /** A side of 0.0 would say that the ball flew straight. */
    @Test
    void theSideIsEmptyWhereNothingTellsIt() {
        Shot launched = new Shot(
                Map.of(ShotFigure.BALL_SPEED, 65.0, ShotFigure.LAUNCH_ANGLE, 0.22, ShotFigure.SPIN_RATE, 270.0));
        Shot started = launched.with(ShotFigure.LAUNCH_DIRECTION, 0.03);
        List<Shot> shots = List.of(launched, started, started.with(ShotFigure.SPIN_AXIS, 0.1));
        ShotsModel model = new ShotsModel(kept -> {});
        model.load(ShotsModel.rowsOf(shots));
        Reckoned reckoned = Reckoned.of(
                new Reckoned.Asked("this lesson", shots),
                new Reckoned.Against.Nothing(),
                new RememberedFlights(Conditions.USUAL.air()),
                new Watch(shots.size()));
        ShotColumns columns = new ShotColumns(model, () -> reckoned);
        assertThat(of(columns, Meaning.SIDE, 0)).isEmpty();
        assertThat(of(columns, Meaning.SIDE, 1)).isEmpty();
        assertThat(of(columns, Meaning.SIDE, 2)).isNotEmpty();
        assertThat(of(columns, Meaning.CARRY, 0)).isNotEmpty();
        assertThat(of(columns, Meaning.CARRY, 1)).isNotEmpty();
    }

    private static String of(ShotColumns columns, Meaning meaning, int row) {
        return columns.columns(meaning).get(0).text().apply(row);
    }
}
