package org.toeline.desk.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;

/** Typing without a toolkit: what is kept, what is only shown, what is undone, and that nothing typed is lost. */
class ShotsModelTest {

    private static final double EXACT = 1e-9;

    private final List<List<Shot>> kept = new ArrayList<>();
    private final ShotsModel model = new ShotsModel(kept::add);

    private double figure(int row, ShotFigure figure) {
        return figure.shownUnit()
                .fromInside(model.row(row).shot().figure(figure).orElseThrow());
    }

    @Test
    void whatIsFinishedIsKeptAndWhatIsBeingTypedIsOnlyShown() {
        model.typing(0, Meaning.BALL_SPEED, "6");
        model.typing(0, Meaning.BALL_SPEED, "65");
        assertThat(figure(0, ShotFigure.BALL_SPEED)).isEqualTo(65);
        assertThat(kept).isEmpty();
        model.type(0, Meaning.BALL_SPEED, "65.4");
        assertThat(kept).hasSize(1);
        assertThat(kept.get(0)).isEqualTo(List.of(new Shot(Map.of(ShotFigure.BALL_SPEED, 65.4))));
        model.type(0, Meaning.BALL_SPEED, "65.4");
        assertThat(kept).as("the same again is no change").hasSize(1);
    }

    @Test
    void undoneAndDoneAgain() {
        model.type(0, Meaning.BALL_SPEED, "65");
        model.type(1, Meaning.BALL_SPEED, "66");
        model.remove(0);
        assertThat(model.rows()).hasSize(1);
        model.undo();
        model.undo();
        assertThat(model.rows()).hasSize(1);
        assertThat(figure(0, ShotFigure.BALL_SPEED)).isEqualTo(65);
        model.redo();
        assertThat(figure(1, ShotFigure.BALL_SPEED)).isEqualTo(66);
        assertThat(kept.get(kept.size() - 1)).hasSize(2);
        model.undo();
        model.undo();
        assertThat(model.rows()).isEmpty();
        assertThat(model.canUndo()).isFalse();
    }

    @Test
    void whatCannotBeReadStaysInItsCellAndInTheLedger() {
        model.type(0, Meaning.BALL_SPEED, "65");
        model.type(0, Meaning.LAUNCH_ANGLE, "1x2]");
        TypedShot row = model.row(0);
        assertThat(row.text(Meaning.LAUNCH_ANGLE, ShotUnits.METRIC)).isEqualTo("1x2]");
        assertThat(row.fault(Meaning.LAUNCH_ANGLE, FigureUnit.DEGREE).orElseThrow())
                .contains("is not a number");
        Shot inLedger = kept.get(kept.size() - 1).get(0);
        assertThat(inLedger.remark()).isEqualTo("[launch-angle? 1x2)]");
        model.load(ShotsModel.rowsOf(List.of(inLedger)));
        assertThat(model.row(0).text(Meaning.LAUNCH_ANGLE, ShotUnits.METRIC)).isEqualTo("1x2)");
        assertThat(model.row(0).shot().remark()).isEmpty();
        model.type(0, Meaning.LAUNCH_ANGLE, "12");
        assertThat(model.row(0).kept().remark()).isEmpty();
    }

    @Test
    void remarksInBracketsThatNobodyTypedStay() {
        Shot shot = new Shot(Map.of(ShotFigure.CARRY, 200.0), "driver [new? yes] [apex? 3x]");
        assertThat(TypedShot.of(shot).shot().remark()).isEqualTo("driver [new? yes]");
        assertThat(TypedShot.of(shot).kept()).isEqualTo(shot);
    }

    /** 3000 back and 400 side to the right: rate 3026.55, axis 7.5946° (Pythagoras; atan(400/3000)). */
    @Test
    void backAndSideSpinAreRateAndAxis() {
        model.type(0, Meaning.SIDE_SPIN, "400R");
        assertThat(model.row(0)
                        .fault(Meaning.SIDE_SPIN, FigureUnit.TURNS_PER_MINUTE)
                        .orElseThrow())
                .contains("back spin");
        model.type(0, Meaning.BACK_SPIN, "3000");
        assertThat(model.row(0).unread()).isEmpty();
        assertThat(figure(0, ShotFigure.SPIN_RATE)).isCloseTo(3026.549, within(1e-3));
        assertThat(figure(0, ShotFigure.SPIN_AXIS)).isCloseTo(-7.59464, within(1e-5));
        assertThat(model.row(0).text(Meaning.SIDE_SPIN, ShotUnits.METRIC)).isEqualTo("400 R");
        model.type(0, Meaning.SIDE_SPIN, "");
        assertThat(figure(0, ShotFigure.SPIN_RATE)).isCloseTo(3000, within(EXACT));
        assertThat(model.row(0).shot().figure(ShotFigure.SPIN_AXIS)).isEmpty();
        model.type(0, Meaning.BACK_SPIN, "");
        assertThat(model.row(0).blank()).isTrue();
    }

    @Test
    void unitsChangeWhatIsReadNotWhatIsKept() {
        model.useUnits(new ShotUnits(FigureUnit.MILES_PER_HOUR, FigureUnit.YARD, FigureUnit.FOOT));
        model.type(0, Meaning.BALL_SPEED, "147.33");
        double before = figure(0, ShotFigure.BALL_SPEED);
        assertThat(before).isCloseTo(147.33 * 0.44704, within(EXACT));
        model.type(0, Meaning.BALL_SPEED, model.row(0).text(Meaning.BALL_SPEED, model.units()));
        assertThat(figure(0, ShotFigure.BALL_SPEED))
                .as("what is shown rounded and not changed stays exact")
                .isEqualTo(before);
        model.useUnits(ShotUnits.METRIC);
        assertThat(model.row(0).text(Meaning.BALL_SPEED, model.units())).isEqualTo("65.9");
        assertThat(kept).hasSize(1);
    }

    @Test
    void shotsThatLookLikeOneThereAlreadyAreKeptAndCounted() {
        Shot one = new Shot(Map.of(ShotFigure.CARRY, 200.0));
        Shot two = new Shot(Map.of(ShotFigure.CARRY, 210.0));
        assertThat(ShotsModel.alike(model.rows(), ShotsModel.rowsOf(List.of(one))))
                .isZero();
        model.add(ShotsModel.rowsOf(List.of(one)));
        assertThat(ShotsModel.alike(model.rows(), ShotsModel.rowsOf(List.of(one, two))))
                .isEqualTo(1);
        model.add(ShotsModel.rowsOf(List.of(one, two)));
        assertThat(model.rows()).hasSize(3);
        model.undo();
        assertThat(model.rows()).hasSize(1);
    }

    @Test
    void figuresWithSidesAndUnits() {
        ShotUnits yards = new ShotUnits(FigureUnit.MILES_PER_HOUR, FigureUnit.YARD, FigureUnit.FOOT);
        assertThat(yards.figure(ShotFigure.SIDE, -9.144)).isEqualTo("10.0 yd R");
        assertThat(yards.figure(ShotFigure.APEX, 30.48)).isEqualTo("100.0 ft");
        assertThat(yards.change(ShotFigure.CARRY, -9.144)).isEqualTo("−10.0");
        assertThat(yards.change(ShotFigure.CARRY, 9.144)).isEqualTo("+10.0");
        assertThat(new Conditions(20, Conditions.From.ALTITUDE, 0, 50, 1, 2)
                        .air()
                        .windHMps())
                .as("wind from the left blows to the right")
                .isEqualTo(-2);
    }

    /** A shot put aside stays, is kept with its reason, and can count again; equal shots taken in are all kept. */
    @Test
    void putsAsideAndBackAndKeepsEqualShots() {
        List<List<Shot>> kept = new java.util.ArrayList<>();
        ShotsModel model = new ShotsModel(kept::add);
        Shot shot = new Shot(java.util.Map.of(ShotFigure.CARRY, 200.0));
        assertThat(ShotsModel.alike(model.rows(), ShotsModel.rowsOf(List.of(shot, shot, shot))))
                .isZero();
        model.add(ShotsModel.rowsOf(List.of(shot, shot, shot)));
        assertThat(model.rows()).hasSize(3);
        assertThat(ShotsModel.alike(model.rows(), ShotsModel.rowsOf(List.of(shot))))
                .isEqualTo(1);
        model.add(ShotsModel.rowsOf(List.of(shot)));
        assertThat(model.rows()).hasSize(4);
        model.putAside(1, "a mishit");
        assertThat(kept.get(kept.size() - 1).get(1).aside()).isEqualTo("a mishit");
        assertThat(kept.get(kept.size() - 1).get(1).figures()).isEqualTo(shot.figures());
        model.undo();
        assertThat(model.row(1).shot().aside()).isEmpty();
        model.redo();
        model.putAside(1, "");
        assertThat(model.row(1).shot()).isEqualTo(shot);
    }

    /** What the coach put aside and what no flight could give counts in no middle. */
    @Test
    void whatDoesNotCountIsInNoMiddle() {
        Shot usual = new Shot(java.util.Map.of(ShotFigure.BALL_SPEED, 60.0, ShotFigure.CARRY, 200.0));
        Shot impossible = usual.with(ShotFigure.CARRY, 900);
        List<Shot> shots =
                List.of(usual, usual, usual.with(ShotFigure.CARRY, 100).withAside("a mishit"), impossible);
        Reckoned reckoned = Reckoned.of(
                new Reckoned.Asked("own", shots),
                new Reckoned.Against.Nothing(),
                new org.toeline.flight.RememberedFlights(org.toeline.flight.Air.USUAL),
                new Watch(4));
        assertThat(reckoned.impossible()).isEqualTo(1);
        var carry = reckoned.compared().setups().get(0).middle(ShotFigure.CARRY).orElseThrow();
        assertThat(carry.count()).isEqualTo(2);
        assertThat(carry.centre()).isEqualTo(200.0);
    }
}
