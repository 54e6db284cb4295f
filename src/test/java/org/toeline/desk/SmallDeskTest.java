package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import atlantafx.base.theme.PrimerLight;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.ToolBar;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;

/**
 * The sheet in small windows. A screen of 1920 by 1080 points at one and a half times the size leaves 1280 by 720 to lay out,
 * and a taskbar less than that.
 */
class SmallDeskTest extends DrivenDesk {

    /** Rounding to whole pixels of the screen. */
    private static final double ROUNDING = 1;

    private static final double[][] SIZES = {{1540, 940}, {1280, 720}, {1100, 700}};

    private Stage stage;

    @Start
    void start(Stage stage) {
        this.stage = stage;
        open(stage);
        stage.getScene().setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        stage.getScene().getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
    }

    /** One desk, as a coach who makes the window smaller has one. */
    @Test
    void nothingIsCutOffAndNothingOverlaps(FxRobot robot) throws Exception {
        Lesson lesson = LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"));
        robot.interact(() -> {
            model().open(lesson, Optional.empty());
            sheet.welcomed();
        });
        until(() -> isJudged());
        for (double[] size : SIZES) {
            for (double scale : new double[] {1, 1.5}) {
                robot.interact(() -> {
                    stage.setRenderScaleX(scale);
                    stage.setRenderScaleY(scale);
                    stage.setWidth(size[0]);
                    stage.setHeight(size[1]);
                });
                WaitForAsyncUtils.waitForFxEvents(20);
                robot.interact(() -> fits(size[0], size[1]));
            }
        }
    }

    private void fits(double width, double height) {
        assertThat(stage.getScene().getWidth()).as("the window's own width").isEqualTo(width);
        Rectangle2D window = new Rectangle2D(
                0, 0, stage.getScene().getWidth(), stage.getScene().getHeight());
        ToolBar toolbar = (ToolBar) stage.getScene().lookup(".tool-bar");
        List<Node> tools = toolbar.getItems().stream().map(Node.class::cast).toList();
        apart(tools, window);
        apart(controls(".screens"), window);
        apart(controls("#views"), window);
        apart(controls("#steps"), window);
        apart(
                List.of(
                        stage.getScene().lookup("#open-clip"),
                        stage.getScene().lookup("#marking-column"),
                        stage.getScene().lookup("#findings")),
                window);
        List<Node> columns = List.of(
                stage.getScene().lookup("#picture"),
                stage.getScene().lookup("#marking-column"),
                stage.getScene().lookup("#findings"));
        apart(columns, window);
        assertThat(picture.getWidth()).as("width of the picture").isGreaterThanOrEqualTo(0.3 * width);
        assertThat(picture.getHeight()).as("height of the picture").isGreaterThanOrEqualTo(0.32 * height);
    }

    private List<Node> controls(String row) {
        List<Node> found = new ArrayList<>();
        for (Node n : ((Parent) stage.getScene().lookup(row)).getChildrenUnmodifiable()) {
            if (n instanceof Control && n.isVisible()) {
                found.add(n);
            }
        }
        assertThat(found).as(row).isNotEmpty();
        return found;
    }

    /** All of them in the window, as wide as they need to be, none over another. */
    private static void apart(List<Node> nodes, Rectangle2D window) {
        for (Node n : nodes) {
            assertThat(n.getScene())
                    .as(n + " is shown and not put away behind an arrow")
                    .isNotNull();
            Bounds b = n.localToScene(n.getLayoutBounds());
            assertThat(b.getMinX()).as(n + " left").isGreaterThanOrEqualTo(-ROUNDING);
            assertThat(b.getMaxX()).as(n + " right").isLessThanOrEqualTo(window.getMaxX() + ROUNDING);
            assertThat(b.getMinY()).as(n + " top").isGreaterThanOrEqualTo(-ROUNDING);
            assertThat(b.getMaxY()).as(n + " bottom").isLessThanOrEqualTo(window.getMaxY() + ROUNDING);
            if (n instanceof javafx.scene.control.Labeled label) {
                assertThat(label.getWidth())
                        .as(n + " shows all of its text")
                        .isGreaterThanOrEqualTo(label.prefWidth(-1) - ROUNDING);
            }
            for (Node other : nodes) {
                Bounds o = other.localToScene(other.getLayoutBounds());
                boolean over = n != other
                        && b.getMinX() < o.getMaxX() - ROUNDING
                        && o.getMinX() < b.getMaxX() - ROUNDING
                        && b.getMinY() < o.getMaxY() - ROUNDING
                        && o.getMinY() < b.getMaxY() - ROUNDING;
                assertThat(over).as(n + " over " + other).isFalse();
            }
        }
    }
}
