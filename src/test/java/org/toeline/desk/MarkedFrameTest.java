package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.picture.OnPicture;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;

/** Looking through the film changes nothing of the lesson; what belongs to the marks is the marked frame. */
class MarkedFrameTest extends DrivenDesk {

    private static final Path CLIP =
            Path.of("sample-media", "before", "face-on.mp4").toAbsolutePath();

    private Lesson before = Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER));

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private void sample(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> shown(View.FACE_ON) && shown(View.DOWN_THE_LINE) && shown(View.TEE) && isJudged());
        before = model().lesson();
        robot.interact(picture::requestFocus);
    }

    private boolean shown(View view) {
        return sheet.clips().shown(view).isPresent();
    }

    private double at(View view) {
        return sheet.clips().shown(view).orElse(Double.NaN);
    }

    private void away(FxRobot robot, int frames) throws Exception {
        for (int i = 0; i < frames; i++) {
            robot.push(KeyCode.PERIOD);
        }
        until(() -> shown(View.FACE_ON) && model().away(View.FACE_ON));
    }

    /** Nine presses, and the still is what it was. */
    @Test
    void steppingChangesNeitherTheLessonNorItsPictures(FxRobot robot) throws Exception {
        sample(robot);
        double marked = model().markedAt(View.FACE_ON).orElseThrow();
        for (int i = 0; i < 9; i++) {
            robot.clickOn("#step-on10");
        }
        until(() -> Math.abs(at(View.FACE_ON) - marked - 0.9) < 0.02);
        assertThat(model().lesson()).isEqualTo(before);
        assertThat(model().canUndo()).isFalse();
        assertThat(robot.lookup("#away-text").queryAs(Label.class).getText())
                .contains("0.90 s later")
                .contains("2.500 s");
        var picture = sheet.clips().frames().get(View.FACE_ON);
        try (Clip clip = Clip.open(sheet.clips().file(View.FACE_ON).orElseThrow())) {
            assertThat(picture.argb()).isEqualTo(clip.frameAt(marked).argb());
        }
        robot.clickOn("#away-back");
        until(() -> !model().away(View.FACE_ON));
        assertThat(robot.lookup("#away").query().isVisible()).isFalse();
    }

    /** Away from the marked frame nothing that the hand does reaches the marks. */
    @Test
    void awayFromTheMarkedFrameNothingIsMarked(FxRobot robot) throws Exception {
        sample(robot);
        away(robot, 3);
        ImagePoint ball =
                model().marks(View.FACE_ON).orElseThrow().ball().orElseThrow().centre();
        robot.interact(() -> model().select(Item.BALL));
        robot.drag(OnPicture.onScreen(picture, ball)).moveBy(60, 10).drop();
        robot.push(KeyCode.LEFT);
        robot.push(KeyCode.DELETE);
        robot.push(KeyCode.ENTER);
        robot.push(KeyCode.S);
        robot.clickOn(picture);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(model().lesson()).isEqualTo(before);
        assertThat(robot.lookup("#status").queryAs(Label.class).getText()).contains("another frame");
    }

    @Test
    void oneUndoBringsTheMarkedFrameBack(FxRobot robot) throws Exception {
        sample(robot);
        away(robot, 4);
        double there = at(View.FACE_ON);
        robot.clickOn("#away-here").clickOn("#away-afresh");
        until(() -> model().markedAt(View.FACE_ON).orElseThrow() == there);
        assertThat(model().marks(View.FACE_ON).orElseThrow().isBlank()).isTrue();
        assertThat(model().away(View.FACE_ON)).isFalse();
        robot.interact(() -> model().undo());
        assertThat(model().lesson()).isEqualTo(before);
        until(() -> shown(View.FACE_ON) && !model().away(View.FACE_ON));
        assertThat(at(View.FACE_ON))
                .isCloseTo(before.clips().get(View.FACE_ON).seconds().orElseThrow(), within(0.001));
    }

    /** The line with its buttons goes; the next key is still one of the picture's. */
    @Test
    void backIsBackAtThePicture(FxRobot robot) throws Exception {
        sample(robot);
        away(robot, 4);
        robot.clickOn("#away-back");
        until(() -> shown(View.FACE_ON) && !model().away(View.FACE_ON));
        assertThat(picture.isFocused()).isTrue();
        assertThat(robot.lookup("#away").query().isVisible()).isFalse();
    }

    /** The player stands still for these frames: what follows stays where it was, to a pixel or two. */
    @Test
    void theMarksFollow(FxRobot robot) throws Exception {
        sample(robot);
        robot.push(KeyCode.COMMA, KeyCode.COMMA);
        robot.push(KeyCode.COMMA);
        until(() -> shown(View.FACE_ON) && model().away(View.FACE_ON));
        double there = at(View.FACE_ON);
        robot.clickOn("#away-here").clickOn("#away-follow");
        until(() -> model().markedAt(View.FACE_ON).orElseThrow() == there);
        ViewMarks followed = model().marks(View.FACE_ON).orElseThrow();
        ViewMarks old = before.sheet().view(View.FACE_ON).orElseThrow();
        assertThat(followed.marks()).hasSizeGreaterThan(old.marks().size() / 2);
        for (Mark mark : followed.marks()) {
            Mark was = old.mark(mark.landmark()).orElseThrow();
            assertThat(mark.at().distancePx(was.at())).as(mark.landmark().id()).isLessThan(3);
            assertThat(mark.sigmaPx()).isGreaterThanOrEqualTo(was.sigmaPx());
        }
        robot.interact(() -> model().undo());
        assertThat(model().lesson()).isEqualTo(before);
    }

    /** While nothing is marked any frame may be looked at, and the first mark makes it the marked one. */
    @Test
    void theFirstMarkPinsTheFrameItIsPlacedOn(FxRobot robot) throws Exception {
        robot.interact(() -> {
            model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
            sheet.welcomed();
            sheet.clips().choose(View.FACE_ON, CLIP);
        });
        until(() -> shown(View.FACE_ON) && at(View.FACE_ON) > 1);
        robot.interact(picture::requestFocus);
        robot.push(KeyCode.COMMA);
        until(() -> shown(View.FACE_ON)
                && at(View.FACE_ON) != model().markedAt(View.FACE_ON).orElseThrow());
        robot.interact(() -> {
            model().select(new Item.OfLandmark(Landmark.LEAD_TOE));
            model().place(new ImagePoint(700, 900));
        });
        assertThat(model().markedAt(View.FACE_ON)).hasValue(at(View.FACE_ON));
        assertThat(sheet.clips().frames()).containsKey(View.FACE_ON);
        robot.push(KeyCode.PERIOD);
        until(() -> shown(View.FACE_ON) && model().away(View.FACE_ON));
        robot.interact(() -> model().undo());
        assertThat(model().marks(View.FACE_ON).orElseThrow().isBlank()).isTrue();
    }

    /** Looking in any order leaves the lesson, its findings and its pictures as they are; the same numbers each time. */
    @Test
    void lookingInAnyOrderChangesNothing(FxRobot robot) throws Exception {
        sample(robot);
        LookingGestures.Said said = LookingGestures.said(sheet);
        LookingGestures looking = new LookingGestures(robot, sheet, picture);
        looking.play(new Random(7), 60);
        assertThat(LookingGestures.said(sheet)).isEqualTo(said);
        assertThat(looking.otherPictures(sheet)).isEmpty();
    }
}
