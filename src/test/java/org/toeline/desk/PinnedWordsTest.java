package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.picture.OnPicture;
import org.toeline.desk.text.Texts;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;

/** Words pinned to the picture by mouse and key on the real desk. */
class PinnedWordsTest extends DrivenDesk {

    private static final ImagePoint ABOUT = new ImagePoint(780, 300);
    private static final ImagePoint STAND = new ImagePoint(980, 180);

    @Start
    void start(Stage stage) {
        open(stage);
    }

    @BeforeEach
    void sample(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> sheet.assessment().filter(a -> a.advice().isJudged()).isPresent()
                && !model().away(View.FACE_ON)
                && sheet.clips().shown(View.FACE_ON).isPresent());
        robot.interact(() -> {
            // the sample lesson is kept from test to test
            words().forEach(w -> model().pin(Optional.of(w), Optional.empty()));
            picture.requestFocus();
        });
    }

    private List<PinnedWords> words() {
        return model().lesson().words(View.FACE_ON);
    }

    private Point2D screen(ImagePoint at) {
        return OnPicture.onScreen(picture, at);
    }

    private void pin(FxRobot robot, String text) throws Exception {
        robot.push(KeyCode.W);
        robot.moveTo(screen(ABOUT)).press(MouseButton.PRIMARY);
        robot.moveTo(screen(STAND)).release(MouseButton.PRIMARY);
        until(() -> robot.lookup("#pin-text").tryQuery().isPresent());
        robot.clickOn("#pin-text").write(text);
        robot.clickOn("#pin-still");
        robot.clickOn("#pin-keep");
        until(() -> robot.lookup("#pin-text").tryQuery().isEmpty());
    }

    @Test
    void aStrokePinsThemAndADragMovesThem(FxRobot robot) throws Exception {
        MarkSheet marks = model().sheet();
        pin(robot, "keep it close");
        assertThat(words()).hasSize(1);
        PinnedWords words = words().get(0);
        assertThat(words.text()).isEqualTo("keep it close");
        assertThat(words.onStill()).isTrue();
        double device = 2 / OnPicture.scale(picture);
        assertThat(words.at().distancePx(ABOUT)).isCloseTo(0, within(device));
        assertThat(words.stand().distancePx(STAND)).isCloseTo(0, within(device));
        assertThat(model().sheet()).isSameAs(marks);

        ImagePoint beside = new ImagePoint(1000, 400);
        robot.moveTo(screen(STAND)).press(MouseButton.PRIMARY);
        robot.moveTo(screen(beside)).release(MouseButton.PRIMARY);
        until(() -> words().get(0).stand().distancePx(beside) < 2 * device);
        assertThat(words().get(0).at()).isEqualTo(words.at());
        robot.interact(() -> model().undo());
        assertThat(words()).containsExactly(words);
        robot.interact(() -> model().undo());
        assertThat(words()).isEmpty();
        robot.interact(() -> model().redo());
        assertThat(words()).containsExactly(words);
        assertThat(model().sheet()).isEqualTo(marks);
        assertThat(LessonDocument.parse(LessonDocument.bytes(model().lesson()), "kept")
                        .words())
                .containsExactly(words);
    }

    @Test
    void aClickOpensThemToBeChangedOrTakenAway(FxRobot robot) throws Exception {
        pin(robot, "one");
        robot.clickOn(screen(STAND));
        until(() -> robot.lookup("#pin-text").tryQuery().isPresent());
        assertThat(robot.lookup("#pin-still").queryAs(CheckBox.class).isSelected())
                .isTrue();
        robot.clickOn("#pin-still");
        robot.clickOn("#pin-keep");
        until(() -> words().stream().noneMatch(PinnedWords::onStill));
        assertThat(words().get(0).text()).isEqualTo("one");
        robot.clickOn(screen(STAND));
        until(() -> robot.lookup("#pin-away").tryQuery().isPresent());
        robot.clickOn("#pin-away");
        until(() -> words().isEmpty());
    }

    @Test
    void awayFromTheMarkedFrameNothingIsPinned(FxRobot robot) throws Exception {
        pin(robot, "here");
        robot.push(KeyCode.COMMA);
        until(() ->
                model().away(View.FACE_ON) && sheet.clips().shown(View.FACE_ON).isPresent());
        robot.push(KeyCode.W);
        assertThat(robot.lookup("#status").queryAs(Label.class).getText()).isEqualTo(Texts.of("film.elsewhere"));
        robot.clickOn(screen(STAND));
        assertThat(robot.lookup("#pin-text").tryQuery()).isEmpty();
        assertThat(words()).hasSize(1);
    }

    /** Words belong to the marked frame, as marks do: another film or a fresh start takes them away, undoably. */
    @Test
    void aFreshFrameHasNone(FxRobot robot) throws Exception {
        pin(robot, "here");
        robot.push(KeyCode.COMMA);
        until(() ->
                model().away(View.FACE_ON) && sheet.clips().shown(View.FACE_ON).isPresent());
        robot.clickOn("#away-here");
        robot.clickOn(Texts.of("away.afresh"));
        until(() -> words().isEmpty());
        robot.interact(() -> model().undo());
        assertThat(words()).hasSize(1);
    }
}
