package org.toeline.desk.film;

import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;

/** The other view, as high as the large one, while both are watched in step; a click makes it the large one. */
public final class SecondView extends StackPane {

    private final ImageView image = new ImageView();
    private final Label name = new Label();

    /** @param chosen a click */
    public SecondView(Runnable chosen) {
        setId("second-view");
        setMinSize(0, 0);
        setPrefSize(640, 360);
        image.setPreserveRatio(true);
        image.setManaged(false);
        image.fitWidthProperty().bind(widthProperty());
        image.fitHeightProperty().bind(heightProperty());
        name.getStyleClass().add("over-picture");
        name.setId("second-name");
        name.setManaged(false);
        getChildren().addAll(image, name);
        setOnMouseClicked(e -> chosen.run());
    }

    public void show(@Nullable Image shown) {
        image.setImage(shown);
        centre();
    }

    public void name(String words) {
        name.setText(words);
        setAccessibleText(words);
        centre();
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        centre();
    }

    private void centre() {
        image.relocate(
                (getWidth() - image.getLayoutBounds().getWidth()) / 2,
                (getHeight() - image.getLayoutBounds().getHeight()) / 2);
        name.autosize();
        name.relocate(
                image.getLayoutX(), image.getLayoutY() + image.getLayoutBounds().getHeight() - name.getHeight());
    }
}
