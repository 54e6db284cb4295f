package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Spread;
import org.toeline.desk.text.Texts;
import org.toeline.mark.ViewMarks;

/** What is marked beside the body, each to be picked: the ball, ends of rods, uprights; and what is known besides the marks. */
final class Chips extends FlowPane {

    private static final double GAP = 6;
    private static final List<String> STATES = List.of("item-done", "item-unseen", "item-next");

    private final LessonModel model;
    private final Runnable back;
    private final Chip known;
    /** The same chip for the same thing, so that one that has the keys keeps them. */
    private final Map<Item, Chip> chips = new HashMap<>();

    /**
     * @param known asks what is known besides the marks
     * @param back  gives the keys to the picture
     */
    Chips(LessonModel model, Runnable known, Runnable back) {
        super(GAP, GAP);
        this.model = model;
        this.back = back;
        this.known = Chip.of("known", "known.edit", known, back);
    }

    void update() {
        List<Item> items = new ArrayList<>();
        items.add(Item.BALL);
        model.sheet().floor().points().forEach(p -> items.add(new Item.OfFloor(p.id())));
        int uprights = model.marks(model.large()).map(v -> v.verticals().size()).orElse(0);
        for (int i = 0; i <= uprights; i++) {
            items.add(new Item.OfVertical(i));
        }
        List<Node> now = new ArrayList<>(List.of(known));
        items.forEach(i -> now.add(shown(i)));
        if (!getChildren().equals(now)) {
            getChildren().setAll(now);
        }
    }

    private Chip shown(Item item) {
        Chip chip = chips.computeIfAbsent(
                item, i -> new Chip("item-" + id(i), ItemNames.of(i), () -> model.select(i), back));
        Optional<ViewMarks> view = model.marks(model.large());
        Optional<String> spread = view.flatMap(v -> Spread.of(v, item));
        String name = ItemNames.of(item);
        chip.getStyleClass().removeAll(STATES);
        chip.setTooltip(null);
        if (view.filter(v -> MarkOrder.suggested(v, item)).isPresent()) {
            says(chip, "? " + name + " ± " + spread.orElseThrow(), name + Texts.of("ring.suggested"));
        } else if (spread.isPresent()) {
            chip.getStyleClass().add("item-done");
            says(chip, "✓ " + name, name + Texts.of("ring.placed"));
            chip.setTooltip(new Tooltip(Texts.of("item.spread", spread.get())));
        } else if (model.unseen(model.large(), item)) {
            chip.getStyleClass().add("item-unseen");
            says(chip, "– " + name, Texts.of("item.unseen", name));
        } else {
            says(chip, name, name);
        }
        if (model.selected().equals(Optional.of(item))) {
            chip.getStyleClass().add("item-next");
        }
        return chip;
    }

    private static void says(Chip chip, String text, String accessible) {
        chip.setText(text);
        chip.setAccessibleText(accessible);
    }

    private static String id(Item item) {
        return item instanceof Item.OfFloor f
                ? f.pointId()
                : item instanceof Item.OfVertical v ? "upright-" + (v.index() + 1) : item.name();
    }
}
