package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.work.WorkLines;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.video.Progress;

/** What the desk says and asks about clips: how far the opening is, stopping it, and at what rate they were filmed. */
class ClipControlsTest extends DrivenDesk {

    private static final Path CLIP =
            Path.of("sample-media", "before", "face-on.mp4").toAbsolutePath();

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private void choose(FxRobot robot) throws Exception {
        robot.interact(() -> {
            model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
            sheet.welcomed();
            sheet.clips().choose(View.FACE_ON, CLIP);
        });
        until(() -> sheet.clips().frame(View.FACE_ON).isPresent());
    }

    @Test
    void longWorkIsShownAndStops(FxRobot robot) throws Exception {
        AtomicReference<WorkLines.Work> work = new AtomicReference<>();
        AtomicReference<String> said = new AtomicReference<>("");
        robot.interact(() -> work.set(sheet.clips().lines().begin("Opening long.mp4 …", () -> said.set("stopped"))));
        until(() -> robot.lookup("#work-stop").tryQuery().isPresent());
        assertThat(work.get().at(0.4)).isEqualTo(Progress.Step.GO_ON);
        until(() -> robot.lookup(".work .label").queryAs(Label.class).getText().equals("Opening long.mp4 … 40 %"));
        assertThat(robot.lookup(".work .progress-bar")
                        .queryAs(ProgressBar.class)
                        .getProgress())
                .isEqualTo(0.4);
        robot.clickOn("#work-stop");
        until(() -> said.get().equals("stopped"));
        assertThat(work.get().at(0.5)).isEqualTo(Progress.Step.STOP);
        assertThat(robot.lookup("#work-stop").tryQuery()).isEmpty();
    }

    /** A clip whose opening another one makes void is not shown. */
    @Test
    void theLastClipChosenIsTheOneShown(FxRobot robot) throws Exception {
        Path other = CLIP.resolveSibling("down-the-line.mp4");
        robot.interact(() -> {
            model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
            sheet.welcomed();
            sheet.clips().choose(View.FACE_ON, CLIP);
            sheet.clips().choose(View.FACE_ON, other);
        });
        until(() -> sheet.clips().frame(View.FACE_ON).isPresent());
        assertThat(sheet.clips().file(View.FACE_ON)).contains(other);
        assertThat(model().lesson().clips().get(View.FACE_ON).clip()).isEqualTo(other.toString());
    }

    @Test
    void theCoachSaysAtWhatRateItWasFilmed(FxRobot robot) throws Exception {
        choose(robot);
        ComboBox<OptionalDouble> rate = robot.lookup("#filmed-at").queryComboBox();
        assertThat(rate.isDisabled()).isFalse();
        assertThat(rate.getValue()).isEmpty();
        robot.interact(() -> rate.setValue(OptionalDouble.of(240)));
        until(() -> sheet.clips().slowMotion(View.FACE_ON).factor() > 1);
        assertThat(sheet.clips().slowMotion(View.FACE_ON).factor()).isCloseTo(4, within(0.01));
        assertThat(model().lesson().clips().get(View.FACE_ON).filmedAt()).hasValue(240);
        assertThat(robot.lookup("#slowed").queryAs(Label.class).getText()).isEqualTo("plays 4 × slower");
        robot.interact(() -> rate.setValue(OptionalDouble.empty()));
        until(() -> sheet.clips().slowMotion(View.FACE_ON).factor() == 1);
        assertThat(model().lesson().clips().get(View.FACE_ON).filmedAt()).isEmpty();
    }
}
