package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.across.ChangeCall;
import org.toeline.across.Comparison;
import org.toeline.across.StatedFindings;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.KeptClips;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.rows.StatedFinding;

/** The screen of changes with no lesson, one, two and sixty; with long names; with clips and without. */
@ExtendWith(ApplicationExtension.class)
class AcrossScreenTest {

    @TempDir
    static Path folder;

    private Screens screens;
    private Scene scene;

    @Start
    void start(Stage stage) {
        Path own = folder.resolve("desk-" + System.nanoTime());
        screens = new Screens(own, Settings.usual(own.resolve("ledger")));
        scene = new Scene(screens.root(), 1540, 940);
        scene.getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        screens.keys(scene);
        stage.setScene(scene);
        stage.setX(0);
        stage.setY(0);
        stage.show();
        screens.sheet().welcome();
    }

    private static void until(java.util.concurrent.Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static Lesson sample(String id) throws Exception {
        Path document = Path.of("sample-media", id, id + ".lesson.json").toAbsolutePath();
        return KeptClips.absolute(LessonDocument.read(document), Optional.of(document));
    }

    /** Done on the ledger's thread, and waited for. */
    private void inLedger(org.toeline.desk.records.Records.Question<?> work) throws Exception {
        CountDownLatch done = new CountDownLatch(1);
        screens.records().ask(work, answer -> done.countDown());
        assertThat(done.await(60, TimeUnit.SECONDS)).isTrue();
    }

    private String text(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(Label.class).getText();
    }

    private ListView<Comparison.Row> rows(FxRobot robot) {
        return robot.lookup("#across-rows").queryListView();
    }

    private boolean pictured(FxRobot robot, int lesson) {
        return robot.lookup("#across-still-" + lesson)
                .tryQueryAs(StackPane.class)
                .filter(p -> !p.getChildren().isEmpty() && p.getChildren().get(0) instanceof ImageView)
                .isPresent();
    }

    /** Where {@code toeline.snapshots} names a folder, what the test saw is left there to be looked at. */
    private void snapshot(FxRobot robot, String name) throws Exception {
        String to = System.getProperty("toeline.snapshots", System.getenv("TOELINE_SNAPSHOTS"));
        if (to != null) {
            BufferedImage[] image = new BufferedImage[1];
            robot.interact(() -> image[0] = SwingFXUtils.fromFXImage(scene.snapshot(null), null));
            ImageIO.write(
                    image[0],
                    "png",
                    Files.createDirectories(Path.of(to)).resolve(name + ".png").toFile());
        }
    }

    /** Decoded frames would stay in memory from test to test. */
    @AfterEach
    void closeDesk() {
        Platform.runLater(screens::close);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void withoutALessonItSaysWhatToDo(FxRobot robot) throws Exception {
        robot.type(KeyCode.F4);
        until(() -> robot.lookup("#across-nothing").queryAs(Label.class).isVisible());
        assertThat(text(robot, "#across-nothing")).contains("Mark a lesson, or open the sample lesson");
        snapshot(robot, "across-0");
        robot.clickOn("#across-go-lesson");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#picture").tryQuery()).isPresent();
    }

    /** The sample player before and after a change: what the lessons' truth says moved is called real, and stands first. */
    @Test
    void theSampleLessonsAreCompared(FxRobot robot) throws Exception {
        robot.clickOn("#open-sample");
        until(() -> screens.records().lessonId().isPresent());
        robot.type(KeyCode.F4);
        until(() -> rows(robot).getItems().size() > 10 && pictured(robot, 1) && pictured(robot, 2));
        assertThat(text(robot, "#across-sentence")).contains("Really changed").contains("ball and lead shoulder");
        List<ChangeCall> calls =
                rows(robot).getItems().stream().map(r -> r.call().orElseThrow()).toList();
        assertThat(calls)
                .as("the real ones first")
                .isSortedAccordingTo(java.util.Comparator.comparingInt(
                        c -> List.of(ChangeCall.REAL, ChangeCall.TOO_CLOSE, ChangeCall.NOT_SHOWN)
                                .indexOf(c)));
        assertThat(robot.lookup("#across-player").queryComboBox().isShowing())
                .as("the key that leads here opens no box")
                .isFalse();
        snapshot(robot, "across-2");
        robot.clickOn("#across-down-the-line");
        until(() -> pictured(robot, 1) && pictured(robot, 2));
        snapshot(robot, "across-2-down-the-line");
    }

    @Test
    void oneLessonIsShownAndWaitsForTheNext(FxRobot robot) throws Exception {
        Lesson before = sample("before");
        inLedger(l -> l.takeIn(
                before.withPlayerName(Optional.of(
                        "Maximiliana Konstantina Featherstonehaugh-Oyelaran de la Vega y " + "Montgomery III")),
                StatedFindings.of(before),
                Optional.empty()));
        robot.type(KeyCode.F4);
        until(() -> pictured(robot, 1));
        assertThat(text(robot, "#across-sentence")).startsWith("One lesson with this club so far");
        assertThat(rows(robot).getItems())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.change()).isEmpty());
        snapshot(robot, "across-1");
    }

    /** Sixty lessons whose clips are gone: figures and marks are there all the same, and any two can be compared. */
    @Test
    void sixtyLessonsWithoutClips(FxRobot robot) throws Exception {
        Lesson before = sample("before");
        List<StatedFinding> stated = StatedFindings.of(before);
        inLedger(l -> SixtyLessons.of("B. Trial", before, stated, l));
        robot.type(KeyCode.F4);
        until(() -> pictured(robot, 1) && pictured(robot, 60));
        assertThat(robot.lookup("#across-lessons").queryListView().getItems()).hasSize(60);
        assertThat(rows(robot).getItems().get(0).across().points()).hasSize(60);
        assertThat(robot.lookup("#across-look").queryButton().isVisible())
                .as("what is missing can be looked for")
                .isTrue();
        snapshot(robot, "across-60");
        robot.clickOn("#across-lesson-59");
        until(() -> pictured(robot, 59));
        snapshot(robot, "across-60-three");
    }
}
