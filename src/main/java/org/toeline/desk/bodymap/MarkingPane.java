package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.lesson.Rods;
import org.toeline.desk.lesson.Spread;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.LensBook.Profile;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** What to mark next, in words and on the body map, and the things that are not on the body: ball, rods, uprights. */
public final class MarkingPane extends VBox {

    private static final double WIDTH = 262;
    /** What larger text needs of a narrow window, beside text of the usual size. */
    private static final double TIGHT = 220;

    /** Of four lines: what stands below it must not move while one marks. */
    private static final double ANNOUNCED_HEIGHT = 91;

    private final LessonModel model;
    private Words words;
    private final Supplier<List<Profile>> profiles;
    private final BodyMap map;
    private final Label next = new Label();
    private final Label hint = new Label(Texts.of("next.hint"));
    private final GroundQuestion ground;
    private final FlowPane others = new FlowPane(6, 6);
    private final FlowPane helps = new FlowPane(6, 6);
    private Button again = new Button();
    private @Nullable Shown shown;

    /** What the desk does for the coach in the large view. */
    public interface Helps {

        /** Suggests landmarks. */
        void suggest();

        /** Puts the marks where they are on the average while the player stands still. */
        void steady();

        /** Has words pinned to the picture. */
        void pin();

        /** Begins or ends marking it again. */
        void again();
    }

    /** @param profiles the lenses that were calibrated */
    public MarkingPane(LessonModel model, Words words, Supplier<List<Profile>> profiles, Helps helping) {
        super(12);
        this.profiles = profiles;
        this.model = model;
        this.words = words;
        this.map = new BodyMap(model, words);
        this.ground = new GroundQuestion(
                model,
                () -> this.words,
                floor -> KnownDialog.show(
                        model, this.words, profiles.get(), getScene().getWindow(), floor));
        getStyleClass().add("paper");
        setPadding(new Insets(14));
        setPrefWidth(Look.px(WIDTH) + 28);
        double least = Math.max(WIDTH, Look.px(TIGHT));
        setMinWidth(least + 28);
        next.getStyleClass().add("next");
        next.setId("next");
        next.setWrapText(true);
        // none of it is ever cut off, and a shorter sentence leaves what is below in its place
        next.setMinHeight(USE_PREF_SIZE);
        StackPane announced = new StackPane(next);
        announced.minHeightProperty().bind(Bindings.max(Look.px(ANNOUNCED_HEIGHT), next.heightProperty()));
        announced.setAlignment(Pos.TOP_LEFT);
        hint.getStyleClass().add("hint");
        hint.setWrapText(true);
        hint.setMinHeight(USE_PREF_SIZE);
        helps.setPrefWrapLength(least);
        others.setPrefWrapLength(least);
        helps.getChildren()
                .setAll(
                        help("skip", "next.skip", model::skip),
                        help("suggest", "suggest", helping::suggest),
                        help("accept", "suggest.accept-one", model.suggestions()::accept),
                        help("refuse", "suggest.refuse", model.suggestions()::refuse),
                        help("accept-all", "suggest.accept", model.suggestions()::acceptAll),
                        help("pin", "pin", helping::pin),
                        hinted(help("steady", "steady", helping::steady), "steady.hint"),
                        hinted(again(helping::again), "again.hint"));
        getChildren().addAll(announced, helps, new StackPane(map, ground), others, hint);
    }

    /** Other words, in another unit. */
    public void words(Words changed) {
        words = changed;
        shown = null;
    }

    private static Button help(String id, String key, Runnable action) {
        Button button = new Button(Texts.of(key));
        button.setId(id);
        button.setFocusTraversable(false);
        button.getStyleClass().add("item");
        button.setOnAction(e -> action.run());
        return button;
    }

    private static Button hinted(Button button, String key) {
        button.setTooltip(new Tooltip(Texts.of(key)));
        return button;
    }

    private Button again(Runnable action) {
        Button button = help("again", "again", action);
        again = button;
        return button;
    }

    /** Brings words, rings and buttons up to date. */
    public void update(Set<String> doubted) {
        model.suggestions().doubted(doubted);
        String text = announced();
        if (!text.equals(next.getText())) {
            next.setText(text);
        }
        Optional<ViewMarks> view = model.marks(model.large());
        Shown now = new Shown(
                model.large(),
                model.selected(),
                view.map(Marking::marked).orElse(List.of()),
                view.map(v -> Marking.marked(v).stream()
                                .map(i -> Spread.of(v, i))
                                .toList())
                        .orElse(List.of()),
                model.sheet().floor(),
                doubted,
                model.sheet().handedness(),
                model.repeating(),
                model.lesson().unfinished(),
                model.suggestions().left());
        if (!now.equals(shown)) {
            shown = now;
            map.update(doubted);
            ground.update(view.isPresent());
            helps.lookup("#accept").setDisable(model.suggestions().suggestion().isEmpty());
            helps.lookup("#refuse").setDisable(model.suggestions().suggestion().isEmpty());
            helps.lookup("#accept-all").setDisable(now.suggested().isEmpty());
            again.setText(
                    Texts.of(model.repeating() ? "again.end" : model.canGoOnRepeating() ? "again.go-on" : "again"));
            others.getChildren().setAll(buttons());
        }
    }

    /** What rings and buttons depend on: moving a mark changes none of it. */
    private record Shown(
            View large,
            Optional<Item> selected,
            List<Item> marked,
            List<Optional<String>> spreads,
            FloorLayout floor,
            Set<String> doubted,
            Handedness handedness,
            boolean repeating,
            Unfinished unfinished,
            List<Item> suggested) {}

    private String announced() {
        Optional<ViewMarks> view = model.marks(model.large());
        if (view.isEmpty()) {
            return Texts.of("next.no-clip");
        }
        if (model.selected().isEmpty()) {
            return Texts.of(
                    model.repeating()
                            ? "next.done-again"
                            : model.lesson().unfinished().unseen(model.large()).isEmpty()
                                    ? "next.done"
                                    : "next.done-unseen");
        }
        Item item = model.selected().get();
        if (MarkOrder.suggested(view.get(), item)) {
            return suggested(item);
        }
        Optional<String> spread = Spread.of(view.get(), item);
        if (spread.isPresent()) {
            return Texts.of(
                    "next.again",
                    item instanceof Item.OfLandmark l ? words.where(l.landmark()) : ItemNames.of(item),
                    spread.get());
        }
        if (item instanceof Item.OfLandmark l) {
            return Texts.of("next.landmark", words.where(l.landmark()));
        }
        if (item instanceof Item.OfFloor f) {
            return Rods.otherEnd(model.sheet().floor(), view.get(), f.pointId())
                    .map(other -> Texts.of("next.floor", ItemNames.of(item), ItemNames.ofFloor(other)))
                    .orElse(Texts.of("next.floor-point", ItemNames.of(item)));
        }
        if (item instanceof Item.OfGround) {
            return Texts.of("next.ground");
        }
        return Texts.of(item instanceof Item.OfBall ? "next.ball" : "next.vertical");
    }

    private String suggested(Item item) {
        String where = item instanceof Item.OfLandmark l ? words.where(l.landmark()) : ItemNames.of(item);
        return Texts.of(
                model.suggestions().doubtful(item) ? "next.doubtful" : "next.suggested",
                where,
                model.suggestions().left().size());
    }

    private List<Button> buttons() {
        List<Button> buttons = new ArrayList<>();
        buttons.add(known());
        buttons.add(button(Item.BALL));
        model.sheet().floor().points().forEach(p -> buttons.add(button(new Item.OfFloor(p.id()))));
        int uprights = model.marks(model.large()).map(v -> v.verticals().size()).orElse(0);
        for (int i = 0; i <= uprights; i++) {
            buttons.add(button(new Item.OfVertical(i)));
        }
        return buttons;
    }

    private Button button(Item item) {
        Button button = new Button(ItemNames.of(item));
        button.setId("item-" + id(item));
        button.setFocusTraversable(false);
        button.getStyleClass().add("item");
        Optional<String> spread = model.marks(model.large()).flatMap(v -> Spread.of(v, item));
        if (model.marks(model.large()).filter(v -> MarkOrder.suggested(v, item)).isPresent()) {
            button.setText("? " + ItemNames.of(item) + " ± " + spread.orElseThrow());
            button.setAccessibleText(ItemNames.of(item) + Texts.of("ring.suggested"));
        } else if (spread.isPresent()) {
            button.getStyleClass().add("item-done");
            button.setText("✓ " + ItemNames.of(item));
            button.setTooltip(new Tooltip(Texts.of("item.spread", spread.get())));
        } else if (model.unseen(model.large(), item)) {
            button.getStyleClass().add("item-unseen");
            button.setText("– " + ItemNames.of(item));
            button.setAccessibleText(Texts.of("item.unseen", ItemNames.of(item)));
        }
        if (model.selected().equals(Optional.of(item))) {
            button.getStyleClass().add("item-next");
        }
        button.setOnAction(e -> model.select(item));
        return button;
    }

    private static String id(Item item) {
        return item instanceof Item.OfFloor f
                ? f.pointId()
                : item instanceof Item.OfVertical v ? "upright-" + (v.index() + 1) : item.name();
    }

    private Button known() {
        boolean none = model.sheet().floor().points().isEmpty();
        Button button = new Button(Texts.of(none ? "known.add" : "known.edit"));
        button.setId("known");
        button.setFocusTraversable(false);
        button.getStyleClass().add("item");
        button.setOnAction(e -> KnownDialog.show(
                model,
                words,
                profiles.get(),
                getScene().getWindow(),
                model.sheet().floor()));
        return button;
    }
}
