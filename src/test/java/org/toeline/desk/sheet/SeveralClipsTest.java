package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.DrivenDesk;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/** Two clips that arrive at once are taken for a view each, which is asked about until it is answered. */
class SeveralClipsTest extends DrivenDesk {

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private Path clip(String name, String of) throws Exception {
        Path copy = folder.resolve(name);
        Files.deleteIfExists(copy);
        return Files.copy(Path.of("sample-media", "before", of + ".mp4"), copy);
    }

    private void arrive(FxRobot robot, Path... clips) throws Exception {
        robot.interact(() -> {
            model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
            sheet.welcomed();
            sheet.arrivals().arrived(List.of(clips), View.FACE_ON);
        });
        until(() -> sheet.clips().shown(View.FACE_ON).isPresent()
                && sheet.clips().shown(View.DOWN_THE_LINE).isPresent()
                && sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
    }

    private String clip(View view) {
        return sheet.clips().file(view).map(f -> f.getFileName().toString()).orElse("");
    }

    private static Node asked(FxRobot robot) {
        return robot.lookup("#arrived").query();
    }

    @Test
    void namesThatSayNothingAreAskedAboutAndExchangedByKey(FxRobot robot) throws Exception {
        arrive(robot, clip("one.mp4", "down-the-line"), clip("two.mp4", "face-on"));
        assertThat(clip(View.FACE_ON)).isEqualTo("one.mp4");
        assertThat(model().large()).isEqualTo(View.FACE_ON);
        assertThat(asked(robot).isVisible()).isTrue();
        assertThat(robot.lookup("#arrived-text").queryAs(Label.class).getText()).contains("one.mp4", "two.mp4");
        robot.interact(picture::requestFocus);
        robot.push(KeyCode.X);
        until(() -> clip(View.FACE_ON).equals("two.mp4"));
        assertThat(asked(robot).isVisible()).isFalse();
        robot.interact(() -> model().undo());
        until(() -> clip(View.FACE_ON).equals("one.mp4"));
    }

    @Test
    void namesThatSayWhatTheyAreDecide(FxRobot robot) throws Exception {
        arrive(robot, clip("a-down-the-line.mp4", "down-the-line"), clip("a-face-on.mp4", "face-on"));
        assertThat(clip(View.FACE_ON)).isEqualTo("a-face-on.mp4");
        robot.clickOn("#arrived-right");
        assertThat(asked(robot).isVisible()).isFalse();
        assertThat(picture.isFocused()).isTrue();
        assertThat(clip(View.FACE_ON)).isEqualTo("a-face-on.mp4");
    }
}
