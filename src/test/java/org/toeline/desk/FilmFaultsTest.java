package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/** What must not go wrong around the film: pictures of another lesson, work that ends without a word, words about no swing. */
class FilmFaultsTest extends DrivenDesk {

    private static final Path CLIP =
            Path.of("sample-media", "before", "face-on.mp4").toAbsolutePath();

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private void choose(FxRobot robot, Path clip) throws Exception {
        robot.interact(() -> {
            model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
            sheet.welcomed();
            sheet.clips().choose(View.FACE_ON, clip);
        });
        until(() -> sheet.clips().frame(View.FACE_ON).isPresent()
                && sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
    }

    private String status(FxRobot robot) {
        return robot.lookup("#status").queryAs(Label.class).getText();
    }

    /** A picture fetched for one lesson is not shown on the next, also when it waits in the queue while the lesson changes. */
    @Test
    void aQueuedPictureDoesNotLandOnTheNextLesson(FxRobot robot) throws Exception {
        choose(robot, CLIP);
        robot.interact(() -> {
            sheet.clips().step(View.FACE_ON, 2);
            // the picture is fetched and waits for this thread
            while (!idle("frames of face-on.mp4")) {
                Thread.onSpinWait();
            }
            sheet.desk().fresh();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(picture.picture()).isNull();
    }

    /** Whether a thread that works off a queue has nothing to do. */
    private static boolean idle(String thread) {
        return Thread.getAllStackTraces().entrySet().stream()
                .filter(e -> e.getKey().getName().equals(thread))
                .map(Map.Entry::getValue)
                .anyMatch(trace ->
                        Arrays.stream(trace).anyMatch(f -> f.getMethodName().equals("getTask")));
    }

    /** Also of an error that is no exception. */
    @Test
    void workThatFailsIsSaidWhateverFails(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.background().run(() -> fail("no more of it"), done -> {}));
        until(() -> status(robot).contains("no more of it"));
    }

    private static String fail(String words) {
        throw new AssertionError(words);
    }

    @Test
    void ofAPhotographNoSwingIsSaid(FxRobot robot) throws Exception {
        Path photograph = folder.resolve("photograph.jpg");
        ImageIO.write(new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB), "jpg", photograph.toFile());
        choose(robot, photograph);
        assertThat(status(robot)).isEqualTo(Texts.of("address.photograph"));
    }

    /** As a copy that was broken off is: its header lists all of the film, and a person may not notice that the rest is missing. */
    @Test
    void ofAFilmCutShortIsSaidWhatIsMissing(FxRobot robot) throws Exception {
        Path cut = folder.resolve("cut.mp4");
        byte[] whole = Files.readAllBytes(CLIP);
        Files.write(cut, Arrays.copyOf(whole, whole.length / 3));
        choose(robot, cut);
        until(() -> status(robot).contains(Texts.of("address.none")));
        assertThat(status(robot)).contains("cut.mp4").contains("cut short");
        choose(robot, CLIP);
        until(() -> status(robot).equals(Texts.of("address.found")));
    }

    /** What it magnified is another view's. */
    @Test
    void theLoupeGoesWithItsView(FxRobot robot) throws Exception {
        choose(robot, CLIP);
        until(() -> !model().away(View.FACE_ON) && model().selected().isPresent());
        robot.interact(picture::requestFocus);
        robot.moveTo(picture);
        Node loupe = robot.lookup("#loupe").query();
        // a picture that comes while the pointer stands still takes the magnifier away until it moves
        until(() -> {
            robot.moveBy(1, 1);
            return loupe.isVisible();
        });
        robot.push(KeyCode.DIGIT2);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(loupe.isVisible()).isFalse();
    }
}
