package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.assist.Movement;
import org.toeline.assist.StillSpan;
import org.toeline.desk.DrivenDesk;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/** Frames of a clip on the desk in which the player stands as in the marked one. */
class StillOnTheDeskTest extends DrivenDesk {

    @Start
    void start(Stage stage) {
        open(stage);
    }

    @Test
    void decodesOtherFramesOfTheStillSpan(FxRobot robot) throws Exception {
        Path file = Path.of("sample-media", "before", "face-on.mp4").toAbsolutePath();
        robot.interact(() -> {
            model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
            sheet.welcomed();
            sheet.clips().choose(View.FACE_ON, file);
        });
        // found, and gone to
        until(() -> address()
                .filter(s -> sheet.clips()
                        .toBeMarked(View.FACE_ON)
                        .filter(f -> Math.abs(f.seconds() - s.addressSeconds()) < 0.02)
                        .isPresent())
                .isPresent());
        Frame marked = sheet.clips().toBeMarked(View.FACE_ON).orElseThrow();
        StillSpan span = address().orElseThrow();
        OpenClip clip = sheet.clips().open.get(View.FACE_ON);
        Supplier<List<Frame>> still = clip.still(marked, 1);
        List<Frame> others = still.get();
        assertThat(others).hasSize(2);
        assertThat(others.get(0).seconds()).isBetween(span.startSeconds(), marked.seconds() - 0.05);
        assertThat(others.get(1).seconds()).isBetween(marked.seconds() + 0.05, span.endSeconds());
        try (Clip again = Clip.open(file)) {
            for (Frame other : others) {
                assertThat(other.argb()).isEqualTo(again.frame(other.index()).argb());
            }
            Frame swing = again.frameAt(span.endSeconds() + 0.3);
            assertThat(clip.still(swing, 1).get()).as("in the swing").isEmpty();
        }
        robot.interact(() -> sheet.clips().close());
        until(() -> still.get().isEmpty());
    }

    private Optional<StillSpan> address() {
        return sheet.clips().movement(View.FACE_ON).flatMap(Movement::address);
    }
}
