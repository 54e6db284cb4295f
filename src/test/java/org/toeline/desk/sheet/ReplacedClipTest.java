package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.DrivenDesk;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** A clip that comes to where marks are takes their place only when told to, and undo brings clip and marks back. */
class ReplacedClipTest extends DrivenDesk {

    private static final Path OTHER =
            Path.of("sample-media", "after", "face-on.mp4").toAbsolutePath();

    private Lesson before;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    /** The sample lesson, and clips that arrive for its face-on view. */
    private void arrive(FxRobot robot, Path... clips) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> sheet.clips().shown(View.FACE_ON).isPresent());
        before = model().lesson();
        robot.interact(() -> sheet.arrivals().arrived(List.of(clips), View.FACE_ON));
    }

    private static boolean asks(FxRobot robot) {
        return robot.lookup("#replace-keep").tryQuery().isPresent();
    }

    private Path copied(String name) throws Exception {
        Path copy = folder.resolve(name);
        Files.deleteIfExists(copy);
        return Files.copy(Path.of("sample-media", "before", "face-on.mp4"), copy);
    }

    private String clip() {
        return model().lesson().clips().get(View.FACE_ON).clip();
    }

    private void undo(FxRobot robot) throws Exception {
        robot.interact(picture::requestFocus);
        robot.push(new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN));
        assertThat(model().lesson()).isEqualTo(before);
        until(() -> sheet.clips().shown(View.FACE_ON).equals(model().markedAt(View.FACE_ON)));
        assertThat(sheet.clips().file(View.FACE_ON).orElseThrow().getParent().getFileName())
                .hasToString("before");
        assertThat(model().canUndo()).isFalse();
    }

    @Test
    void leavingItChangesNothing(FxRobot robot) throws Exception {
        arrive(robot, OTHER);
        assertThat(asks(robot)).isTrue();
        robot.clickOn("#dialog-leave");
        assertThat(model().lesson()).isEqualTo(before);
        assertThat(model().canUndo()).isFalse();
        robot.interact(() -> sheet.arrivals().arrived(List.of(OTHER), View.FACE_ON));
        robot.push(KeyCode.ESCAPE);
        assertThat(asks(robot)).isFalse();
        assertThat(model().lesson()).isEqualTo(before);
    }

    @Test
    void theSameFilmUnderAnotherNameKeepsItsMarks(FxRobot robot) throws Exception {
        arrive(robot, copied("renamed.mp4"));
        robot.clickOn("#replace-keep");
        until(() -> clip().endsWith("renamed.mp4")
                && sheet.clips().shown(View.FACE_ON).equals(model().markedAt(View.FACE_ON)));
        assertThat(model().sheet()).isEqualTo(before.sheet());
        assertThat(model().markedAt(View.FACE_ON))
                .isEqualTo(before.clips().get(View.FACE_ON).seconds());
        undo(robot);
    }

    @Test
    void anotherFilmIsMarkedAfresh(FxRobot robot) throws Exception {
        arrive(robot, OTHER);
        robot.clickOn("#replace-afresh");
        until(() -> clip().equals(OTHER.toString())
                && sheet.clips().lines().getChildrenUnmodifiable().isEmpty()
                && sheet.clips().shown(View.FACE_ON).isPresent());
        assertThat(model().marks(View.FACE_ON).map(ViewMarks::isBlank)).contains(true);
        assertThat(model().sheet().view(View.DOWN_THE_LINE))
                .isEqualTo(before.sheet().view(View.DOWN_THE_LINE));
        undo(robot);
    }

    /** Nothing of a film that is not the marked one is taken for it. */
    @Test
    void aFilmOfAnotherSizeIsNotTheSame(FxRobot robot) throws Exception {
        Path small = folder.resolve("small.jpg");
        ImageIO.write(new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB), "jpg", small.toFile());
        arrive(robot, small);
        robot.clickOn("#replace-keep");
        until(() -> status(robot).equals(Texts.of("replace.size", small.getFileName())));
        assertThat(model().lesson()).isEqualTo(before);
    }

    @Test
    void aFilmOfAnotherLengthIsNotTheSame(FxRobot robot) throws Exception {
        Path picture = folder.resolve("one-picture.jpg");
        ViewMarks marked = LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"))
                .sheet()
                .view(View.FACE_ON)
                .orElseThrow();
        ImageIO.write(
                new BufferedImage(marked.widthPx(), marked.heightPx(), BufferedImage.TYPE_INT_RGB),
                "jpg",
                picture.toFile());
        arrive(robot, picture);
        robot.clickOn("#replace-keep");
        until(() -> status(robot).equals(Texts.of("replace.length", picture.getFileName())));
        assertThat(model().lesson()).isEqualTo(before);
    }

    @Test
    void aClipOfAnotherViewIsRefused(FxRobot robot) throws Exception {
        arrive(robot, Path.of("sample-media", "before", "down-the-line.mp4").toAbsolutePath());
        assertThat(asks(robot)).isFalse();
        assertThat(status(robot))
                .isEqualTo(Texts.of("replace.twice", "down-the-line.mp4", Texts.of("view.down-the-line")));
        assertThat(model().lesson()).isEqualTo(before);
    }

    private static String status(FxRobot robot) {
        Node status = robot.lookup("#status").query();
        return ((Label) status).getText();
    }
}
