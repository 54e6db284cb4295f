package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Words;
import org.toeline.desk.Texts;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.Marking;
import org.toeline.ledger.LensBook.Profile;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** What to mark next, in words and on the body map, and the things that are not on the body: ball, rods, uprights. */
public final class MarkingPane extends VBox {

    private static final double WIDTH = 262;

    private final LessonModel model;
    private final Words words;
    private final Supplier<List<Profile>> profiles;
    private final BodyMap map;
    private final Label next = new Label();
    private final Label hint = new Label(Texts.of("next.hint"));
    private final FlowPane others = new FlowPane(6, 6);
    private @Nullable Shown shown;

    /** @param profiles the lenses that were calibrated */
    public MarkingPane(LessonModel model, Words words, Supplier<List<Profile>> profiles) {
        super(12);
        this.profiles = profiles;
        this.model = model;
        this.words = words;
        this.map = new BodyMap(model, words::name);
        getStyleClass().add("paper");
        setPadding(new Insets(14));
        setPrefWidth(WIDTH + 28);
        setMinWidth(WIDTH + 28);
        next.getStyleClass().add("next");
        next.setId("next");
        next.setWrapText(true);
        next.setMinHeight(72);
        next.setAlignment(Pos.TOP_LEFT);
        hint.getStyleClass().add("hint");
        hint.setWrapText(true);
        hint.setMinHeight(USE_PREF_SIZE);
        Button skip = new Button(Texts.of("next.skip"));
        skip.setId("skip");
        skip.setFocusTraversable(false);
        skip.getStyleClass().add("item");
        skip.setOnAction(e -> model.skip());
        getChildren().addAll(next, skip, new StackPane(map), others, hint);
    }

    /** Brings words, rings and buttons up to date. */
    public void update(Set<String> doubted) {
        String text = announced();
        if (!text.equals(next.getText())) {
            next.setText(text);
        }
        Shown now = new Shown(model.large(), model.selected(), model.marks(model.large()).map(Marking::marked)
                .orElse(List.of()), model.sheet().floor(), doubted, model.sheet().handedness());
        if (!now.equals(shown)) {
            shown = now;
            map.update(doubted);
            others.getChildren().setAll(buttons());
        }
    }

    /** What rings and buttons depend on: moving a mark changes none of it. */
    private record Shown(View large, Optional<Item> selected, List<Item> marked, FloorLayout floor, Set<String> doubted,
                         Handedness handedness) {
    }

    private String announced() {
        Optional<ViewMarks> view = model.marks(model.large());
        if (view.isEmpty()) {
            return Texts.of("next.no-clip");
        }
        if (model.selected().isEmpty()) {
            return Texts.of("next.done");
        }
        Item item = model.selected().get();
        boolean marked = !Marking.handles(view.get(), item).isEmpty();
        if (item instanceof Item.OfLandmark l) {
            return Texts.of(marked ? "next.again" : "next.landmark", words.where(l.landmark()));
        }
        if (marked) {
            return Texts.of("next.again", name(item));
        }
        if (item instanceof Item.OfFloor f) {
            return Texts.of("next.floor", f.pointId());
        }
        return Texts.of(item instanceof Item.OfBall ? "next.ball" : "next.vertical");
    }

    private static String name(Item item) {
        if (item instanceof Item.OfFloor f) {
            return f.pointId();
        }
        return item instanceof Item.OfVertical v ? Texts.of("item.vertical", v.index() + 1) : Texts.of("item.ball");
    }

    private List<Button> buttons() {
        List<Button> buttons = new ArrayList<>();
        buttons.add(button(Item.BALL));
        model.sheet().floor().points().forEach(p -> buttons.add(button(new Item.OfFloor(p.id()))));
        int uprights = model.marks(model.large()).map(v -> v.verticals().size()).orElse(0);
        for (int i = 0; i <= uprights; i++) {
            buttons.add(button(new Item.OfVertical(i)));
        }
        buttons.add(known());
        return buttons;
    }

    private Button button(Item item) {
        Button button = new Button(name(item));
        button.setId("item-" + name(item).toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
        button.setFocusTraversable(false);
        button.getStyleClass().add("item");
        boolean done = model.marks(model.large()).map(v -> !Marking.handles(v, item).isEmpty()).orElse(false);
        if (done) {
            button.getStyleClass().add("item-done");
            button.setText("✓ " + name(item));
        }
        if (model.selected().equals(Optional.of(item))) {
            button.getStyleClass().add("item-next");
        }
        button.setOnAction(e -> model.select(item));
        return button;
    }

    private Button known() {
        boolean none = model.sheet().floor().points().isEmpty();
        Button button = new Button(Texts.of(none ? "known.add" : "known.edit"));
        button.setId("known");
        button.setFocusTraversable(false);
        button.getStyleClass().add("item");
        button.setOnAction(e -> KnownDialog.show(model, profiles.get(), getScene().getWindow()));
        return button;
    }
}
