package org.toeline.desk.dialog;

import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.layout.Region;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * Where a dialog stands and how large it is: as large as its words need, on its owner's screen, and hardly higher than its owner;
 * in the middle of it.
 */
final class DialogPlace {

    /** What is higher than that and than its owner scrolls, however large the screen. */
    private static final double HIGH = 600;
    /** A scroll bar beside the middle. */
    private static final double BAR = 16;

    private final Stage stage;
    private final Region root;

    DialogPlace(Stage stage, Region root) {
        this.stage = stage;
        this.root = root;
    }

    /** Some window managers forget a place asked for before the window is there: it is asked for again. */
    void open() {
        root.applyCss();
        root.layout();
        settle();
        stage.show();
        Platform.runLater(this::settle);
    }

    private Rectangle2D screen() {
        Window owner = stage.getOwner();
        return Screen.getScreensForRectangle(owner.getX(), owner.getY(), owner.getWidth(), owner.getHeight()).stream()
                .findFirst().orElse(Screen.getPrimary()).getVisualBounds();
    }

    private double mostHeight() {
        return Math.min(screen().getHeight(), Math.max(HIGH, stage.getOwner().getHeight() * 0.9));
    }

    /** Height of what the window manager puts around; before the dialog is there, that of its owner. */
    private double aroundHeight() {
        Window window = stage.isShowing() ? stage : stage.getOwner();
        return Math.max(0, window.getHeight() - window.getScene().getHeight());
    }

    private double aroundWidth() {
        Window window = stage.isShowing() ? stage : stage.getOwner();
        return Math.max(0, window.getWidth() - window.getScene().getWidth());
    }

    private void settle() {
        Rectangle2D screen = screen();
        double mostWidth = screen.getWidth() - aroundWidth();
        double mostHeight = mostHeight() - aroundHeight();
        double width = Math.min(Math.ceil(root.prefWidth(-1)), mostWidth);
        double height = Math.ceil(root.prefHeight(width));
        if (height > mostHeight) {
            width = Math.min(width + BAR, mostWidth);
            height = mostHeight;
        }
        stage.setWidth(width + aroundWidth());
        stage.setHeight(height + aroundHeight());
        Window owner = stage.getOwner();
        stage.setX(within(owner.getX() + (owner.getWidth() - stage.getWidth()) / 2, screen.getMinX(), screen.getMaxX() - stage.getWidth()));
        stage.setY(within(owner.getY() + (owner.getHeight() - stage.getHeight()) / 2, screen.getMinY(),
                screen.getMaxY() - stage.getHeight()));
    }

    /** Makes room for words that came while the dialog is open, as far as the screen goes. */
    void grow() {
        Platform.runLater(() -> {
            double missing = Math.ceil(root.prefHeight(root.getWidth())) - root.getHeight();
            if (!stage.isShowing() || missing <= 0) {
                return;
            }
            Rectangle2D screen = screen();
            stage.setHeight(Math.max(stage.getHeight(), Math.min(stage.getHeight() + missing, mostHeight())));
            stage.setY(within(stage.getY(), screen.getMinY(), screen.getMaxY() - stage.getHeight()));
        });
    }

    private static double within(double at, double from, double to) {
        return Math.max(from, Math.min(at, to));
    }
}
