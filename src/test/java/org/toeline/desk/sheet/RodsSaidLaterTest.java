package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.DrivenDesk;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.FloorMark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** What lies on the ground is said after the coach has asked what is seen, of a frame that nobody had chosen before. */
class RodsSaidLaterTest extends DrivenDesk {

    private static final Path MEDIA = Path.of("sample-media", "all-good");
    /** An end's suggested spread, several times over: the ends lie hundreds of pixels apart. */
    private static final double NEAR_PX = 6;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    @Test
    void theirEndsGetNames(FxRobot robot) throws Exception {
        MarkSheet byHand =
                LessonDocument.read(MEDIA.resolve("all-good.lesson.json")).sheet();
        ViewMarks marked = byHand.view(View.FACE_ON).orElseThrow();
        String clip = MEDIA.resolve("face-on.mp4").toAbsolutePath().toString();
        double addressS = LessonDocument.read(MEDIA.resolve("all-good.lesson.json"))
                .clips()
                .get(View.FACE_ON)
                .seconds()
                .orElseThrow();
        Lesson lesson = Lesson.of(MarkSheet.empty(byHand.handedness(), byHand.club())
                        .withView(ViewMarks.empty(View.FACE_ON, marked.widthPx(), marked.heightPx())))
                .withClip(View.FACE_ON, new ClipMoment(clip, OptionalDouble.empty()));
        robot.interact(() -> {
            model().open(lesson, Optional.empty());
            sheet.clips().openAll();
            sheet.welcomed();
            model().show(View.FACE_ON);
        });
        until(() -> sheet.clips().frame(View.FACE_ON).isPresent());
        robot.interact(() -> sheet.clips().seek(View.FACE_ON, addressS));
        until(() -> sheet.clips().frame(View.FACE_ON).isPresent()
                && sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
        robot.interact(() -> sheet.assistant().suggest());
        until(() -> sheet.assistant().looked(View.FACE_ON).isPresent());
        assertThat(named()).as("nothing was said of the ground").isEmpty();
        robot.interact(() -> model().apply(model().sheet().withFloor(byHand.floor())));
        assertThat(named())
                .hasSizeGreaterThan(1)
                .allSatisfy(m -> assertThat(marked.floorMarks().stream()
                                .filter(f -> f.pointId().equals(m.pointId()))
                                .findFirst()
                                .orElseThrow()
                                .at()
                                .distancePx(m.at()))
                        .isLessThan(NEAR_PX));
    }

    private List<FloorMark> named() {
        return model().marks(View.FACE_ON).orElseThrow().floorMarks();
    }
}
