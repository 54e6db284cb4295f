package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.picture.Snap;
import org.toeline.desk.sheet.KeptClips;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** What a mouse places can be placed by keys, and what is beside the picture be reached, without a key going to the wrong place. */
class MarkedByKeysTest extends DrivenDesk {

    /** A key's step is a pixel, and the ball, rods and uprights are looked for where the cross stands. */
    private static final double NEAR_PX = 3;

    private MarkSheet sample;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    /** The face-on clip of a sample lesson, nothing marked on it. */
    private void openClip(FxRobot robot, FloorLayout floor) throws Exception {
        Path document = Path.of("sample-media", "before", "before.lesson.json").toAbsolutePath();
        Lesson lesson = LessonDocument.read(document);
        sample = lesson.sheet();
        ViewMarks face = lesson.sheet().view(View.FACE_ON).orElseThrow();
        MarkSheet empty = MarkSheet.empty(sample.handedness(), sample.club())
                .withFloor(floor)
                .withView(ViewMarks.empty(View.FACE_ON, face.widthPx(), face.heightPx()));
        robot.interact(() -> {
            model().open(KeptClips.absolute(lesson.withSheet(empty), Optional.of(document)), Optional.empty());
            sheet.clips().openAll();
            sheet.welcomed();
            picture.requestFocus();
        });
        until(() -> sheet.clips().frame(View.FACE_ON).isPresent()
                && picture.picture() != null
                && sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
    }

    private static void press(FxRobot robot, KeyCode... keys) {
        robot.push(keys);
    }

    /** From where the cross stands, by far, near and single steps. */
    private ImagePoint move(FxRobot robot, ImagePoint from, ImagePoint to) {
        double near = Math.rint(picture.picture().getHeight() / 72);
        double x = along(robot, to.xPx() - from.xPx(), near, KeyCode.RIGHT, KeyCode.LEFT);
        double y = along(robot, to.yPx() - from.yPx(), near, KeyCode.DOWN, KeyCode.UP);
        return from.plus(x, y);
    }

    private static double along(FxRobot robot, double px, double near, KeyCode on, KeyCode back) {
        double moved = 0;
        for (double step : new double[] {10 * near, near, 1}) {
            for (double left = px - moved; Math.abs(left) > step / 2; left = px - moved) {
                KeyCode key = left > 0 ? on : back;
                if (step == 1) {
                    robot.push(KeyCode.CONTROL, key);
                } else if (step == near) {
                    robot.push(key);
                } else {
                    robot.push(KeyCode.SHIFT, key);
                }
                moved += left > 0 ? step : -step;
            }
        }
        return moved;
    }

    private ImagePoint middle() {
        return new ImagePoint(
                picture.picture().getWidth() / 2, picture.picture().getHeight() / 2);
    }

    private ViewMarks marks() {
        return model().marks(View.FACE_ON).orElseThrow();
    }

    @Test
    void whatLiesOnTheGroundIsAnsweredByKeys(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        assertThat(model().selected()).contains(Item.GROUND);
        press(robot, KeyCode.ENTER);
        Node first = picture.getScene().getFocusOwner();
        assertThat(first.getId()).startsWith("ground-");
        while (!"ground-nothing".equals(picture.getScene().getFocusOwner().getId())) {
            press(robot, KeyCode.TAB);
            assertThat(picture.getScene().getFocusOwner().getId()).startsWith("ground-");
        }
        press(robot, KeyCode.ENTER);
        assertThat(model().selected()).contains(Item.BALL);
        assertThat(picture.isFocused()).as("the keys are the picture's again").isTrue();
    }

    @Test
    void ballRodsUprightsAndBodyArePlacedWithTheCross(FxRobot robot) throws Exception {
        openClip(
                robot,
                LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"))
                        .sheet()
                        .floor());
        ViewMarks aimed = sample.view(View.FACE_ON).orElseThrow();
        press(robot, KeyCode.ENTER);
        assertThat(picture.aim().isShown()).isTrue();
        ImagePoint at = middle();
        for (int rod = 0; rod < 2; rod++) {
            at = move(robot, at, aimed.floorMarks().get(2 * rod).at());
            press(robot, KeyCode.ENTER);
            at = move(robot, at, aimed.floorMarks().get(2 * rod + 1).at());
            press(robot, KeyCode.ENTER);
            int ends = 2 * rod + 2;
            until(() -> marks().floorMarks().size() == ends);
        }
        for (FloorMark end : marks().floorMarks()) {
            assertThat(end.at()
                            .distancePx(
                                    aimed.floorMark(end.pointId()).orElseThrow().at()))
                    .as(end.pointId())
                    .isLessThan(NEAR_PX);
        }
        BallMark ball = aimed.ball().orElseThrow();
        at = move(robot, at, ball.centre());
        press(robot, KeyCode.ENTER);
        until(() -> marks().ball().isPresent());
        assertThat(marks().ball().orElseThrow().centre().distancePx(ball.centre()))
                .isLessThan(NEAR_PX);
        ImagePoint shoulder = aimed.mark(Landmark.LEAD_SHOULDER).orElseThrow().at();
        at = move(robot, at, shoulder);
        press(robot, KeyCode.ENTER);
        assertThat(marks().mark(Landmark.LEAD_SHOULDER).orElseThrow().at().distancePx(shoulder))
                .isLessThan(1);
        robot.interact(() -> model().select(new Item.OfVertical(0)));
        VerticalMark post = aimed.verticals().get(0);
        at = move(robot, at, post.from());
        press(robot, KeyCode.ENTER);
        move(robot, at, post.to());
        press(robot, KeyCode.ENTER);
        until(() -> marks().verticals().size() == 1);
        assertThat(marks().verticals().get(0).from().distancePx(post.from())).isLessThan(2 * NEAR_PX);
        assertThat(marks().verticals().get(0).to().distancePx(post.to())).isLessThan(2 * NEAR_PX);
    }

    @Test
    void theBallsCircleIsDrawnByKeys(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        robot.interact(() -> model().select(Item.BALL));
        press(robot, KeyCode.ENTER);
        press(robot, KeyCode.CONTROL, KeyCode.ENTER);
        press(robot, KeyCode.RIGHT);
        press(robot, KeyCode.CONTROL, KeyCode.ENTER);
        double step = Math.rint(picture.picture().getHeight() / 72);
        until(() -> marks().ball().isPresent());
        assertThat(marks().ball().orElseThrow().diameterPx()).hasValue(step);
    }

    @Test
    void escapeDropsTheStrokeThenTheCrossAndTheArrowsMoveWhatWasPlaced(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        robot.interact(() -> model().select(new Item.OfVertical(0)));
        press(robot, KeyCode.ENTER);
        press(robot, KeyCode.ENTER);
        press(robot, KeyCode.ESCAPE);
        assertThat(picture.aim().isShown()).as("only the stroke is dropped").isTrue();
        robot.interact(() -> model().select(new Item.OfLandmark(Landmark.LEAD_SHOULDER)));
        press(robot, KeyCode.ENTER);
        ImagePoint placed = marks().mark(Landmark.LEAD_SHOULDER).orElseThrow().at();
        press(robot, KeyCode.ESCAPE);
        assertThat(picture.aim().isShown()).isFalse();
        press(robot, KeyCode.RIGHT);
        assertThat(marks().mark(Landmark.LEAD_SHOULDER).orElseThrow().at().distancePx(placed))
                .isEqualTo(0.25);
    }

    @Test
    void aChipThatWasReachedIsPressedAndOneThatWasClickedLeavesTheKeys(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        robot.interact(() -> model().select(Item.BALL));
        Node chip = robot.lookup("#item-upright-1").query();
        Set<Node> seen = new java.util.HashSet<>();
        while (picture.getScene().getFocusOwner() != chip) {
            assertThat(seen.add(picture.getScene().getFocusOwner()))
                    .as("every place once before the chip")
                    .isTrue();
            press(robot, KeyCode.TAB);
        }
        robot.interact(() -> model().place(new ImagePoint(200, 200)));
        assertThat(picture.getScene().getFocusOwner())
                .as("though the chips changed")
                .isSameAs(chip);
        press(robot, KeyCode.SPACE);
        assertThat(model().selected()).contains(new Item.OfVertical(0));
        assertThat(picture.isFocused()).isTrue();
        robot.interact(() -> robot.lookup("#item-ball").queryButton().requestFocus());
        assertThat(picture.isFocused()).isTrue();
    }

    @Test
    void anOpenListHasItsKeysAndAClosedOneChangesNothing(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        ComboBox<?> hand = robot.lookup("#handedness").queryComboBox();
        robot.interact(hand::requestFocus);
        press(robot, KeyCode.DOWN);
        assertThat(model().sheet().handedness()).isEqualTo(Handedness.RIGHT);
        press(robot, KeyCode.SPACE);
        until(hand::isShowing);
        press(robot, KeyCode.DOWN);
        press(robot, KeyCode.ENTER);
        until(() -> model().sheet().handedness() == Handedness.LEFT);
        assertThat(hand.isShowing()).isFalse();
    }

    @Test
    void theThingsToMarkArePickedInTheirOrder(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        robot.interact(() -> model().select(Item.BALL));
        press(robot, KeyCode.N);
        assertThat(model().selected()).contains(new Item.OfLandmark(Landmark.LEAD_SHOULDER));
        press(robot, KeyCode.SHIFT, KeyCode.N);
        assertThat(model().selected()).contains(Item.BALL);
    }

    /** Of the lead shoulder, which is selected. */
    private void suggest(FxRobot robot, ImagePoint at) {
        robot.interact(() -> model().draft(
                        View.FACE_ON,
                        (sheet, unfinished) -> sheet.view(View.FACE_ON)
                                .orElseThrow()
                                .withMark(new Mark(Landmark.LEAD_SHOULDER, at, 5, Mark.Origin.SUGGESTED))));
    }

    private Mark shoulder() {
        return marks().mark(Landmark.LEAD_SHOULDER).orElseThrow();
    }

    @Test
    void whatIsSuggestedWhileOneAimsTakesTheCrossFromNobody(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        robot.interact(() -> model().select(new Item.OfLandmark(Landmark.LEAD_SHOULDER)));
        press(robot, KeyCode.ENTER);
        press(robot, KeyCode.RIGHT);
        ImagePoint elsewhere = new ImagePoint(200, 150);
        suggest(robot, elsewhere);
        assertThat(picture.aim().isShown()).isTrue();
        press(robot, KeyCode.RIGHT);
        assertThat(shoulder().at()).as("the arrows move the cross").isEqualTo(elsewhere);
        press(robot, KeyCode.ENTER);
        double step = Math.rint(picture.picture().getHeight() / 72);
        assertThat(shoulder().at()).isEqualTo(middle().plus(2 * step, 0));
        assertThat(shoulder().origin()).isEqualTo(Mark.Origin.PLACED);
    }

    @Test
    void aCrossThatWasPutAwayOrNotMovedGivesWayToWhatIsSuggested(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        ImagePoint there = new ImagePoint(200, 150);
        robot.interact(() -> model().select(new Item.OfLandmark(Landmark.NECK)));
        press(robot, KeyCode.ENTER);
        press(robot, KeyCode.RIGHT);
        robot.interact(() -> model().select(new Item.OfLandmark(Landmark.LEAD_SHOULDER)));
        suggest(robot, there);
        assertThat(picture.aim().isShown())
                .as("it was moved for something else")
                .isFalse();
        press(robot, KeyCode.ENTER);
        assertThat(shoulder().at()).isEqualTo(there);
        assertThat(shoulder().origin()).isNotEqualTo(Mark.Origin.SUGGESTED);
        robot.interact(() -> {
            model().undo();
            model().undo();
            model().select(new Item.OfLandmark(Landmark.TRAIL_SHOULDER));
        });
        press(robot, KeyCode.RIGHT);
        robot.interact(() -> model().draft(
                        View.FACE_ON,
                        (sheet, unfinished) -> sheet.view(View.FACE_ON)
                                .orElseThrow()
                                .withMark(new Mark(Landmark.TRAIL_SHOULDER, there, 5, Mark.Origin.SUGGESTED))));
        assertThat(picture.aim().isShown()).isTrue();
        press(robot, KeyCode.ESCAPE);
        assertThat(picture.aim().isShown()).isFalse();
        press(robot, KeyCode.ENTER);
        assertThat(marks().mark(Landmark.TRAIL_SHOULDER).orElseThrow().at()).isEqualTo(there);
    }

    /** The ball is looked for where it was clicked; that it is suggested meanwhile takes the click from nobody. */
    @Test
    void whatIsSuggestedWhileTheBallIsLookedForLeavesTheClick(FxRobot robot) throws Exception {
        openClip(robot, FloorLayout.NONE);
        BallMark ball = sample.view(View.FACE_ON).orElseThrow().ball().orElseThrow();
        robot.interact(() -> {
            model().select(Item.BALL);
            sheet.assistant().clicked(ball.centre(), Snap.TO_PICTURE);
            BallMark wrong = new BallMark(ball.centre().plus(100, 0), ball.diameterPx(), 2, 2, Mark.Origin.SUGGESTED);
            model().draft(
                            View.FACE_ON,
                            (sheet, unfinished) ->
                                    sheet.view(View.FACE_ON).orElseThrow().withBall(Optional.of(wrong)));
        });
        until(() -> marks().ball().filter(b -> b.origin() == Mark.Origin.PLACED).isPresent());
        assertThat(marks().ball().orElseThrow().centre().distancePx(ball.centre()))
                .isLessThan(NEAR_PX);
    }
}
