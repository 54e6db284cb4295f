package org.toeline.desk.dialog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;

/** The dialog that is open over a window, and what holds for every one of them. */
public final class ShownDialog {

    /** A laptop's screen of 1366 by 768 points, less the bars of a window and of the system. */
    private static final double MOST_WIDTH = 1350;

    private static final double MOST_HEIGHT = 690;
    /** Rounding to whole pixels. */
    private static final double ROUNDED = 1.5;

    private ShownDialog() {}

    public static List<Stage> over(Window owner) {
        return Window.getWindows().stream()
                .filter(w -> w instanceof Stage s && s.getOwner() == owner)
                .map(Stage.class::cast)
                .toList();
    }

    /** In the middle of its window, on a small screen, no words cut short, nothing that destroys the default. */
    public static Stage wellMade(Window owner) {
        List<Stage> all = over(owner);
        assertThat(all).as("dialogs").hasSize(1);
        Stage dialog = all.get(0);
        assertThat(dialog.getX() + dialog.getWidth() / 2)
                .as("in the middle")
                .isCloseTo(owner.getX() + owner.getWidth() / 2, within(ROUNDED));
        assertThat(dialog.getY() + dialog.getHeight() / 2)
                .as("in the middle")
                .isCloseTo(owner.getY() + owner.getHeight() / 2, within(ROUNDED));
        assertThat(dialog.getWidth()).as("width").isBetween(200.0, MOST_WIDTH);
        assertThat(dialog.getHeight()).as("height").isBetween(80.0, MOST_HEIGHT);
        whole(dialog.getScene().getRoot());
        for (Node node : dialog.getScene().getRoot().lookupAll(".button")) {
            Bounds at = node.localToScene(node.getLayoutBounds());
            assertThat(at.getMaxX())
                    .as(node.getId())
                    .isLessThanOrEqualTo(dialog.getScene().getWidth() + ROUNDED);
            assertThat(node.getStyleClass().contains("destroys") && ((Button) node).isDefaultButton())
                    .as(node.getId())
                    .isFalse();
        }
        return dialog;
    }

    /** Nothing ends in dots that does not have them. */
    private static void whole(Parent parent) {
        for (Node node : parent.getChildrenUnmodifiable()) {
            if (node instanceof Labeled labeled
                    && labeled.isVisible()
                    && labeled.lookup(".text") instanceof Text shown
                    && labeled.getText() != null) {
                assertThat(shown.getText()).isEqualTo(labeled.getText());
            }
            if (node instanceof Parent p) {
                whole(p);
            }
        }
    }
}
