package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.picture.OnPicture;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** The real desk, driven as a coach drives it. */
@ExtendWith(ApplicationExtension.class)
class DeskTest {

    /** Of each test its own: the sample lesson is opened as it was left. */
    @TempDir
    Path folder;

    private Screens screens;
    private Sheet sheet;
    private PicturePane picture;

    @Start
    void start(Stage stage) {
        screens = new Screens(folder, Settings.usual(folder.resolve("ledger")));
        sheet = screens.sheet();
        Scene scene = new Scene(screens.root(), 1540, 940);
        scene.getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        screens.keys(scene);
        stage.setScene(scene);
        stage.setX(0);
        stage.setY(0);
        stage.show();
        sheet.welcome();
        picture = (PicturePane) scene.lookup("#picture");
    }

    /** Decoded frames would stay in memory from test to test. */
    @AfterEach
    void closeDesk() {
        Platform.runLater(screens::close);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private LessonModel model() {
        return sheet.model();
    }

    /** The lesson on the desk as another program finds it in the ledger. */
    private Lesson inLedger() throws LedgerException {
        try (Ledger ledger = Ledger.open(new LedgerPlace.Folder(folder.resolve("ledger")), "the test")) {
            return ledger.lesson(screens.records().lessonId().orElseThrow())
                    .orElseThrow()
                    .lesson();
        }
    }

    private static void until(java.util.concurrent.Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void openSample(FxRobot robot) throws Exception {
        robot.clickOn("#open-sample");
        until(() -> sheet.clips().frame(View.FACE_ON).isPresent()
                && sheet.clips().frame(View.DOWN_THE_LINE).isPresent()
                && sheet.findings().filter(a -> a.advice().isJudged()).isPresent()
                && picture.picture() != null);
    }

    private void clickAt(FxRobot robot, ImagePoint p) {
        robot.clickOn(OnPicture.onScreen(picture, p));
    }

    @Test
    void theSampleIsOneClickAway(FxRobot robot) throws Exception {
        openSample(robot);
        until(() -> robot.lookup("#first-sentence")
                .queryAs(Label.class)
                .getText()
                .startsWith("Move the ball about two ball widths back"));
        assertThat(model().file())
                .as("the program's own documents stay as they are")
                .isEmpty();
        until(() -> inLedger().playerName().equals(Optional.of("A. Sample")));
    }

    /** Step, clear a view, place every mark of it again by mouse, undo one, hand over the still. */
    @Test
    void marksAViewByMouse(FxRobot robot) throws Exception {
        openSample(robot);
        double before = sheet.clips().time(View.FACE_ON).orElseThrow()[0];
        robot.clickOn("#step-on");
        until(() -> sheet.clips().time(View.FACE_ON).orElseThrow()[0] > before);
        robot.clickOn("#step-back");
        until(() -> sheet.clips().time(View.FACE_ON).orElseThrow()[0] == before);

        ViewMarks sample = model().marks(View.FACE_ON).orElseThrow();
        robot.interact(() -> {
            ViewMarks cleared = sample;
            for (Mark mark : sample.marks()) {
                cleared = cleared.withoutMark(mark.landmark());
            }
            model().apply(model().sheet().withView(cleared.withBall(Optional.empty())));
            model().select(Item.BALL);
        });
        clickAt(robot, sample.ball().orElseThrow().centre());
        until(() -> model().marks(View.FACE_ON).orElseThrow().ball().isPresent());
        assertThat(model().marks(View.FACE_ON)
                        .orElseThrow()
                        .ball()
                        .orElseThrow()
                        .diameterPx())
                .as("one click finds the outline")
                .isPresent();

        for (Mark mark : sample.marks()) {
            robot.clickOn("#ring-" + mark.landmark().id());
            clickAt(robot, mark.at());
            WaitForAsyncUtils.waitForFxEvents();
        }
        ViewMarks placed = model().marks(View.FACE_ON).orElseThrow();
        assertThat(placed.marks())
                .extracting(Mark::landmark)
                .containsAll(sample.marks().stream().map(Mark::landmark).toList());
        for (Mark mark : sample.marks()) {
            assertThat(placed.mark(mark.landmark()).orElseThrow().at().distancePx(mark.at()))
                    .as(mark.landmark().id())
                    .isLessThan(2 / OnPicture.scale(picture));
        }
        Landmark last = sample.marks().get(sample.marks().size() - 1).landmark();
        robot.clickOn("#undo");
        assertThat(model().marks(View.FACE_ON).orElseThrow().mark(last)).isEmpty();
        robot.clickOn("#redo");
        assertThat(model().marks(View.FACE_ON).orElseThrow().mark(last)).isPresent();

        robot.clickOn("#hand-over");
        until(() -> robot.lookup("#handout")
                .tryQueryAs(ImageView.class)
                .filter(v -> v.getImage() != null)
                .isPresent());
        robot.clickOn("#go-lesson");
        until(() -> inLedger().sheet().equals(model().sheet()));
    }

    @Test
    void dragsNudgesAndDeletes(FxRobot robot) throws Exception {
        openSample(robot);
        ImagePoint from = model().marks(View.FACE_ON)
                .orElseThrow()
                .mark(Landmark.LEAD_SHOULDER)
                .orElseThrow()
                .at();
        robot.moveTo(OnPicture.onScreen(picture, from))
                .press(MouseButton.PRIMARY)
                .moveBy(12, 0)
                .moveBy(8, 6)
                .release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        ImagePoint moved = model().marks(View.FACE_ON)
                .orElseThrow()
                .mark(Landmark.LEAD_SHOULDER)
                .orElseThrow()
                .at();
        assertThat(moved.xPx() - from.xPx())
                .isCloseTo(20 / OnPicture.scale(picture), org.assertj.core.api.Assertions.within(3.0));
        robot.type(KeyCode.RIGHT);
        assertThat(model().marks(View.FACE_ON)
                        .orElseThrow()
                        .mark(Landmark.LEAD_SHOULDER)
                        .orElseThrow()
                        .at()
                        .xPx())
                .isCloseTo(moved.xPx() + 0.25, org.assertj.core.api.Assertions.within(0.06));
        robot.type(KeyCode.DELETE);
        assertThat(model().marks(View.FACE_ON).orElseThrow().mark(Landmark.LEAD_SHOULDER))
                .isEmpty();
        robot.interact(() -> {
            model().undo();
            model().undo();
            model().undo();
        });
        assertThat(model().marks(View.FACE_ON)
                        .orElseThrow()
                        .mark(Landmark.LEAD_SHOULDER)
                        .orElseThrow()
                        .at())
                .as("a drag is undone as one")
                .isEqualTo(from);
    }

    @Test
    void keysChangeThePictureAndSkip(FxRobot robot) throws Exception {
        openSample(robot);
        robot.type(KeyCode.DIGIT2);
        assertThat(model().large()).isEqualTo(View.DOWN_THE_LINE);
        Optional<Item> first = model().selected();
        robot.type(KeyCode.S);
        assertThat(model().selected()).isNotEqualTo(first);
    }
}
