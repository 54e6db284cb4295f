package org.toeline.desk.ranges;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CopyOnWriteArrayList;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.StudioForTests;
import org.toeline.desk.records.OwnRanges;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** The screen, by mouse and key, over a real document. */
@ExtendWith(ApplicationExtension.class)
class RangesScreenTest {

    @TempDir
    Path folder;
    private final CopyOnWriteArrayList<String> said = new CopyOnWriteArrayList<>();
    private StudioForTests studio;
    private RangesScreen screen;
    private Scene scene;

    @Start
    void start(Stage stage) {
        studio = new StudioForTests(folder, said::add);
        screen = new RangesScreen(studio.studio());
        scene = new Scene(screen.root(), 1280, 700);
        scene.getStylesheets().add(getClass().getResource("/org/toeline/desk/desk.css").toExternalForm());
        stage.setScene(scene);
        stage.show();
        screen.entered();
    }

    @AfterEach
    void close() {
        studio.close();
    }

    private static void type(FxRobot robot, String field, String text) {
        robot.doubleClickOn(field).write(text).type(KeyCode.ENTER);
    }

    private static String word(FxRobot robot, String reading) {
        return robot.lookup("#range-" + reading + "-word").queryAs(Label.class).getText();
    }

    @Test
    void aTypedRangeCountsIsKeptAndCanBeTakenBack(FxRobot robot) throws Exception {
        assertThat(word(robot, "tee-height")).startsWith("Common practice:");
        type(robot, "#range-tee-height-high", "60");
        assertThat(studio.ranges().own(ReadingKind.TEE_HEIGHT, Club.DRIVER)).hasValueSatisfying(r ->
                assertThat(r.shownHigh()).isEqualTo(60));
        assertThat(word(robot, "tee-height")).isEqualTo("Your own. The program comes with 30 to 55.");
        assertThat(new OwnRanges(folder.resolve("ranges.json")).all()).as("another start finds it").isEqualTo(studio.ranges().all());
        BufferedImage[] image = new BufferedImage[1];
        robot.interact(() -> image[0] = SwingFXUtils.fromFXImage(scene.snapshot(null), null));
        Files.createDirectories(Path.of("target", "screens"));
        javax.imageio.ImageIO.write(image[0], "png", Path.of("target", "screens", "ranges.png").toFile());

        robot.clickOn("#range-tee-height-restore");
        assertThat(studio.ranges().own().ranges()).isEmpty();
        assertThat(robot.lookup("#range-tee-height-high").queryAs(TextField.class).getText()).isEqualTo("55");
        assertThat(robot.lookup("#range-tee-height-restore").queryAs(Button.class).isDisabled()).isTrue();
    }

    @Test
    void whatIsNoRangeIsSaidAndChangesNothing(FxRobot robot) {
        type(robot, "#range-tee-height-high", "ten");
        assertThat(robot.lookup("Three numbers are needed: from, aim, to. Nothing was changed.").tryQuery()).isPresent();
        type(robot, "#range-tee-height-high", "10");
        assertThat(robot.lookup("They must rise: from, aim, to. Nothing was changed.").tryQuery()).isPresent();
        assertThat(studio.ranges().own().ranges()).isEmpty();
        type(robot, "#range-tee-height-high", "57,5");
        assertThat(studio.ranges().own(ReadingKind.TEE_HEIGHT, Club.DRIVER)).hasValueSatisfying(r ->
                assertThat(r.shownHigh()).isEqualTo(57.5));
    }

    @Test
    @SuppressWarnings("unchecked")
    void everyClubHasItsRanges(FxRobot robot) {
        for (Club club : Club.values()) {
            robot.interact(() -> robot.lookup("#ranges-club").queryAs(ComboBox.class).setValue(club));
            for (ReadingKind kind : ReadingKind.values()) {
                boolean judged = !robot.lookup("#range-" + kind.id() + "-low").queryAs(TextField.class).getText().isEmpty();
                assertThat(judged).as("%s, %s", kind, club).isEqualTo(studio.ranges().all().range(kind, club).isPresent());
            }
        }
    }
}
