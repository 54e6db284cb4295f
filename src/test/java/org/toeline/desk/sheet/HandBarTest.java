package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.DrivenDesk;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/** A left-hander's clips arrive while right-handed is set: it is asked about, and no side is suggested before it is answered. */
class HandBarTest extends DrivenDesk {

    private static final Path MEDIA = Path.of("sample-media", "left-handed");
    /** About what is stated of a suggested shoulder, twice; the other shoulder is 130 px away. */
    private static final double NEAR_PX = 30;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private void arrive(FxRobot robot) throws Exception {
        robot.interact(() -> {
            model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.MID_IRON)), Optional.empty());
            sheet.welcomed();
            sheet.arrivals()
                    .arrived(
                            List.of(
                                    MEDIA.resolve("face-on.mp4").toAbsolutePath(),
                                    MEDIA.resolve("down-the-line.mp4").toAbsolutePath()),
                            View.FACE_ON);
        });
        until(() -> looked(View.FACE_ON, Handedness.RIGHT) && looked(View.DOWN_THE_LINE, Handedness.RIGHT));
        assertThat(robot.lookup("#hand-seen").query().isVisible()).isTrue();
        assertThat(robot.lookup("#hand-seen-text").queryAs(Label.class).getText())
                .startsWith("Down the line")
                .contains("left-handed");
        assertThat(sides(View.FACE_ON)).isZero();
        assertThat(sides(View.DOWN_THE_LINE)).isZero();
        assertThat(model().marks(View.FACE_ON).orElseThrow().ball())
                .as("what is on no side is suggested")
                .isPresent();
    }

    private boolean looked(View view, Handedness hand) {
        return sheet.assistant().looked(view).equals(Optional.of(hand));
    }

    private long sides(View view) {
        return model().marks(view).orElseThrow().marks().stream()
                .filter(m -> m.landmark().side() != Landmark.Side.MIDDLE)
                .count();
    }

    private ImagePoint at(View view, Landmark landmark) {
        Mark mark = model().marks(view).orElseThrow().mark(landmark).orElseThrow();
        assertThat(mark.origin()).isEqualTo(Mark.Origin.SUGGESTED);
        return mark.at();
    }

    @Test
    void changingItBringsTheRightSides(FxRobot robot) throws Exception {
        arrive(robot);
        assertThat(robot.lookup("#arrived").query().isVisible())
                .as("one question after the other")
                .isFalse();
        robot.clickOn("#hand-seen-change");
        assertThat(robot.lookup("#arrived").query().isVisible())
                .as("nothing comes under the mouse")
                .isFalse();
        until(() -> looked(View.FACE_ON, Handedness.LEFT) && looked(View.DOWN_THE_LINE, Handedness.LEFT));
        assertThat(model().sheet().handedness()).isEqualTo(Handedness.LEFT);
        assertThat(robot.lookup("#hand-seen").query().isVisible()).isFalse();
        MarkSheet byHand =
                LessonDocument.read(MEDIA.resolve("left-handed.lesson.json")).sheet();
        for (Landmark landmark : List.of(Landmark.LEAD_SHOULDER, Landmark.TRAIL_SHOULDER, Landmark.LEAD_TOE)) {
            Mark placed = byHand.view(View.FACE_ON).orElseThrow().mark(landmark).orElseThrow();
            assertThat(at(View.FACE_ON, landmark).distancePx(placed.at()))
                    .as(landmark.id())
                    .isLessThan(NEAR_PX);
        }
        assertThat(sides(View.DOWN_THE_LINE)).isPositive();
    }

    @Test
    void keepingItSuggestsNoSidesOfThatPictureAndAsksNoMore(FxRobot robot) throws Exception {
        arrive(robot);
        robot.clickOn("#hand-seen-keep");
        assertThat(robot.lookup("#hand-seen").query().isVisible()).isFalse();
        assertThat(model().sheet().handedness()).isEqualTo(Handedness.RIGHT);
        assertThat(sides(View.DOWN_THE_LINE)).isZero();
        robot.interact(() -> {
            model().show(View.DOWN_THE_LINE);
            sheet.assistant().suggest();
        });
        until(() -> sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
        assertThat(robot.lookup("#hand-seen").query().isVisible()).isFalse();
        assertThat(sides(View.DOWN_THE_LINE)).isZero();
        assertThat(sides(View.FACE_ON))
                .as("of this picture, which does not tell, as the coach says")
                .isPositive();
    }
}
