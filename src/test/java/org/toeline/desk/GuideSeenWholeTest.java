package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** The guide in a low window that is wide enough, such as that of a small laptop: seen whole, nothing to be scrolled. */
class GuideSeenWholeTest extends DrivenDesk {

    @Start
    void start(Stage stage) {
        open(stage);
        stage.setWidth(1366);
        stage.setHeight(748);
    }

    private void seenWhole(FxRobot robot, MarkSheet sheetShown) throws Exception {
        robot.interact(() -> {
            sheet.welcomed();
            model().open(model().lesson().withSheet(sheetShown), java.util.Optional.empty());
        });
        ScrollPane column = robot.lookup("#marking-column").queryAs(ScrollPane.class);
        Region guide = (Region) column.getContent();
        until(() -> column.getViewportBounds().getHeight() > 0 && column.getWidth() > 0);
        robot.interact(() -> {
            column.getScene().getRoot().applyCss();
            column.getScene().getRoot().layout();
        });
        assertThat(guide.prefHeight(guide.getWidth()))
                .isLessThanOrEqualTo(column.getViewportBounds().getHeight());
        assertThat(robot.lookup("#picture").queryAs(Region.class).getHeight())
                .as("the picture keeps its height")
                .isGreaterThan(250);
    }

    @Test
    void withRodsAsAT(FxRobot robot) throws Exception {
        seenWhole(
                robot,
                LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"))
                        .sheet());
    }

    @Test
    void withTheQuestionWhatLiesThere(FxRobot robot) throws Exception {
        MarkSheet sample = LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"))
                .sheet();
        seenWhole(
                robot,
                MarkSheet.empty(sample.handedness(), sample.club()).withView(ViewMarks.empty(View.FACE_ON, 1280, 720)));
    }
}
