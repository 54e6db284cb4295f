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
                .findFirst()
                .orElse(Screen.getPrimary())
                .getVisualBounds();
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
        double mostWidth = screen().getWidth() - aroundWidth();
        double mostHeight = mostHeight() - aroundHeight();
        root.setPrefSize(Region.USE_COMPUTED_SIZE, Region.USE_COMPUTED_SIZE);
        double width = Math.min(Math.ceil(root.prefWidth(-1)), mostWidth);
        double height = Math.ceil(root.prefHeight(width));
        if (height > mostHeight) {
            width = Math.min(width + BAR, mostWidth);
            height = mostHeight;
        }
        resize(width, height);
        Window owner = stage.getOwner();
        move(
                owner.getX() + (owner.getWidth() - width - aroundWidth()) / 2,
                owner.getY() + (owner.getHeight() - height - aroundHeight()) / 2);
    }

    /** By way of the scene: a height asked for without a width is refused on some systems. */
    private void resize(double width, double height) {
        root.setPrefSize(width, height);
        stage.sizeToScene();
    }

    /** There, or as near as the screen allows. */
    private void move(double x, double y) {
        Rectangle2D screen = screen();
        stage.setX(within(x, screen.getMinX(), screen.getMaxX() - root.getPrefWidth() - aroundWidth()));
        stage.setY(within(y, screen.getMinY(), screen.getMaxY() - root.getPrefHeight() - aroundHeight()));
    }

    /** Makes room for words that came while the dialog is open, as far as may be. */
    void grow() {
        Platform.runLater(() -> {
            double width = root.getWidth();
            root.applyCss();
            root.setPrefHeight(Region.USE_COMPUTED_SIZE);
            double height = Math.min(Math.ceil(root.prefHeight(width)), mostHeight() - aroundHeight());
            if (stage.isShowing() && height > root.getHeight()) {
                resize(width, height);
                move(stage.getX(), stage.getY());
            }
        });
    }

    private static double within(double at, double from, double to) {
        return Math.max(from, Math.min(at, to));
    }
}
