package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorLayout;

/**
 * What lies on the ground, asked in the place of the body map: as in the lesson before, one of the common layouts, or nothing. What
 * is chosen anew is looked at with its lengths before it counts, and nothing is taken from the lesson before unasked.
 */
final class GroundQuestion extends VBox {

    private final LessonModel model;
    private final Supplier<Words> words;
    private final Consumer<FloorLayout> look;
    private final Runnable back;
    private @Nullable Asked shown;

    /**
     * @param look shows a layout with its lengths, to be kept or corrected
     * @param back gives the keys to the picture
     */
    GroundQuestion(LessonModel model, Supplier<Words> words, Consumer<FloorLayout> look, Runnable back) {
        super(5);
        this.model = model;
        this.words = words;
        this.look = look;
        this.back = back;
        setId("ground");
        getStyleClass().add("paper");
        setAlignment(Pos.TOP_LEFT);
        setMinHeight(BodyFigure.HEIGHT);
        setVisible(false);
    }

    /** @param clip whether there is a clip in which something could lie */
    void update(boolean clip) {
        boolean asked = clip && model.selected().equals(Optional.of(Item.GROUND));
        setVisible(asked);
        if (asked) {
            Asked now = new Asked(model.groundBefore(), words.get().lengthUnit());
            // what has the keys keeps them
            if (getChildren().isEmpty() || !now.equals(shown)) {
                shown = now;
                getChildren().setAll(answers());
            }
        } else {
            boolean keys = getChildren().stream().anyMatch(Node::isFocused);
            getChildren().clear();
            if (keys) {
                back.run();
            }
        }
    }

    /** Gives the first answer the keys; answers whether anything is asked. */
    boolean takeKeys() {
        if (isVisible()) {
            ((Chip) getChildren().get(0)).takeKeys();
        }
        return isVisible();
    }

    /** What the answers depend on. */
    private record Asked(FloorLayout before, LengthUnit unit) {}

    private List<Node> answers() {
        List<Node> answers = new ArrayList<>();
        FloorLayout before = model.groundBefore();
        if (!before.points().isEmpty()) {
            answers.add(answer("before", Texts.of("ground.before"), Optional.of(before), () -> model.ground(before)));
        }
        for (FloorKind kind : FloorKind.values()) {
            FloorLayout layout = kind.layout();
            answers.add(
                    answer(kind.id(), Texts.of("floor." + kind.id()), Optional.of(layout), () -> look.accept(layout)));
        }
        answers.add(answer("nothing", Texts.of("ground.nothing"), Optional.empty(), model::skip));
        return answers;
    }

    private Chip answer(String id, String text, Optional<FloorLayout> floor, Runnable action) {
        Chip button = new Chip("ground-" + id, text, action, back);
        button.setAlignment(Pos.CENTER_LEFT);
        button.setWrapText(true);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setMinHeight(USE_PREF_SIZE);
        floor.ifPresent(f -> button.setGraphic(new FloorSketch(f, words.get())));
        return button;
    }
}
