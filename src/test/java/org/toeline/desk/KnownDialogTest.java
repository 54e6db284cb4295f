package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.ledger.LensBook;
import org.toeline.mark.Laying;
import org.toeline.mark.LensNote;
import org.toeline.mark.View;

/** What is known besides the marks, told to the real desk. */
@ExtendWith(ApplicationExtension.class)
class KnownDialogTest {

    @TempDir
    static Path folder;

    private Screens screens;
    private Sheet sheet;

    @Start
    void start(Stage stage) throws Exception {
        new LensBook(folder.resolve("lenses.json"))
                .keep(new LensBook.Profile(
                        "My phone",
                        1920,
                        1080,
                        new LensNote(
                                OptionalDouble.of(1480),
                                OptionalDouble.of(6),
                                OptionalDouble.of(962),
                                OptionalDouble.of(538),
                                OptionalDouble.of(0.01),
                                OptionalDouble.of(0))));
        screens = new Screens(folder, Settings.usual(folder.resolve("ledger")));
        sheet = screens.sheet();
        Scene scene = new Scene(screens.root(), 1540, 940);
        scene.getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        stage.setScene(scene);
        stage.show();
        sheet.welcome();
    }

    /** Decoded frames would stay in memory from test to test. */
    @AfterEach
    void closeDesk() {
        Platform.runLater(screens::close);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Until all is where it stays: an empty lesson has an assessment too, and what is clicked must not move any more. */
    private void sampleIsThere() throws Exception {
        WaitForAsyncUtils.waitFor(
                180,
                TimeUnit.SECONDS,
                () -> sheet.findings().filter(a -> a.advice().isJudged()).isPresent()
                        && sheet.clips().frames().size()
                                == sheet.model().sheet().views().size());
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void takesFloorHeightAndLens(FxRobot robot) throws Exception {
        robot.clickOn("#open-sample");
        sampleIsThere();
        press(robot, "#known");
        WaitForAsyncUtils.waitFor(
                180,
                TimeUnit.SECONDS,
                () -> robot.lookup("#floor-kind").tryQuery().isPresent());
        robot.interact(() -> robot.lookup("#floor-kind")
                .queryAs(ChoiceBox.class)
                .getSelectionModel()
                .select(3));
        robot.interact(() ->
                robot.lookup("#floor-mat-ball-lead-t").queryAs(TextField.class).setText("77,5"));
        robot.interact(() -> robot.lookup("#laid-again").queryAs(CheckBox.class).setSelected(true));
        robot.interact(() -> robot.lookup("#height").queryAs(TextField.class).setText("18"));
        robot.clickOn("#known-keep");
        assertThat(robot.lookup("#height-fault").query().isVisible())
                .as("nobody is 18 cm tall")
                .isTrue();
        robot.interact(() -> robot.lookup("#height").queryAs(TextField.class).setText("180"));
        ChoiceBox<?> lens = robot.lookup("#lens-face-on").queryAs(ChoiceBox.class);
        robot.interact(() -> lens.getSelectionModel().select(4));
        robot.clickOn("#known-keep");
        WaitForAsyncUtils.waitForFxEvents();
        var told = sheet.model().sheet();
        assertThat(told.floor().laying()).isEqualTo(Laying.AGAIN);
        assertThat(told.floor().point("mat-ball-lead").orElseThrow().t()).isCloseTo(0.775, within(1e-9));
        assertThat(told.view(View.FACE_ON).orElseThrow().floorMarks())
                .as("marks of rods that are not there")
                .isEmpty();
        assertThat(told.stature().orElseThrow().heightM()).isCloseTo(1.7825, within(1e-9));
        assertThat(told.view(View.FACE_ON).orElseThrow().lens().focalPx().orElseThrow())
                .as("calibrated at 1920 × 1080, used at 1280 × 720")
                .isCloseTo(1480 / 1.5, within(1e-9));
        robot.interact(() -> sheet.model().undo());
        assertThat(sheet.model().sheet().stature())
                .as("one step, undone at once")
                .isEmpty();
        assertThat(sheet.model().sheet().view(View.FACE_ON).orElseThrow().floorMarks())
                .isNotEmpty();
    }

    @Test
    void saysWhereTheCameraStands(FxRobot robot) throws Exception {
        robot.clickOn("#open-sample");
        sampleIsThere();
        press(robot, "#camera");
        WaitForAsyncUtils.waitFor(
                180,
                TimeUnit.SECONDS,
                () -> robot.lookup("#camera-text").tryQuery().isPresent());
        assertThat(robot.lookup("#camera-text").queryLabeled().getText())
                .startsWith("In the face-on view the camera stands");
    }

    /** In a low window it may have to be scrolled to. */
    private static void press(FxRobot robot, String id) {
        robot.interact(() -> robot.lookup(id).queryButton().fire());
    }
}
