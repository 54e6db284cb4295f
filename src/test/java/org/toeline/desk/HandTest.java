package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Spread;
import org.toeline.desk.picture.OnPicture;
import org.toeline.desk.picture.Snap;
import org.toeline.desk.sheet.KeptClips;
import org.toeline.desk.text.Texts;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** A hurried hand on the real desk: double clicks, clicks beside the picture, views changed in the middle of things. */
class HandTest extends DrivenDesk {

    /** No ball is there. */
    private static final ImagePoint SKY = new ImagePoint(300, 80);

    private static final Item TOE = new Item.OfLandmark(Landmark.LEAD_TOE);
    private static final Item SHOULDER = new Item.OfLandmark(Landmark.LEAD_SHOULDER);

    private MarkSheet sample;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private ViewMarks marks(View view) {
        return model().marks(view).orElseThrow();
    }

    /** Both clips of a sample lesson, nothing marked on them. */
    private void openClips(FxRobot robot) throws Exception {
        Path document = Path.of("sample-media", "before", "before.lesson.json").toAbsolutePath();
        Lesson lesson = LessonDocument.read(document);
        sample = lesson.sheet();
        MarkSheet empty = sample;
        for (ViewMarks v : sample.views()) {
            empty = empty.withView(ViewMarks.empty(v.view(), v.widthPx(), v.heightPx()));
        }
        Lesson unmarked = lesson.withSheet(empty);
        robot.interact(() -> {
            model().open(KeptClips.absolute(unmarked, Optional.of(document)), Optional.empty());
            sheet.clips().openAll();
            sheet.welcomed();
        });
        until(() -> lesson.clips().keySet().stream()
                        .allMatch(v -> sheet.clips().frame(v).isPresent())
                && sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
        robot.interact(() -> model().show(View.FACE_ON));
    }

    private void moveTo(FxRobot robot, ImagePoint p) {
        robot.moveTo(OnPicture.onScreen(picture, p));
    }

    private ImagePoint ball(View view) {
        return sample.view(view).orElseThrow().ball().orElseThrow().centre();
    }

    private void untilSaid(FxRobot robot, String key) throws Exception {
        until(() -> robot.lookup("#status").queryAs(Label.class).getText().equals(Texts.of(key)));
    }

    @Test
    void aLateBallGoesToItsView(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            model().select(Item.BALL);
            sheet.assistant().clicked(ball(View.FACE_ON), Snap.TO_PICTURE);
            model().show(View.DOWN_THE_LINE);
        });
        until(() -> marks(View.FACE_ON).ball().isPresent());
        assertThat(marks(View.FACE_ON).ball().orElseThrow().centre().distancePx(ball(View.FACE_ON)))
                .isLessThan(2);
        assertThat(marks(View.DOWN_THE_LINE).ball()).isEmpty();
    }

    @Test
    void noBallFoundMovesNothing(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            model().select(Item.BALL);
            sheet.assistant().clicked(ball(View.FACE_ON), Snap.TO_PICTURE);
        });
        until(() -> marks(View.FACE_ON).ball().isPresent());
        ViewMarks before = marks(View.FACE_ON);
        robot.interact(() -> {
            model().select(Item.BALL);
            sheet.assistant().clicked(SKY, Snap.TO_PICTURE);
            model().select(TOE);
        });
        untilSaid(robot, "ball.none");
        assertThat(marks(View.FACE_ON)).isEqualTo(before);
        assertThat(model().selected()).contains(TOE);
    }

    @Test
    void anAnswerToWhatWasMovedMeanwhileIsDropped(FxRobot robot) throws Exception {
        openClips(robot);
        ImagePoint byHand = ball(View.FACE_ON).plus(3, 3);
        robot.interact(() -> {
            model().select(Item.BALL);
            sheet.assistant().clicked(ball(View.FACE_ON), Snap.TO_PICTURE);
            model().place(byHand);
            model().show(View.DOWN_THE_LINE);
            model().select(Item.BALL);
            sheet.assistant().clicked(ball(View.DOWN_THE_LINE), Snap.TO_PICTURE);
        });
        until(() -> marks(View.DOWN_THE_LINE).ball().isPresent());
        assertThat(marks(View.FACE_ON).ball().orElseThrow().centre().distancePx(byHand))
                .isLessThan(0.1);
    }

    @Test
    void aDoubleClickPlacesOneLandmark(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> model().select(SHOULDER));
        moveTo(robot, new ImagePoint(600, 300));
        robot.doubleClickOn(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(marks(View.FACE_ON).marks()).hasSize(1);
    }

    /** Two landmarks may lie close together, and a hand may be quick. */
    @Test
    void twoQuickClicksBesideEachOtherPlaceTwo(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            // what is asked before the body cannot be seen
            MarkOrder.items(model(), View.FACE_ON).stream()
                    .filter(item -> !(item instanceof Item.OfLandmark))
                    .forEach(item -> {
                        model().select(item);
                        model().skip();
                    });
            model().select(SHOULDER);
        });
        robot.moveTo(picture.localToScreen(300, 200))
                .clickOn(MouseButton.PRIMARY)
                .moveBy(8, 0)
                .clickOn(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(marks(View.FACE_ON).marks()).hasSize(2);
    }

    @Test
    void aClickBesideThePictureDoesNothing(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            OnPicture.zoom(picture, 0.5);
            model().select(SHOULDER);
        });
        robot.clickOn(picture.localToScreen(12, 12));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(marks(View.FACE_ON).marks()).isEmpty();
        Node loupe = robot.lookup("#loupe").query();
        assertThat(loupe.isVisible()).as("there is nothing to magnify").isFalse();
        moveTo(robot, SKY);
        assertThat(loupe.isVisible()).isTrue();
    }

    @Test
    void aViewKeyInTheMiddleOfAGestureLeavesTheOtherViewAlone(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            model().select(SHOULDER);
            model().place(new ImagePoint(600, 300));
            model().show(View.DOWN_THE_LINE);
        });
        ViewMarks other = marks(View.DOWN_THE_LINE);
        robot.type(KeyCode.DIGIT1);
        moveTo(robot, new ImagePoint(600, 300));
        robot.press(MouseButton.PRIMARY)
                .moveBy(30, 10)
                .type(KeyCode.DIGIT2)
                .moveBy(30, 10)
                .release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(marks(View.DOWN_THE_LINE)).isEqualTo(other);
        // a click that began in one view is none in the other
        robot.interact(() -> model().select(SHOULDER));
        robot.press(MouseButton.PRIMARY).type(KeyCode.DIGIT1).release(MouseButton.PRIMARY);
        robot.interact(() -> model().show(View.DOWN_THE_LINE));
        assertThat(marks(View.DOWN_THE_LINE)).isEqualTo(other);
    }

    @Test
    void escapeDropsWhatIsHalfDone(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            model().select(SHOULDER);
            model().place(new ImagePoint(600, 300));
        });
        ViewMarks before = marks(View.FACE_ON);
        moveTo(robot, new ImagePoint(600, 300));
        robot.press(MouseButton.PRIMARY)
                .moveBy(30, 10)
                .moveBy(10, 10)
                .type(KeyCode.ESCAPE)
                .moveBy(10, 10)
                .release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(marks(View.FACE_ON)).as("the drag").isEqualTo(before);
        robot.interact(() -> model().select(new Item.OfVertical(0)));
        moveTo(robot, new ImagePoint(200, 200));
        robot.press(MouseButton.PRIMARY)
                .moveBy(10, 50)
                .moveBy(0, 50)
                .type(KeyCode.ESCAPE)
                .release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents(30);
        assertThat(marks(View.FACE_ON)).as("the stroke").isEqualTo(before);
        robot.interact(() -> {
            model().select(Item.BALL);
            sheet.assistant().clicked(ball(View.FACE_ON), Snap.TO_PICTURE);
        });
        robot.type(KeyCode.ESCAPE);
        untilSaid(robot, "cancelled");
        WaitForAsyncUtils.waitForFxEvents(30);
        assertThat(marks(View.FACE_ON)).as("the search").isEqualTo(before);
    }

    @Test
    void nothingIsSuggestedWhileMarkingAgain(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> model().apply(sample));
        robot.type(KeyCode.M);
        assertThat(model().repeating()).isTrue();
        robot.type(KeyCode.G);
        untilSaid(robot, "suggest.again");
        assertThat(model().sheet()).isEqualTo(sample);
        robot.type(KeyCode.ESCAPE);
        assertThat(model().repeating()).isFalse();
        assertThat(model().sheet()).isEqualTo(sample);
    }

    /** Suggestions that arrive when marking again was begun meanwhile go nowhere. */
    @Test
    void lateSuggestionsLeaveTheFirstMarksAlone(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> model().apply(sample));
        robot.interact(() -> {
            sheet.assistant().suggest();
            model().repeat();
        });
        until(() -> !sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
        until(() -> sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
        assertThat(model().sheet()).isEqualTo(sample);
    }

    private void stroke(FxRobot robot, ImagePoint from, ImagePoint to) {
        moveTo(robot, from);
        robot.press(MouseButton.PRIMARY);
        moveTo(robot, new ImagePoint((from.xPx() + to.xPx()) / 2, (from.yPx() + to.yPx()) / 2));
        moveTo(robot, to);
        robot.release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** From side to side, with the spread of two clicks. */
    @Test
    void aBallIsDrawnByHand(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> model().select(Item.BALL));
        stroke(robot, new ImagePoint(100, 80), new ImagePoint(400, 80));
        untilSaid(robot, "ball.too-large");
        assertThat(marks(View.FACE_ON).ball()).isEmpty();
        stroke(robot, new ImagePoint(290, 80), new ImagePoint(330, 80));
        BallMark drawn = marks(View.FACE_ON).ball().orElseThrow();
        double pointing = 1.5 / OnPicture.scale(picture);
        assertThat(drawn.centre().distancePx(new ImagePoint(310, 80))).isLessThan(pointing);
        assertThat(drawn.diameterPx().orElseThrow()).isCloseTo(40, within(2 * pointing));
        assertThat(drawn.sigmaPx()).isEqualTo(2 / Math.sqrt(2));
        assertThat(drawn.diameterSigmaPx()).isEqualTo(2 * Math.sqrt(2));
        assertThat(model().selected()).as("on to the next").isNotEqualTo(Optional.of(Item.BALL));
    }

    /** With Ctrl held a rod's ends stay where the hand put them, and the spread says so; without, they are found. */
    @Test
    void aRodIsLeftUnsnapped(FxRobot robot) throws Exception {
        openClips(robot);
        List<FloorMark> rod =
                sample.view(View.FACE_ON).orElseThrow().floorMarks().subList(0, 2);
        ImagePoint from = rod.get(0).at().plus(1, 3);
        robot.interact(() -> model().select(new Item.OfFloor(rod.get(0).pointId())));
        robot.press(KeyCode.CONTROL);
        stroke(robot, from, rod.get(1).at());
        robot.release(KeyCode.CONTROL);
        FloorMark end = marks(View.FACE_ON).floorMark(rod.get(0).pointId()).orElseThrow();
        assertThat(end.at().distancePx(from)).isLessThan(1.5 / OnPicture.scale(picture));
        assertThat(Spread.of(marks(View.FACE_ON), new Item.OfFloor(rod.get(0).pointId())))
                .contains("3.9");
        robot.interact(() -> {
            model().undo();
            sheet.assistant().stroked(from, rod.get(1).at(), Snap.TO_PICTURE);
        });
        until(() -> !marks(View.FACE_ON).floorMarks().isEmpty());
        assertThat(marks(View.FACE_ON)
                        .floorMark(rod.get(0).pointId())
                        .orElseThrow()
                        .sigmaPx())
                .as("found")
                .isLessThan(2);
        String button = "#item-" + rod.get(0).pointId();
        assertThat(robot.lookup(button).queryAs(Button.class).getTooltip().getText())
                .contains("± ")
                .contains(" px");
    }

    /** Of a rod only one end is suggested: drawn from there it is drawn whole, and moved a little its end is put right. */
    @Test
    void aRodIsDrawnFromItsOnlySuggestedEnd(FxRobot robot) throws Exception {
        openClips(robot);
        List<FloorMark> rod =
                sample.view(View.FACE_ON).orElseThrow().floorMarks().subList(0, 2);
        FloorMark one = rod.get(0);
        FloorMark other = rod.get(1);
        robot.interact(() -> model().apply(model().sheet()
                .withView(marks(View.FACE_ON)
                        .withFloorMark(new FloorMark(one.pointId(), one.at(), 3, Mark.Origin.SUGGESTED)))));
        robot.interact(() -> model().select(new Item.OfFloor(one.pointId())));
        stroke(robot, one.at(), other.at());
        until(() -> marks(View.FACE_ON).floorMark(other.pointId()).isPresent());
        for (FloorMark end : rod) {
            FloorMark drawn = marks(View.FACE_ON).floorMark(end.pointId()).orElseThrow();
            assertThat(drawn.at().distancePx(end.at())).as(end.pointId()).isLessThan(6);
            assertThat(drawn.origin()).isEqualTo(Mark.Origin.PLACED);
        }
        robot.interact(() -> model().apply(model().sheet()
                .withView(marks(View.FACE_ON)
                        .withoutFloorMark(other.pointId())
                        .withFloorMark(new FloorMark(one.pointId(), one.at(), 3, Mark.Origin.SUGGESTED)))));
        ImagePoint beside = OnPicture.beside(picture, one.at(), 0, 25);
        stroke(robot, one.at(), beside);
        assertThat(marks(View.FACE_ON).floorMark(other.pointId())).isEmpty();
        assertThat(marks(View.FACE_ON)
                        .floorMark(one.pointId())
                        .orElseThrow()
                        .at()
                        .distancePx(beside))
                .isLessThan(6);
    }

    /** The buttons do what the keys do, and say when there is nothing to do. */
    @Test
    void aSuggestionIsAcceptedOrRefusedByMouse(FxRobot robot) throws Exception {
        openClips(robot);
        ImagePoint shoulder = new ImagePoint(600, 300);
        ImagePoint toe = new ImagePoint(650, 560);
        robot.interact(() -> model().apply(model().sheet()
                .withView(marks(View.FACE_ON)
                        .withMark(new Mark(Landmark.LEAD_SHOULDER, shoulder, 4, Mark.Origin.SUGGESTED))
                        .withMark(new Mark(Landmark.LEAD_TOE, toe, 4, Mark.Origin.SUGGESTED)))));
        assertThat(robot.lookup("#accept").queryButton().isDisabled())
                .as("the ball is selected")
                .isTrue();
        moveTo(robot, shoulder);
        robot.clickOn(MouseButton.SECONDARY);
        assertThat(model().selected()).as("the right button picks a mark").contains(SHOULDER);
        robot.clickOn("#accept");
        assertThat(marks(View.FACE_ON)
                        .mark(Landmark.LEAD_SHOULDER)
                        .orElseThrow()
                        .origin())
                .isEqualTo(Mark.Origin.PLACED);
        moveTo(robot, toe);
        robot.clickOn(MouseButton.SECONDARY);
        robot.clickOn("#refuse");
        assertThat(marks(View.FACE_ON).mark(Landmark.LEAD_TOE)).isEmpty();
        assertThat(robot.lookup("#refuse").queryButton().isDisabled()).isTrue();
    }

    /** What is announced stands out in the drawing: the ball by its ring, a rod and an upright by what is drawn of them. */
    @Test
    void everyThingAnnouncedIsDrawn(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> model().select(SHOULDER));
        Node map = robot.lookup("#body-map").query();
        Set<List<Integer>> drawings = new HashSet<>();
        List<Item> items = List.of(
                SHOULDER,
                Item.BALL,
                new Item.OfFloor(sample.floor().points().get(0).id()),
                new Item.OfVertical(0));
        for (View view : List.of(View.FACE_ON, View.TEE)) {
            for (Item item : view == View.TEE ? List.of(Item.BALL, new Item.OfLandmark(Landmark.CROWN)) : items) {
                robot.interact(() -> {
                    model().show(view);
                    model().select(item);
                    drawings.add(pixels(map.snapshot(null, null)));
                });
            }
        }
        assertThat(drawings).as("each has a drawing of its own").hasSize(items.size() + 2);
    }

    private static List<Integer> pixels(WritableImage image) {
        List<Integer> all = new ArrayList<>();
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                all.add(image.getPixelReader().getArgb(x, y));
            }
        }
        return all;
    }

    /** Killed at any moment, the desk has them: they are in the ledger, as what cannot be seen is. */
    @Test
    void secondMarksAreInTheLedgerAtOnce(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            screens.records().fresh(OptionalInt.empty());
            model().apply(sample);
        });
        robot.type(KeyCode.M);
        robot.interact(() -> {
            model().select(SHOULDER);
            model().place(SKY);
            model().select(TOE);
            model().skip();
        });
        until(() -> screens.records().lessonId().isPresent()
                && inLedger().unfinished().equals(model().lesson().unfinished()));
        assertThat(inLedger()
                        .unfinished()
                        .again(View.FACE_ON)
                        .orElseThrow()
                        .mark(Landmark.LEAD_SHOULDER)
                        .orElseThrow()
                        .at())
                .isEqualTo(SKY);
        assertThat(inLedger().unfinished().unseen(View.FACE_ON)).containsExactly("lead-toe");
        assertThat(inLedger().sheet()).as("the first marks").isEqualTo(sample);
    }

    /** The lesson on the desk as another program finds it. */
    private Lesson inLedger() throws LedgerException {
        try (Ledger ledger = Ledger.open(new LedgerPlace.Folder(folder.resolve("ledger")), "the test")) {
            return ledger.lesson(screens.records().lessonId().orElseThrow())
                    .orElseThrow()
                    .lesson();
        }
    }

    /** What is to be placed goes where the hand begins, also beside a mark; that mark stays. */
    @Test
    void aStrokeBeginsBesideAnotherMark(FxRobot robot) throws Exception {
        openClips(robot);
        robot.interact(() -> {
            model().select(SHOULDER);
            model().place(new ImagePoint(300, 80));
            model().select(Item.BALL);
        });
        ImagePoint beside = OnPicture.beside(picture, new ImagePoint(300, 80), 8, 0);
        stroke(robot, beside, beside.plus(30, 0));
        assertThat(marks(View.FACE_ON)
                        .mark(Landmark.LEAD_SHOULDER)
                        .orElseThrow()
                        .at())
                .isEqualTo(new ImagePoint(300, 80));
        assertThat(marks(View.FACE_ON).ball()).isPresent();
    }
}
