package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import atlantafx.base.theme.PrimerLight;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.text.Texts;

/** What drops down from the dark rows is read on its own light ground. */
class MenuColoursTest extends DrivenDesk {

    /** Contrast of text, WCAG 2.2, 1.4.3. */
    private static final double LEAST_CONTRAST = 4.5;

    private Stage stage;

    @Start
    void start(Stage window) {
        stage = window;
        open(window);
        window.getScene().setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
    }

    @Test
    void theMenuIsReadable(FxRobot robot) {
        robot.interact(() -> ((MenuButton) stage.getScene().lookup("#menu")).show());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(readable()).contains(Texts.of("menu.new"), Texts.of("menu.keys"));
    }

    @Test
    void theQuestionWhoseLessonItIsIsReadable(FxRobot robot) throws Exception {
        robot.clickOn("#lesson-player");
        WaitForAsyncUtils.waitForFxEvents();
        robot.write("ab");
        until(() -> robot.lookup("#whose-new").tryQuery().isPresent());
        assertThat(readable()).contains(Texts.of("whose.title"), Texts.of("whose.new", "ab"));
        robot.type(KeyCode.ESCAPE);
    }

    @Test
    void aMenuOfTheDarkSurroundIsReadable(FxRobot robot) {
        robot.interact(() ->
                new ContextMenu(new MenuItem("Copy")).show(stage.getScene().lookup("#time"), Side.TOP, 0, 0));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(readable()).containsExactly("Copy");
        robot.type(KeyCode.ESCAPE);
    }

    /** The words of all that has dropped down, each seen against white. */
    private static List<String> readable() {
        List<String> words = new ArrayList<>();
        for (Window window : Window.getWindows()) {
            if (window instanceof PopupWindow) {
                for (Labeled labeled : labels(window.getScene().getRoot())) {
                    assertThat(Contrast.of((Color) labeled.getTextFill(), Color.WHITE))
                            .as(labeled.getText())
                            .isGreaterThan(LEAST_CONTRAST);
                    words.add(labeled.getText());
                }
            }
        }
        return words;
    }

    private static List<Labeled> labels(Parent parent) {
        List<Labeled> found = new ArrayList<>();
        for (Node child : parent.getChildrenUnmodifiable()) {
            if (child instanceof Labeled labeled
                    && labeled.getText() != null
                    && !labeled.getText().isBlank()
                    && (child.getStyleClass().contains("button") || child instanceof Label)) {
                found.add(labeled);
            } else if (child instanceof Parent p) {
                found.addAll(labels(p));
            }
        }
        return found;
    }
}
