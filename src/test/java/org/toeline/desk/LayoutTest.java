package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToolBar;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Every screen with the sample on it, in windows from a large one to a small one (1280 × 720 is a 1920 × 1080 screen at scale
 * 1.5): nothing is outside the window, no button's words are cut short, no two controls lie over one another.
 */
class LayoutTest extends DrivenDesk {

    /** Layout rounds to whole pixels. */
    private static final double ROUNDED = 1.5;

    private static final int[][] SIZES = {{1540, 940}, {1280, 720}, {1100, 700}};

    private Stage stage;

    @Start
    void start(Stage window) {
        stage = window;
        open(window);
    }

    /** One desk, as a coach who makes the window smaller has one. */
    @Test
    void everythingFits(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> isJudged() && picture.picture() != null);
        for (int[] size : SIZES) {
            robot.interact(() -> {
                stage.setWidth(size[0]);
                stage.setHeight(size[1]);
            });
            for (String screen : List.of("lesson", "players", "across", "shots", "hand-over", "ranges")) {
                robot.interact(() -> screens.go(screen));
                WaitForAsyncUtils.waitForFxEvents(20);
                Scene scene = stage.getScene();
                robot.interact(() -> fits(scene, screen + " at " + size[0] + " × " + size[1]));
                ScreenPicture.keep(robot, scene, "layout-" + screen + "-" + size[0]);
            }
        }
    }

    private static void fits(Scene scene, String where) {
        Bounds window = scene.getRoot().getLayoutBounds();
        assertThat(where).endsWith(" at " + Math.round(scene.getWidth()) + " × " + Math.round(scene.getHeight()));
        List<Control> controls = new ArrayList<>();
        collect(scene.getRoot(), controls);
        assertThat(controls).as(where).isNotEmpty();
        for (Control control : controls) {
            Bounds at = control.localToScene(control.getLayoutBounds());
            String name = where + ": " + described(control);
            assertThat(at.getMinX()).as(name).isGreaterThanOrEqualTo(-ROUNDED);
            assertThat(at.getMaxX()).as(name).isLessThanOrEqualTo(window.getMaxX() + ROUNDED);
            assertThat(at.getMaxY()).as(name).isLessThanOrEqualTo(window.getMaxY() + ROUNDED);
            assertThat(cutShort(control)).as(name + " is cut short").isFalse();
        }
        apart(controls, where);
        scene.getRoot()
                .lookupAll(".tool-bar-overflow-button")
                .forEach(b -> assertThat(b.isVisible())
                        .as(where + ": buttons behind “»”")
                        .isFalse());
    }

    /** Controls a hand or an eye needs; what is scrolled may be outside. */
    private static void collect(Parent parent, List<Control> into) {
        for (Node child : parent.getChildrenUnmodifiable()) {
            if (!child.isVisible() || child instanceof ScrollPane || child instanceof TableView) {
                continue;
            }
            if (child instanceof ButtonBase || child instanceof TextInputControl || child instanceof ComboBoxBase) {
                into.add((Control) child);
            } else if (child instanceof Parent p
                    && !(child instanceof Control
                            && !(child instanceof ToolBar)
                            && !(child instanceof javafx.scene.control.SplitPane)
                            && !(child instanceof javafx.scene.control.TabPane))) {
                collect(p, into);
            }
        }
    }

    private static boolean cutShort(Control control) {
        if (!(control instanceof Labeled labeled)
                || labeled.getText() == null
                || labeled.getText().isEmpty()) {
            return false;
        }
        return labeled.lookupAll(".text").stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .anyMatch(t -> t.getText().endsWith("...")
                        || t.getText().endsWith("…") && !labeled.getText().endsWith("…"));
    }

    private static void apart(List<Control> controls, String where) {
        for (int i = 0; i < controls.size(); i++) {
            Bounds a = controls.get(i).localToScene(controls.get(i).getLayoutBounds());
            for (Control other : controls.subList(0, i)) {
                Bounds b = other.localToScene(other.getLayoutBounds());
                double across = Math.min(a.getMaxX(), b.getMaxX()) - Math.max(a.getMinX(), b.getMinX());
                double down = Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY());
                assertThat(across > ROUNDED && down > ROUNDED)
                        .as(where + ": " + described(controls.get(i)) + " over " + described(other))
                        .isFalse();
            }
        }
    }

    private static String described(Control control) {
        return control.getId() + (control instanceof Labeled l ? " “" + l.getText() + "”" : "");
    }
}
