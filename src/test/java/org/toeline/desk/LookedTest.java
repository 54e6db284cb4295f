package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.look.Look;

/** The eyes of {@link LookTest}: each fault that they are there for is seen, and nothing where there is none. */
@ExtendWith(ApplicationExtension.class)
class LookedTest {

    private static final double WIDTH = 300;

    private Stage stage;

    @Start
    void start(Stage window) {
        stage = window;
        stage.show();
    }

    @Test
    void eachFaultIsSeen(FxRobot robot) {
        assertThat(faults(robot, at(new Button("Keep"), 10, 10, 100), at(new Label("Said"), 10, 60, 100)))
                .isEmpty();
        assertThat(faults(robot, at(new Button("Keep all of it in a folder"), 10, 10, 80)))
                .singleElement()
                .asString()
                .contains("is cut to");
        assertThat(faults(robot, at(new Button("Keep"), WIDTH - 40, 10, 100)))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f).contains("reaches out of"));
        assertThat(faults(robot, at(new Button("Keep"), 10, 10, 100), at(new Button("Leave"), 90, 20, 100)))
                .singleElement()
                .asString()
                .contains("lies over");
        Label pale = new Label("Said");
        pale.setStyle("-fx-text-fill: #8a8a8a;");
        assertThat(faults(robot, at(pale, 10, 10, 100)))
                .singleElement()
                .asString()
                .contains("contrast 3.");
        ScrollPane squeezed = new ScrollPane(new Label("Said"));
        assertThat(faults(robot, at(new Button("Keep"), 10, 10, 100), at(squeezed, 10, 60, 20)))
                .anySatisfy(f -> assertThat(f).contains("is squeezed to"));
    }

    private static Region at(Region node, double x, double y, double width) {
        node.relocate(x, y);
        node.setPrefSize(width, 32);
        node.setMinWidth(width);
        return node;
    }

    private List<String> faults(FxRobot robot, Region... nodes) {
        List<String> seen = new ArrayList<>();
        robot.interact(() -> {
            Pane pane = new Pane(nodes);
            pane.getStyleClass().add("paper");
            Scene scene = new Scene(pane, WIDTH, 200);
            Look.USUAL.dress(scene);
            stage.setScene(scene);
            // the window may be as large as an earlier test left it
            stage.sizeToScene();
            seen.addAll(new Looked(pane, "here").faults());
        });
        return seen;
    }
}
